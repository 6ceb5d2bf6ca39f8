import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { root } from './root.ts';

/** cos x = x, the Dottie number: OEIS A003957. */
const dottie = 0.7390851332151607;

function counted(f: (x: number) => number): { f: (x: number) => number; calls: () => number } {
  let calls = 0;
  return {
    f: (x) => {
      calls += 1;
      return f(x);
    },
    calls: () => calls,
  };
}

describe('root', () => {
  test('finds known crossings, rising or falling', () => {
    expect(Math.abs(root((x) => x * x - 2, 0, 2, 1e-12) - Math.SQRT2)).toBeLessThanOrEqual(1e-12);
    expect(Math.abs(root((x) => Math.cos(x) - x, 0, 1, 1e-12) - dottie)).toBeLessThanOrEqual(1e-12);
  });

  test('an end that is the root is the answer', () => {
    expect(root((x) => x, 0, 1, 1e-9)).toBe(0);
    expect(root((x) => x - 1, 0, 1, 1e-9)).toBe(1);
  });

  test('a triple root, a jump and a pole-like slope stay within the tolerance', () => {
    expect(Math.abs(root((x) => (x - 0.3) ** 3, 0, 1, 1e-9) - 0.3)).toBeLessThanOrEqual(1e-9);
    expect(Math.abs(root((x) => (x < 0.7 ? -1 : 1e6), 0, 1, 1e-9) - 0.7)).toBeLessThanOrEqual(1e-9);
    expect(Math.abs(root((x) => Math.log(x) + 5, 0, 1, 1e-12) - Math.exp(-5))).toBeLessThanOrEqual(1e-12);
  });

  test('is within the tolerance of the crossing of any monotone cubic, in a bounded number of calls', () => {
    const number = fc.double({ min: -10, max: 10, noNaN: true });
    fc.assert(
      fc.property(
        number,
        fc.double({ min: 0, max: 50, noNaN: true }),
        fc.integer({ min: 1, max: 13 }),
        (r, k, digits) => {
          const tolerance = 10 ** -digits;
          const { f, calls } = counted((x) => (x - r) * (1 + k * (x - r) ** 2));
          expect(Math.abs(root(f, -11, 12, tolerance) - r)).toBeLessThanOrEqual(tolerance);
          expect(calls()).toBeLessThanOrEqual(3 * Math.log2(23 / tolerance) + 4);
        },
      ),
      { seed: 11 },
    );
  });

  test('a jump anywhere and a flat ninth-order root keep the bound on the calls too', () => {
    const place = fc.double({ min: -10, max: 10, noNaN: true });
    fc.assert(
      fc.property(place, fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (r, height) => {
        for (const shape of [(x: number) => (x < r ? -1 : height), (x: number) => (x - r) ** 9]) {
          const { f, calls } = counted(shape);
          expect(Math.abs(root(f, -11, 12, 1e-9) - r)).toBeLessThanOrEqual(1e-9);
          expect(calls()).toBeLessThanOrEqual(3 * Math.log2(23 / 1e-9) + 4);
        }
      }),
      { seed: 14 },
    );
  });

  test('a smooth function takes far fewer calls than bisection', () => {
    const { f, calls } = counted((x) => Math.exp(x) - 2);
    root(f, -4, 4, 1e-12);
    // Bisection takes log2(8/1e-12) = 43 after the two ends.
    expect(calls()).toBeLessThan(20);
  });

  test('a tolerance finer than the numbers ends all the same', () => {
    expect(Math.abs(root((x) => x * x - 2, 0, 2, 1e-300) - Math.SQRT2)).toBeLessThanOrEqual(4e-16);
  });

  test('refuses ends that do not bracket, NaN and a tolerance of zero', () => {
    expect(() => root((x) => x * x + 1, -1, 1, 1e-9)).toThrow(/f\(-1\) = 2 and f\(1\) = 2/);
    expect(() => root(() => Number.NaN, -1, 1, 1e-9)).toThrow(RangeError);
    expect(() => root((x) => (x === -1 || x === 1 ? x : Number.NaN), -1, 1, 1e-9)).toThrow(/NaN/);
    expect(() => root((x) => x, -1, 1, 0)).toThrow(RangeError);
    expect(() => root((x) => x, 1, -1, 1e-9)).toThrow(RangeError);
  });
});
