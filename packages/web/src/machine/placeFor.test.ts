import { arbitraryJob } from '@sagwright/records/testing/arbitraryJob';
import { tourerWith } from '@sagwright/workbench/testing/tourerJob';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { placeFor, thingsAshore } from './placeFor.ts';

const job = tourerWith();

test('what lies somewhere in another load is offered that place', () => {
  expect(placeFor(job, 'work', 'packed', 'item')).toBe('cases');
  expect(placeFor(job, 'work', 'friend', 'person')).toBe('pillion');
});

test('somebody new is offered the first free seat, something new the first place that is no seat', () => {
  expect(placeFor(job, 'work', 'new', 'person')).toBe('pillion');
  expect(placeFor(job, 'both', 'new', 'person')).toBe('');
  expect(placeFor(job, 'work', 'new', 'item')).toBe('cases');
});

test('of any load, a thing is aboard or ashore, never both', () => {
  fc.assert(
    fc.property(arbitraryJob, (any) => {
      for (const [id, load] of Object.entries(any.loadCases)) {
        const aboard = 'aboard' in load ? Object.values(load.aboard).map(({ thing }) => thing) : [];
        const ashore = thingsAshore(any, id);
        expect(new Set([...aboard, ...ashore])).toEqual(new Set(Object.keys(any.things)));
        expect(ashore.some((thing) => aboard.includes(thing))).toBe(false);
      }
    }),
    { seed: 31, numRuns: 100 },
  );
});
