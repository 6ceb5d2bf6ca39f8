import type { JobDocument } from '@sagwright/records/schema';
import { arbitraryJob } from '@sagwright/records/testing/arbitraryJob';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { type JobPlan, planJob } from '../path.ts';
import { overloadedTourer, tourerWith } from '../testing/tourerJob.ts';
import { limitListOf } from './list.ts';
import { limitRowWords, roomWords } from './words.ts';

function plan(job: JobDocument): JobPlan {
  const planned = planJob(job);
  if (!planned.ok) throw new Error(planned.problems.map(({ path }) => path).join(', '));
  return planned;
}

test('of any job, what lacks a figure is not checked, what was checked lacks none, and each has a whole sentence', () => {
  fc.assert(
    fc.property(arbitraryJob, (job) => {
      const planned = planJob(job);
      if (!planned.ok) return;
      const units = unitsFor('typed', job, '.');
      const { rows, room } = limitListOf(planned);
      expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
      for (const row of rows) {
        if (row.verdict === 'not checked') expect(row.needs.length, row.id).toBeGreaterThan(0);
        else expect(row, row.id).toMatchObject({ needs: [], margin: { value: expect.any(Number) } });
        if (row.verdict === 'over') expect(row.margin!.value).toBeLessThan(0);
      }
      const said = [
        ...rows.map((row) => limitRowWords(planned, row, units)),
        ...room.map((each) => roomWords(planned, each, units)),
      ];
      for (const sentence of said) expect(sentence).not.toMatch(/undefined|null|NaN|\[object/);
    }),
    { seed: 41, numRuns: 60 },
  );
});

test('a limit that nobody has read is not checked, and says what to read and where it goes', () => {
  const planned = plan(tourerWith(['machine.limits.gross', undefined]));
  const row = limitListOf(planned).rows.find(({ id }) => id === 'gross')!;
  expect(row).toMatchObject({
    verdict: 'not checked',
    needs: [{ what: 'gross rating', path: 'machine.limits.gross' }],
  });
});

test('a tyre with less air than is asked for ends no room by a figure that holds only at the placard pressure', () => {
  const planned = plan(
    tourerWith(
      ['machine.rear.tyre.loadIndex', 60],
      ['machine.rear.tyre.pressure', { value: 2.2, unit: 'bar' }],
      ['machine.rear.tyre.placardPressure', { value: 2.8, unit: 'bar' }],
    ),
  );
  const { rows, room } = limitListOf(planned);
  expect(rows.find(({ id }) => id === 'rear-tyre')?.verdict).not.toBe('within');
  expect(room.length).toBeGreaterThan(0);
  for (const each of room) {
    expect(each.by?.kind).not.toBe('rear tyre');
    expect(each.notChecked).toContainEqual({ kind: 'rear tyre' });
  }
});

test('what is exceeded is failed, whatever else is not known', () => {
  const planned = plan(overloadedTourer());
  const failed = limitListOf(planned).rows.filter(({ verdict }) => verdict === 'over');
  expect(failed.length).toBeGreaterThan(0);
  for (const row of failed) expect(row.loadCase).not.toBeNull();
});
