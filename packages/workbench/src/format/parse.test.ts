import { describe, expect, test } from 'vitest';
import { parseQuantity } from './parse.ts';

describe('A quantity as typed', () => {
  test.each([
    ['160 lbf/in', { value: 160, unit: 'lbf/in' }],
    ['160lb/in', { value: 160, unit: 'lbf/in' }],
    ['28,5', { value: 28.5, unit: 'N/mm' }],
    ['27 1/2 N/mm', { value: 27.5, unit: 'N/mm' }],
    ['28 n/mm', { value: 28, unit: 'N/mm' }],
    ['28 +- 5 %', { value: 28, unit: 'N/mm', plusMinus: { value: 5, unit: '%' } }],
    ['160 ± 8 lbf/in', { value: 160, unit: 'lbf/in', plusMinus: { value: 8, unit: 'lbf/in' } }],
    ['160 lbf/in +/- 1 N/mm', { value: 160, unit: 'lbf/in', plusMinus: { value: 1, unit: 'N/mm' } }],
  ] as const)('"%s" is read whole', (text, quantity) => {
    expect(parseQuantity(text, 'rate', 'N/mm')).toEqual({ ok: true, quantity });
  });

  test.each([
    ['160 mm', { fault: 'other dimension', found: 'mm' }],
    ['160 furlongs', { fault: 'unknown unit', found: 'furlongs' }],
    ['', { fault: 'empty' }],
    [' ', { fault: 'empty' }],
  ])('"%s" is refused as what it is', (text, fault) => {
    expect(parseQuantity(text, 'rate', 'N/mm')).toEqual({ ok: false, ...fault });
  });

  test.each([
    ['1,234 N/mm', 'Write 1234 or 1.2340'],
    ['stiff', 'stiff'],
    ['28 ± some', 'some'],
    ['1.2.3 N/mm', 'groups'],
  ])('"%s" is refused in the words of the number reader', (text, words) => {
    const read = parseQuantity(text, 'rate', 'N/mm');
    expect(read).toMatchObject({ ok: false, fault: 'number' });
    expect('why' in read && read.why).toContain(words);
  });
});
