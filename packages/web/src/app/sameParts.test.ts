import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sameParts } from './sameParts.ts';

const data = fc.jsonValue({ maxDepth: 4 });
const copy = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

test('what comes out equals what came last', () => {
  fc.assert(
    fc.property(data, data, (before, after) => {
      expect(sameParts(before, copy(after))).toEqual(copy(after));
    }),
    { seed: 1 },
  );
});

test('an equal copy gives the very thing that was there', () => {
  fc.assert(
    fc.property(data, (before) => {
      const stays = copy(before);
      expect(sameParts(stays, copy(stays))).toBe(stays);
    }),
    { seed: 2 },
  );
});

test('a change replaces the way down to it and nothing beside', () => {
  const before = { loads: [{ a: 1 }, { b: [2, 3] }], rear: { springs: ['x'] } };
  const after = sameParts(before, { loads: [{ a: 1 }, { b: [2, 4] }], rear: { springs: ['x'] } });
  expect(after).not.toBe(before);
  expect(after.loads[0]).toBe(before.loads[0]);
  expect(after.loads[1]).not.toBe(before.loads[1]);
  expect(after.rear).toBe(before.rear);
});

test('a key that is new with nothing in it, and one that went, are changes', () => {
  expect(sameParts({}, { a: undefined })).toHaveProperty('a');
  expect(sameParts({ a: 1, b: 2 }, { a: 1 })).toEqual({ a: 1 });
});
