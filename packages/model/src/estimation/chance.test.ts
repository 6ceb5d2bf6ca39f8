import { expect, test } from 'vitest';
import { isBeyondChance } from './chance.ts';

/** χ² that chance passes once in a thousand; tables of χ², as in NIST/SEMATECH e-Handbook 1.3.6.7.4. From memory. */
const tabled = [
  [1, 10.828],
  [2, 13.816],
  [5, 20.515],
  [10, 29.588],
  [14, 36.123],
  [30, 59.703],
] as const;

test.each(tabled)('of %d squares, %d is where chance ends, within 4 %%', (freedom, limit) => {
  // The cube root law is an approximation, worst at ν = 1: (1 − 2/9 + 3.0902·√(2/9))³ = 11.157, 3.1 % above 10.828.
  expect(isBeyondChance(limit * 0.96, freedom)).toBe(false);
  expect(isBeyondChance(limit * 1.04, freedom)).toBe(true);
});

test('where as many marks are free as lengths were read, nothing is beyond chance', () => {
  expect(isBeyondChance(0, 0)).toBe(false);
});
