import { expect, test } from 'vitest';
import { nearest } from './nearest.ts';

test.each([
  ['WheelBase', ['wheelbase', 'rake'], 'wheelbase'],
  ['strok', ['stroke', 'shock'], 'stroke'],
  ['sprng', ['springs', 'spring'], 'spring'],
  ['colour', ['wheelbase', 'rake'], undefined],
  ['ab', ['xy'], undefined],
  ['a'.repeat(1e6), ['a'], undefined],
])('%.12s is taken for the right one of %j', (word, known, meant) => {
  expect(nearest(word, known)).toBe(meant);
});
