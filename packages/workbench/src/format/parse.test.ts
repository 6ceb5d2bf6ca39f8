import { describe, expect, test } from 'vitest';
import { parseNumber, parseQuantity } from './parse.ts';

describe('A number as typed', () => {
  test.each([
    ['28.5', 28.5],
    ['28,5', 28.5],
    [' 160 ', 160],
    ['0,125', 0.125],
    ['.5', 0.5],
    ['-12', -12],
    ['1625,25', 1625.25],
    ['1.625', 1.625],
    ['13 3/4', 13.75],
    ['1/16', 0.0625],
    ['-1 1/2', -1.5],
  ])('"%s" is %d', (text, value) => {
    expect(parseNumber(text)).toBe(value);
  });

  test.each(['1,234', '12,500', '1.234,5', '1,234.5', '1 234', "1'234", '1.234.567'])(
    '"%s" could be decimals or thousands and is refused',
    (text) => {
      expect(parseNumber(text)).toBe('thousands or decimals');
    },
  );

  test.each(['', 'about 80', '--3', '3/0', '1e3', '.', '-'])('"%s" is no number', (text) => {
    expect(parseNumber(text)).toBe('no number');
  });
});

describe('A quantity as typed', () => {
  test.each([
    ['160 lbf/in', { value: 160, unit: 'lbf/in' }],
    ['160lb/in', { value: 160, unit: 'lbf/in' }],
    ['28,5', { value: 28.5, unit: 'N/mm' }],
    ['28 n/mm', { value: 28, unit: 'N/mm' }],
    ['28 +- 5 %', { value: 28, unit: 'N/mm', plusMinus: { value: 5, unit: '%' } }],
    ['160 ± 8 lbf/in', { value: 160, unit: 'lbf/in', plusMinus: { value: 8, unit: 'lbf/in' } }],
    ['160 lbf/in +/- 1 N/mm', { value: 160, unit: 'lbf/in', plusMinus: { value: 1, unit: 'N/mm' } }],
  ] as const)('"%s" is read whole', (text, quantity) => {
    expect(parseQuantity(text, 'rate', 'N/mm')).toEqual({ ok: true, quantity });
  });

  test.each([
    ['160 mm', 'other dimension', 'mm'],
    ['160 furlongs', 'unknown unit', 'furlongs'],
    ['1,234 N/mm', 'thousands or decimals', '1,234 N/mm'],
    ['stiff', 'no number', 'stiff'],
    ['28 ± some', 'no number', 'some'],
  ])('"%s" is refused: %s', (text, why, found) => {
    expect(parseQuantity(text, 'rate', 'N/mm')).toEqual({ ok: false, why, found });
  });
});
