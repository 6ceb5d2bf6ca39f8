import { expect, test } from 'vitest';
import { ticksWithin } from './ticks.ts';

test('ticks are 1, 2 or 5 times a power of ten, within their ends and no more than asked for', () => {
  expect(ticksWithin(0, 3000, 5)).toEqual([0, 1000, 2000, 3000]);
  expect(ticksWithin(-336, 2000, 6)).toEqual([0, 500, 1000, 1500, 2000]);
  expect(ticksWithin(0, 1.1, 6)).toEqual([0, 0.2, 0.4, 0.6, 0.8, 1]);
});
