import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type RubberSI, rubberAt } from './rubber.ts';

const rubber: RubberSI = { start: 0.04, rate: 20_000, hardening: 4e8 };

function at(stroke: number) {
  const out = { force: 0, rate: 0, energy: 0 };
  rubberAt(rubber, stroke, out);
  return out;
}

describe('bump rubber', () => {
  test('does nothing before it is touched, and begins at its first rate', () => {
    expect(at(0.039)).toEqual({ force: 0, rate: 0, energy: 0 });
    expect(at(0.04)).toEqual({ force: 0, rate: 20_000, energy: 0 });
  });

  test('10 mm deep: k1 d + k3 d³', () => {
    // 20 N/mm · 10 mm + 0.4 N/mm³ · (10 mm)³ = 200 + 400 N
    expect(at(0.05).force).toBeCloseTo(600, 9);
  });

  test('force is the slope of the energy, rate the slope of the force', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.041, max: 0.07, noNaN: true }), (stroke) => {
        const step = 1e-6;
        const here = at(stroke);
        const below = at(stroke - step);
        const above = at(stroke + step);
        expect((above.energy - below.energy) / (2 * step) / here.force).toBeCloseTo(1, 6);
        expect((above.force - below.force) / (2 * step) / here.rate).toBeCloseTo(1, 6);
      }),
      { seed: 23 },
    );
  });

  test('a stroke that is no number is refused', () => {
    expect(() => at(Number.NaN)).toThrow(RangeError);
  });
});
