import { expect, test } from 'vitest';
import { readCount } from './readCount.ts';

const clicks = { least: 0, most: 22, unit: 'clicks', whole: true };
const share = { least: 0, most: 100, unit: '%', whole: false };

test.each([
  ['9', clicks, 9],
  ['22', clicks, 22],
  ['', clicks, null],
  ['12,5', share, 12.5],
  ['100', share, 100],
])('"%s" of %o is %s', (text, range, value) => {
  expect(readCount(text, range)).toEqual({ ok: true, value });
});

test.each([
  ['9.5', clicks, 'found 9.5; a whole number is needed.'],
  ['23', clicks, 'found 23; allowed: 0 to 22 clicks.'],
  ['-1', { ...clicks, most: undefined }, 'found -1; at least 0 clicks.'],
  ['101', share, 'found 101; allowed: 0 to 100 %.'],
  ['few', clicks, 'few: not a number. Digits with one comma or point, or a fraction like 2 3/4.'],
])('"%s" of %o is refused', (text, range, why) => {
  expect(readCount(text, range)).toEqual({ ok: false, why });
});
