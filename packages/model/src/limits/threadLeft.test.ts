import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type LengthAdjusterSI, longerLeft, shorterLeft } from './threadLeft.ts';

const bare: LengthAdjusterSI = {
  change: 0,
  least: null,
  most: null,
  lead: 0.00125,
  thread: null,
  toMark: null,
};

test('one diameter must stay engaged: 15 mm of a 12 mm thread leave 3 mm, at a lead of 1.25 mm 2.4 turns', () => {
  const left = longerLeft({ ...bare, thread: { engaged: 0.015, needed: 0.012 } })!;
  expect(left.by).toBe('thread');
  expect(left.length).toBeCloseTo(0.003, 15);
  expect(left.turns).toBeCloseTo(2.4, 12);
});

// Common practice, no source: such adjusters go about 10 mm up or down.
test('in the middle of 10 mm up or down, 10 mm are left either way', () => {
  const middle = { ...bare, least: -0.01, most: 0.01 };
  expect(longerLeft(middle)).toEqual({ by: 'range', length: 0.01, turns: 8 });
  expect(shorterLeft(middle)).toEqual({ by: 'range', length: 0.01, turns: 8 });
});

test('what is not known is not checked', () => {
  expect(longerLeft(bare)).toBeNull();
  expect(shorterLeft(bare)).toBeNull();
  expect(longerLeft({ ...bare, lead: null, toMark: 0.002 })).toEqual({
    by: 'mark',
    length: 0.002,
    turns: null,
  });
});

test('too little thread is told as so many turns back', () => {
  const left = longerLeft({ ...bare, lead: 0.0015, most: 0.02, thread: { engaged: 0.009, needed: 0.012 } })!;
  expect(left.by).toBe('thread');
  expect(left.turns).toBeCloseTo(-2, 12);
});

const length = fc.double({ min: -0.03, max: 0.03, noNaN: true });
const some = fc.option(length);
const adjusters: fc.Arbitrary<LengthAdjusterSI> = fc.record({
  change: length,
  least: some,
  most: some,
  lead: fc.option(fc.double({ min: 0.0005, max: 0.003, noNaN: true })),
  thread: fc.option(fc.record({ engaged: fc.double({ min: 0, max: 0.04, noNaN: true }), needed: length })),
  toMark: some,
});

test('more thread engaged never leaves less, and what is left is never more than any end leaves', () => {
  fc.assert(
    fc.property(adjusters, fc.double({ min: 0, max: 0.02, noNaN: true }), (adjuster, more) => {
      const { thread, most, change, toMark } = adjuster;
      const left = longerLeft(adjuster);
      if (left === null) return;
      if (most !== null) expect(left.length).toBeLessThanOrEqual(most - change);
      if (toMark !== null) expect(left.length).toBeLessThanOrEqual(toMark);
      if (thread === null) return;
      const deeper = longerLeft({ ...adjuster, thread: { ...thread, engaged: thread.engaged + more } })!;
      expect(deeper.length).toBeGreaterThanOrEqual(left.length);
    }),
    { seed: 4711 },
  );
});

test('turning it out takes from one side what it gives to the other', () => {
  fc.assert(
    fc.property(length, length, (change, out) => {
      const at = (where: number): LengthAdjusterSI => ({ ...bare, change: where, least: -0.05, most: 0.05 });
      const whole = (where: number): number => longerLeft(at(where))!.length + shorterLeft(at(where))!.length;
      expect(whole(change + out)).toBeCloseTo(whole(change), 12);
    }),
    { seed: 4712 },
  );
});
