import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type RubberSI, rubberAt } from './rubber.ts';

const rubber: RubberSI = { start: 0.04, rate: 20_000, hardening: 4e8 };

function at(stroke: number, of: RubberSI = rubber) {
  const out = { force: 0, rate: 0, energy: 0 };
  rubberAt(of, stroke, out);
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

describe('a bump rubber by table', () => {
  const tested: RubberSI = { start: 0.04, compression: [0, 0.004, 0.01], force: [0, 200, 1400] };

  test('runs straight between what was read, and on beyond it', () => {
    expect(at(0.039, tested)).toEqual({ force: 0, rate: 0, energy: 0 });
    expect(at(0.042, tested).force).toBeCloseTo(100, 9);
    // 200 N at 4 mm, then 1200 N over 6 mm: 200 N/mm.
    expect(at(0.047, tested).force).toBeCloseTo(800, 9);
    expect(at(0.052, tested).force).toBeCloseTo(1800, 9);
    expect(at(0.05, tested).rate).toBeCloseTo(200_000, 6);
  });

  test('stores what pressing it takes: the area under its lines', () => {
    // ½ · 200 N · 4 mm + ½ (200 + 1400) N · 6 mm
    expect(at(0.05, tested).energy).toBeCloseTo(0.4 + 4.8, 9);
  });

  test('read finely off a hardening one bears what that bears', () => {
    // Straight lines lie above a convex curve by at most step² · k3 · 6 d / 8: (0.1 mm)² · 4e8 · 6 · 20 mm / 8 = 0.06 N.
    const depths = Array.from({ length: 201 }, (_, i) => i * 1e-4);
    const fine: RubberSI = {
      start: rubber.start,
      compression: depths,
      force: depths.map((depth) => at(rubber.start + depth).force),
    };
    fc.assert(
      fc.property(fc.double({ min: 0.03, max: 0.06, noNaN: true }), (stroke) => {
        const over = at(stroke, fine).force - at(stroke).force;
        expect(over).toBeGreaterThan(-1e-9);
        expect(over).toBeLessThan(0.061);
      }),
      { seed: 24 },
    );
  });
});
