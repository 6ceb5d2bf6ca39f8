import { parseJob } from '@sagwright/records/read';
import type { JobDocument } from '@sagwright/records/schema';
import { leastJob } from '@sagwright/records/testing/leastJob';
import { shippedTargets } from '@sagwright/workbench/targets/shipped';
import { describe, expect, test } from 'vitest';
import { pickSpring } from './choice.ts';
import { type Edit, withEdits } from './edits.ts';
import {
  changeRow,
  changeWanted,
  copyRow,
  removeRow,
  rowsInOrder,
  takeOwnSet,
  takeShippedSet,
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
  const job = readable(done(least, takeShippedSet(least, 'mine', shipped)));

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
