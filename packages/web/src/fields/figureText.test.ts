import { expect, test } from 'vitest';
import { figureNumber, numberIn, stepText, typedNumber } from './figureText.ts';

// 1 lbf/in = 0.175127 N/mm (4.448222 N over 25.4 mm), 1 kgf = 9.80665 N.
test('160 lbf/in is shown in each unit of a rate', () => {
  const typed = { value: 160, unit: 'lbf/in' } as const;
  expect(numberIn(typed, 'N/mm')).toBe('28.0');
  expect(numberIn(typed, 'kgf/mm')).toBe('2.86');
});

test.each([
  [608, 1, '608.0'],
  [571.5, 1, '571.5'],
  [571.25, 1, '571.25'],
  [608, 0, '608'],
])('%d with the %d decimals of its step is shown as "%s"', (value, decimals, text) => {
  expect(typedNumber(value, decimals)).toBe(text);
});

test('an assumed figure has the digits that its ± supports', () => {
  expect(figureNumber(185e3, 30e3, 'N/mm')).toBe('190 ± 30');
});

test('a step in inches stands on its key as on a rule', () => {
  expect(stepText(1 / 64, 'in')).toBe('1/64');
  expect(stepText(0.5, 'mm')).toBe('0.5');
});
