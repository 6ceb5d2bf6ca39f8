import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatSignedTurns, formatTurns, quarter } from './turns.ts';

test.each([
  [6.25, '6 1/4'],
  [6.33, '6 1/4'],
  [-0.5, '1/2'],
  [0.1, '0'],
  [-3, '3'],
  [2.9, '3'],
])('%d turns are told as "%s"', (turns, text) => {
  expect(formatTurns(turns)).toBe(text);
});

test('what is told is the nearest quarter, and never minus nothing', () => {
  fc.assert(
    fc.property(fc.double({ min: -40, max: 40, noNaN: true }), (turns) => {
      const near = quarter(turns);
      expect(Object.is(near, -0)).toBe(false);
      expect(Math.abs(near - turns)).toBeLessThanOrEqual(0.125);
      const told = formatTurns(turns).split(' ');
      const value = told.reduce((sum, part) => {
        const [top, bottom = '1'] = part.split('/');
        return sum + Number(top) / Number(bottom);
      }, 0);
      expect(value).toBe(Math.abs(near));
    }),
    { seed: 31, numRuns: 1000 },
  );
});

test.each([
  [6.25, '+6 1/4'],
  [-0.75, '-3/4'],
  [-0.1, '0'],
  [0, '0'],
])('%d turns in a narrow table are "%s"', (turns, text) => {
  expect(formatSignedTurns(turns)).toBe(text);
});
