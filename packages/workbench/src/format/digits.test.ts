import fc from 'fast-check';
import { expect, test } from 'vitest';
import { decimalsFor, fixed } from './digits.ts';

// The rule as it stands in the header of decimalsFor, case by case.
test.each([
  [0.27, 2],
  [0.3, 1],
  [0.34, 1],
  [1, 1],
  [1.84, 1],
  [2.9, 1],
  [2.96, 0],
  [3, 0],
  [4.05, 0],
  [9.6, 0],
  [12, 0],
  [29, 0],
  [30, -1],
  [410, -2],
  [0.0999, 2],
])('a ± of %d supports %d decimals', (plusMinus, decimals) => {
  expect(decimalsFor(plusMinus)).toBe(decimals);
});

test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])(
  'a ± of %d is refused with the rule',
  (plusMinus) => {
    expect(() => decimalsFor(plusMinus)).toThrow(RangeError);
  },
);

test('a ± keeps one or two digits, whatever its size', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (plusMinus) => {
      const shown = Number(fixed(plusMinus, decimalsFor(plusMinus)));
      expect(Math.abs(shown - plusMinus)).toBeLessThanOrEqual(0.167 * plusMinus);
      const units = shown * 10 ** decimalsFor(plusMinus);
      expect(Math.round(units)).toBeGreaterThanOrEqual(3);
      expect(Math.round(units)).toBeLessThanOrEqual(30);
    }),
    { seed: 11, numRuns: 2000 },
  );
});

test.each([
  [22.25, 1, '22.3'],
  [0.1 + 0.2, 1, '0.3'],
  [1.005, 2, '1.01'],
  [187.3, -1, '190'],
  [-0.04, 1, '0.0'],
  [-0.2, 0, '0'],
  [-3, -1, '0'],
  [-15.25, 1, '-15.3'],
])('%d to %d decimals is %s', (value, decimals, text) => {
  expect(fixed(value, decimals)).toBe(text);
});

test('no number is ever shown as minus nothing, and rounding moves it by half a place at most', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1e4, max: 1e4, noNaN: true }),
      fc.integer({ min: -2, max: 4 }),
      (value, decimals) => {
        const text = fixed(value, decimals);
        expect(text).not.toMatch(/^-0(?:\.0*)?$/);
        expect(Math.abs(Number(text) - value)).toBeLessThanOrEqual(0.5 * 10 ** -decimals * (1 + 1e-9));
      },
    ),
    { seed: 12, numRuns: 2000 },
  );
});

test('a ± too small for anybody to read is told to the twelfth place', () => {
  for (const plusMinus of [3e-13, 5e-124, 5e-324]) {
    expect(decimalsFor(plusMinus)).toBe(12);
    expect(Number(fixed(plusMinus, decimalsFor(plusMinus)))).toBe(0);
  }
});
