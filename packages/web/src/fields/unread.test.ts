import { expect, test } from 'vitest';
import { unreadIn } from './unread.ts';

test('a figure of its dimension is read, whatever its unit and its ±', () => {
  expect(unreadIn(undefined, 'length')).toBeNull();
  expect(unreadIn({ value: 63, unit: 'in', plusMinus: { value: 1, unit: '%' } }, 'length')).toBeNull();
});

test.each([
  [{ value: 1600, unit: 'kg' }, '1600 kg', '1600', 'the unit of a mass; for a length it is mm, cm, m or in.'],
  [{ value: 1600, unit: 'ell' }, '1600 ell', '1600', 'Found "ell"; for a length'],
  [{ value: '1600', unit: 'mm' }, '1600 mm', '1600', 'a number is needed'],
  [{ unit: 'mm' }, 'mm', '', 'Missing; a number is needed'],
  [{ value: 1600 }, '1600', '1600', 'Missing; a unit is needed'],
  [{ value: null, unit: 'mm' }, 'null mm', '', 'a number is needed'],
  [1600, '1600', '1600', 'a figure with its unit is needed'],
  [
    { value: 1600, unit: 'mm', plusMinus: { value: 5, unit: 'kg' } },
    '1600 mm ± 5 kg',
    '1600',
    'The ±: found "kg"',
  ],
])('%j keeps what was typed, and says why it cannot be read', (value, typed, number, why) => {
  const unread = unreadIn(value, 'length');
  expect(unread).toMatchObject({ typed, number });
  expect(unread?.why.replaceAll('\u00a0', ' ')).toContain(why);
});
