import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CubicAt, cubicAt, type MonotoneCubic, monotoneCubic } from './monotoneCubic.ts';

function at(curve: MonotoneCubic, x: number): CubicAt {
  const out = { value: 0, first: 0, second: 0 };
  cubicAt(curve, x, out);
  return out;
}

const gap = fc.double({ min: 0.01, max: 3, noNaN: true });
const rise = fc.double({ min: 0, max: 5, noNaN: true });
/** Points that never fall, from gaps and rises. */
const risingPoints = fc.array(fc.tuple(gap, rise), { minLength: 2, maxLength: 12 }).map((steps) => {
  const x = [0];
  const y = [-1];
  for (const [dx, dy] of steps) {
    x.push(x.at(-1)! + dx);
    y.push(y.at(-1)! + dy);
  }
  return { x, y };
});

describe('monotoneCubic', () => {
  test('passes through its points', () => {
    fc.assert(
      fc.property(risingPoints, ({ x, y }) => {
        const curve = monotoneCubic(x, y);
        x.forEach((place, i) => {
          expect(at(curve, place).value).toBeCloseTo(y[i]!, 9);
        });
      }),
      { seed: 12 },
    );
  });

  test('never falls where the points do not', () => {
    fc.assert(
      fc.property(risingPoints, fc.double({ min: 0, max: 1, noNaN: true }), ({ x, y }, share) => {
        const curve = monotoneCubic(x, y);
        const place = share * x.at(-1)!;
        expect(at(curve, place).first).toBeGreaterThanOrEqual(-1e-9);
      }),
      { seed: 13 },
    );
  });

  test('its derivatives are the slopes of what they derive', () => {
    const curve = monotoneCubic([0, 1, 2.5, 3, 5], [0, 0.4, 2, 2.1, 4]);
    const step = 1e-5;
    for (const x of [-0.5, 0.3, 1.7, 2.9, 4.2, 6]) {
      const below = at(curve, x - step);
      const above = at(curve, x + step);
      expect(at(curve, x).first).toBeCloseTo((above.value - below.value) / (2 * step), 8);
      expect(at(curve, x).second).toBeCloseTo((above.first - below.first) / (2 * step), 8);
    }
  });

  test('a straight line stays straight, inside and beyond', () => {
    const curve = monotoneCubic([0, 1, 3, 4], [1, 3, 7, 9]);
    for (const x of [-2, 0, 0.4, 2, 4, 7]) {
      const there = at(curve, x);
      expect(there.value).toBeCloseTo(1 + 2 * x, 12);
      expect(there.first).toBeCloseTo(2, 12);
      expect(there.second).toBeCloseTo(0, 12);
    }
  });

  test('two points make a line', () => {
    expect(monotoneCubic([0, 2], [0, 3]).slope).toEqual([1.5, 1.5]);
  });

  test('has no slope at a peak', () => {
    expect(monotoneCubic([0, 1, 2], [0, 1, 0]).slope[1]).toBe(0);
  });

  test('refuses points it cannot use and a place that is no number', () => {
    expect(() => monotoneCubic([0], [0])).toThrow(RangeError);
    expect(() => monotoneCubic([0, 1], [0])).toThrow(RangeError);
    expect(() => monotoneCubic([0, 1, 1], [0, 1, 2])).toThrow('x[2] = 1 after 1');
    expect(() => monotoneCubic([0, 1], [0, Number.NaN])).toThrow(RangeError);
    expect(() => at(monotoneCubic([0, 1], [0, 1]), Number.NaN)).toThrow(RangeError);
  });
});
