import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readJob } from './read.ts';
import type { JobDocument } from './schema.ts';
import { arbitraryJob } from './testing/arbitraryJob.ts';
import { leastJobWith } from './testing/leastJob.ts';
import { writeJob } from './write.ts';

describe('a written job', () => {
  test('is the same text, in whatever order its fields were held', () => {
    fc.assert(
      fc.property(arbitraryJob, (job) => {
        expect(writeJob(turnedRound(job) as JobDocument)).toBe(writeJob(job));
      }),
      { seed: 7, numRuns: 100 },
    );
  });

  test('is the same text after it was read', () => {
    fc.assert(
      fc.property(arbitraryJob, (job) => {
        const text = writeJob(job);
        const result = readJob(text);
        if (!result.ok) throw new Error(result.problems[0]!.message);
        expect(writeJob(result.job)).toBe(text);
      }),
      { seed: 8, numRuns: 100 },
    );
  });

  test('begins with its format and version', () => {
    const text = writeJob(turnedRound(leastJobWith()) as JobDocument);
    expect(text.split('\n').slice(0, 3)).toEqual(['{', '  "format": "sagwright-job",', '  "version": 1,']);
    expect(text.endsWith('}\n')).toBe(true);
  });

  test('loses nothing where the job has problems', () => {
    const spoiled = leastJobWith(
      ['machine.wheelbase', { value: -1, unit: 'mm' }],
      ['machine.colour', 'grey'],
    );
    expect(JSON.parse(writeJob(spoiled as unknown as JobDocument))).toEqual(spoiled);
  });
});

/** The same data with the fields of every group the other way round. */
function turnedRound(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(turnedRound);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([name, member]) => [name, turnedRound(member)]),
  );
}
