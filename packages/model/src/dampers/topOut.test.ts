import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type TopOutSI, topOutAt } from './topOut.ts';

const topOut: TopOutSI = { rate: 60_000, length: 0.015 };

function at(stroke: number) {
  const out = { force: 0, rate: 0, energy: 0 };
  topOutAt(topOut, stroke, out);
  return out;
}

describe('top-out spring', () => {
  test('is loose beyond its length and fully squeezed at the stop', () => {
    expect(at(0.016)).toEqual({ force: 0, rate: 0, energy: 0 });
    // 60 N/mm · 15 mm = 900 N
    expect(at(0).force).toBeCloseTo(900, 9);
  });

  test('what it adds to the strut, −F, is the slope of its energy, and its rate the slope of −F', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.014, noNaN: true }), (stroke) => {
        const step = 1e-6;
        const below = at(stroke - step);
        const above = at(stroke + step);
        expect((above.energy - below.energy) / (2 * step)).toBeCloseTo(-at(stroke).force, 4);
        expect(-(above.force - below.force) / (2 * step) / at(stroke).rate).toBeCloseTo(1, 6);
      }),
      { seed: 24 },
    );
  });

  test('a stroke that is no number is refused', () => {
    expect(() => at(Number.NaN)).toThrow(RangeError);
  });
});
