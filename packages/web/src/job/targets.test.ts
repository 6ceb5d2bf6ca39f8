import { parseJob } from '@sagwright/records/read';
import type { JobDocument } from '@sagwright/records/schema';
import { leastJob } from '@sagwright/records/testing/leastJob';
import { shippedTargets } from '@sagwright/workbench/targets/shipped';
import { describe, expect, test } from 'vitest';
import { pickSpring } from './choice.ts';
import { type Edit, withEdits } from './edits.ts';
import { newLoad } from './loads.ts';
import {
  changeRow,
  changeWanted,
  copyRow,
  moveRow,
  newRow,
  removeRow,
  removeSet,
  rowsInOrder,
  takeOwnSet,
  takeShippedSet,
  wantOfLoad,
} from './targets.ts';

const least = leastJob() as unknown as JobDocument;
const shipped = shippedTargets['touring-short-travel']!;
const done = (job: JobDocument, edits: readonly Edit[]): JobDocument => withEdits(job, edits) as JobDocument;

/** Every edited job must still be one that can be read. */
function readable(job: JobDocument): JobDocument {
  const read = parseJob(job);
  expect(read.ok ? [] : read.problems).toEqual([]);
  return job;
}

describe('target sets', () => {
  const job = readable(done(least, takeShippedSet(least, 'mine', shipped, 'Mine')));

  test('a shipped set is copied into the job and used', () => {
    expect(job.targetSet).toBe('mine');
    expect(job.targetSets.mine?.rows).toEqual(shipped.rows);
    expect(readable(done(job, takeOwnSet(job, 'mine'))).targetSet).toBe('mine');
  });

  test('a copied row comes right behind its model, a removed one is gone', () => {
    const [first, second] = rowsInOrder(job.targetSets.mine!);
    const copied = readable(done(job, copyRow(job, 'mine', first![0], 'new')));
    expect(
      rowsInOrder(copied.targetSets.mine!)
        .map(([id]) => id)
        .slice(0, 3),
    ).toEqual([first![0], 'new', second![0]]);
    const removed = readable(done(copied, removeRow(copied, 'mine', 'new')));
    expect(removed).toEqual(job);
  });

  test('a row changes one thing at a time', () => {
    const [row] = rowsInOrder(job.targetSets.mine!)[0]!;
    const without = readable(done(job, changeRow(job, 'mine', row, 'luggage', undefined)));
    expect('luggage' in without.targetSets.mine!.rows[row]!).toBe(false);
    const { wanted } = job.targetSets.mine!.rows[row]!;
    const aim = { ...wanted, aim: { value: 30, unit: '%' as const } };
    expect(
      readable(done(job, changeWanted(job, 'mine', row, aim))).targetSets.mine!.rows[row]!.wanted.aim.value,
    ).toBe(30);
  });
});

describe('rows, sets and loads', () => {
  const job = readable(done(least, takeShippedSet(least, 'mine', shipped, 'Mine')));
  const rows = (of: JobDocument): readonly string[] => rowsInOrder(of.targetSets.mine!).map(([id]) => id);
  const [, second] = rows(job);
  const { wanted } = job.targetSets.mine!.rows[second!]!;

  test('a new row comes last, holds for everybody and wants what it was given', () => {
    const added = readable(done(job, newRow(job, 'mine', 'new', 'front', wanted)));
    expect(rows(added).at(-1)).toBe('new');
    expect(added.targetSets.mine!.rows.new).toMatchObject({
      end: 'front',
      people: { least: 0, most: 10 },
      wanted,
    });
  });

  test('a row moves by one place and back, and no further than the ends', () => {
    const up = readable(done(job, moveRow(job, 'mine', second!, -1)));
    expect(rows(up)[0]).toBe(second);
    expect([...rows(up)].sort()).toEqual([...rows(job)].sort());
    expect(rows(done(up, moveRow(up, 'mine', second!, 1)))).toEqual(rows(job));
    expect(moveRow(up, 'mine', second!, -1)).toEqual([]);
  });

  test('a set that is taken out is in use no longer', () => {
    expect(readable(done(job, removeSet(job, 'mine')))).toEqual(least);
  });

  test('a load has its own wish at one end, and is left to the set without a trace', () => {
    const loaded = readable(done(job, newLoad(job, 'load', 'Any', null)));
    const own = readable(done(loaded, wantOfLoad(loaded, 'load', 'rear', wanted)));
    expect(own.loadCases.load!.wanted).toEqual({ rear: wanted });
    const both = readable(done(own, wantOfLoad(own, 'load', 'front', wanted)));
    expect(done(both, wantOfLoad(both, 'load', 'rear', undefined)).loadCases.load!.wanted).toEqual({
      front: wanted,
    });
    expect(readable(done(own, wantOfLoad(own, 'load', 'rear', undefined)))).toEqual(loaded);
  });
});

describe('a choice', () => {
  const [spring] = Object.keys(least.springs);

  test('is kept as such, and taken back without a trace', () => {
    const picked = readable(done(least, pickSpring(least, 'rear', spring!)));
    expect(picked.choice).toEqual({ rear: spring });
    expect(readable(done(picked, pickSpring(picked, 'rear', null)))).toEqual(least);
  });

  test('of one end leaves the other', () => {
    const both = { ...least, choice: { rear: spring!, front: 'x' } } as JobDocument;
    expect(done(both, pickSpring(both, 'rear', null)).choice).toEqual({ front: 'x' });
  });
});
