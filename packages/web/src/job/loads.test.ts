import { parseJob } from '@sagwright/records/read';
import type { JobDocument } from '@sagwright/records/schema';
import { arbitraryJob } from '@sagwright/records/testing/arbitraryJob';
import { tourerWith } from '@sagwright/workbench/testing/tourerJob';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Edit, withEdits } from './edits.ts';
import { loadsInOrder, moveLoad, moveTo, newLoad, newThing, putOn, removeLoad, takeOff } from './loads.ts';
import { atPlace, newPlace } from './places.ts';
import { newSpring } from './springs.ts';

const job = tourerWith();

function made(from: JobDocument, edits: readonly Edit[]): JobDocument {
  const read = parseJob(withEdits(from, edits));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.job;
}

describe('What hands do with loads leaves a job that can be read', () => {
  test('a copy comes last, carries the same things, and is not ridden yet', () => {
    const after = made(job, newLoad(job, 'copy', 'again', 'both'));
    const [id, load] = loadsInOrder(after).at(-1)!;
    expect([id, load.name, load.share]).toEqual(['copy', 'again', 0]);
    expect(load).toMatchObject({ aboard: (job.loadCases.both as { aboard: object }).aboard });
  });

  test('a new one out of the bare machine has nothing aboard', () => {
    expect(made(job, newLoad(job, 'bare', 'bare', null)).loadCases.bare).toMatchObject({ aboard: {} });
  });

  test('a load moved down and up again stands where it stood', () => {
    fc.assert(
      fc.property(arbitraryJob, (any) => {
        const before = loadsInOrder(any).map(([id]) => id);
        for (const id of before.slice(0, -1)) {
          const down = withEdits(any, moveLoad(any, id, 1)) as JobDocument;
          expect(loadsInOrder(down).map(([each]) => each)).not.toEqual(before);
          const up = withEdits(down, moveLoad(down, id, -1)) as JobDocument;
          expect(loadsInOrder(up).map(([each]) => each)).toEqual(before);
        }
      }),
      { seed: 51, numRuns: 100 },
    );
  });

  test('put on, moved and taken off again, nothing is left behind but the thing and the place', () => {
    const mass = { value: 4, unit: 'kg' };
    const withThing = made(job, [
      ...newThing(job, 'roll', 'bed roll', 'item', mass),
      ...newPlace(job, 'tail', { name: 'tail', kind: 'rack' }),
      ...putOn(job, 'work', 'x', 'roll', 'cases'),
    ]);
    const moved = made(withThing, moveTo(withThing, 'work', 'x', 'tail'));
    expect(atPlace(moved, 'tail')).toEqual({ things: ['roll'], loads: 1 });
    const off = made(moved, takeOff(moved, 'work', 'x'));
    expect(off.loadCases).toEqual(job.loadCases);
    expect(Object.keys(off.things)).toContain('roll');
  });

  test('a removed load takes nothing else along', () => {
    const { both: _gone, ...others } = job.loadCases;
    expect(made(job, removeLoad(job, 'both'))).toEqual({ ...job, loadCases: others });
  });

  test('a new spring comes last', () => {
    const rate = { value: 29, unit: 'N/mm' } as const;
    const after = made(job, newSpring(job, 'c9', { name: 'C9', end: 'rear', rate }));
    const orders = Object.values(after.springs).map(({ order }) => order);
    expect(after.springs.c9?.order).toBe(Math.max(...orders));
  });
});
