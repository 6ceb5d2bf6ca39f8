import { describe, expect, test } from 'vitest';
import type { Entry, FieldRules } from './draft.ts';
import { readEntry } from './readEntry.ts';

const rules: FieldRules = { dimension: 'rate', bound: 'springRate', step: 500 };
const entry: Entry = { text: '160', unit: 'lbf/in', sure: { kind: 'not said' }, origin: undefined };

describe('An entry', () => {
  test('with ± and origin reads as a figure with them', () => {
    const read = readEntry({ ...entry, sure: { kind: 'typed', text: '5 %' }, origin: 'marked' }, rules);
    expect(read).toEqual({
      kind: 'figure',
      quantity: { value: 160, unit: 'lbf/in', plusMinus: { value: 5, unit: '%' }, origin: 'marked' },
    });
  });

  test.each([
    ['8', { value: 8, unit: 'lbf/in' }],
    ['1,5', { value: 1.5, unit: 'lbf/in' }],
    ['2,5%', { value: 2.5, unit: '%' }],
    ['', undefined],
  ])('takes a ± of "%s" in the unit typed, or of the value in %%', (text, plusMinus) => {
    const read = readEntry({ ...entry, sure: { kind: 'typed', text } }, rules);
    expect(read.kind === 'figure' && read.quantity.plusMinus).toEqual(plusMinus);
  });

  test.each(['-1', 'x', '1,234', '5 % 2', '150 %'])(
    'with a ± of "%s" is refused, and says that it is the ±',
    (text) => {
      const read = readEntry({ ...entry, sure: { kind: 'typed', text } }, rules);
      expect(read).toMatchObject({ kind: 'refused', about: 'sure', why: expect.stringMatching(/±/) });
    },
  );

  // The bound of a spring's rate is 0.5 to 1000 N/mm; 1600 lbf/in is 280 N/mm.
  test('outside its bound is refused with the range in the unit typed and the unit that was likely meant', () => {
    const read = readEntry({ ...entry, text: '1600', unit: 'N/mm' }, rules);
    expect(read).toEqual({
      kind: 'refused',
      about: 'figure',
      why: 'Found 1600\u00a0N/mm; allowed: 0.5\u00a0N/mm to 1000\u00a0N/mm. Was it 1600\u00a0lbf/in?',
      either: [],
    });
  });

  test('that may be a thousand brings both ways to write it', () => {
    expect(readEntry({ ...entry, text: '1,234' }, rules)).toMatchObject({
      kind: 'refused',
      either: ['1234', '1.2340'],
    });
  });

  test('without a bound is judged by nothing but its number', () => {
    expect(readEntry({ ...entry, text: '-3' }, { ...rules, bound: undefined }).kind).toBe('figure');
  });

  test('that is empty says nothing', () => {
    expect(readEntry({ ...entry, text: ' ' }, rules)).toEqual({ kind: 'empty' });
  });
});
