import { parseJob } from '@sagwright/records/read';
import { arbitraryJob } from '@sagwright/records/testing/arbitraryJob';
import { leastJob } from '@sagwright/records/testing/leastJob';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { planJob } from './path.ts';

test('the least job there is gets a plan', () => {
  const read = parseJob(leastJob());
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const planned = planJob(read.job);
  expect(planned.ok, JSON.stringify(planned)).toBe(true);
});

test('every job that the schema lets in is planned, or told why not, with finite figures only', () => {
  fc.assert(
    fc.property(arbitraryJob, (job) => {
      const planned = planJob(job);
      if (!planned.ok) {
        for (const { path, message } of planned.problems) expect([path, message]).not.toContain('');
        return;
      }
      expect(notFinite(planned.plan)).toEqual([]);
    }),
    { seed: 7, numRuns: 300 },
  );
});

/** Paths of numbers that are no finite number, and of figures that came out undefined. */
function notFinite(value: unknown, path = ''): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
  if (value === undefined) return [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => notFinite(inner, `${path}.${key}`));
}
