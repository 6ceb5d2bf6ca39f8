import fc from 'fast-check';
import { expect, test } from 'vitest';
import { normalBelow } from './normalLaw.ts';

/** Abramowitz, Stegun, Handbook of Mathematical Functions, table 26.1 (from memory, as every table of the normal law has them). */
const tabled = [
  [0, 0.5],
  [1, 0.841344746068543],
  [1.6448536269514722, 0.95],
  [-1.959963984540054, 0.025],
  [2, 0.977249868051821],
  [3, 0.99865010196837],
  [-3, 0.00134989803163009],
  [-4, 3.16712418331199e-5],
] as const;

test.each(tabled)('below %d lies the share %d that tables tell', (t, share) => {
  // Tables of 15 digits.
  expect(Math.exp(normalBelow(t).log) / share).toBeCloseTo(1, 12);
});

test('what lies below t and below −t is everything', () => {
  fc.assert(
    fc.property(fc.double({ min: -6, max: 6, noNaN: true }), (t) => {
      expect(Math.exp(normalBelow(t).log) + Math.exp(normalBelow(-t).log)).toBeCloseTo(1, 14);
    }),
  );
});

test('the hazard is the slope of the logarithm, also where nothing but the logarithm is left', () => {
  fc.assert(
    fc.property(fc.double({ min: -60, max: 6, noNaN: true }), (t) => {
      const step = 1e-4;
      const slope = (normalBelow(t + step).log - normalBelow(t - step).log) / (2 * step);
      // Third derivative of the logarithm is below 1, so the difference is off by 1e-8/6; rounding of log ≤ 1800 by 4e-9.
      expect(Math.abs(normalBelow(t).hazard - slope)).toBeLessThan(2e-8);
    }),
  );
});

test('far below, the hazard goes towards the distance, from above', () => {
  // Mills' ratio lies between x/(x² + 1) and 1/x: R. D. Gordon, Ann. Math. Statist. 12 (1941), from memory.
  for (const x of [3, 10, 100, 1e4]) {
    const { hazard } = normalBelow(-x);
    expect(hazard).toBeGreaterThanOrEqual(x);
    expect(hazard).toBeLessThanOrEqual(x + 1 / x);
  }
});
