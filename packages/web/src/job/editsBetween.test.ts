import { arbitraryJob } from '@sagwright/records/testing/arbitraryJob';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { takenBack, withEdits } from './edits.ts';
import { editsBetween } from './editsBetween.ts';

test('edits between two documents make the one of the other, and taken back the other of the one', () => {
  fc.assert(
    fc.property(arbitraryJob, arbitraryJob, (before, after) => {
      const edits = editsBetween(before, after);
      expect(withEdits(before, edits)).toEqual(after);
      expect(withEdits(after, takenBack({ id: 1, words: '', edits, undoes: null }))).toEqual(before);
    }),
    { seed: 101, numRuns: 60 },
  );
});

test('what is the same is not written, and a quantity is written whole', () => {
  const before = { a: { value: 1, unit: 'mm' }, b: { c: 1, d: 'x' } };
  const after = { a: { value: 2, unit: 'mm' }, b: { c: 1, d: 'y' } };
  expect(editsBetween(before, before)).toEqual([]);
  expect(editsBetween(before, after)).toEqual([
    { path: ['a'], before: before.a, after: after.a },
    { path: ['b', 'd'], before: 'x', after: 'y' },
  ]);
});
