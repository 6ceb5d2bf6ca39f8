import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plainDecimal, plainFraction } from './plainNumber.ts';
import { readNumber } from './readNumber.ts';

const run = { seed: 47, numRuns: 2000 };

describe('A number as typed', () => {
  // The rule as it stands in the header of readNumber, case by case.
  test.each([
    ['160', 160],
    ['12,5', 12.5],
    ['12.5', 12.5],
    ['-12,5', -12.5],
    ['−12.5', -12.5],
    ['+3', 3],
    ['.5', 0.5],
    [',5', 0.5],
    ['5.', 5],
    [' 160 ', 160],
    ['0,125', 0.125],
    ['1234,567', 1234.567],
    ['1,2345', 1.2345],
    ['1.2340', 1.234],
    ['1.234,5', 1234.5],
    ['1,234.5', 1234.5],
    ['1,234.567', 1234.567],
    ['1.234.567', 1234567],
    ['1 234', 1234],
    ['1\u2009234,5', 1234.5],
    ['1\u202f234.567', 1234.567],
    ["1'234", 1234],
    ['1’234’567,8', 1234567.8],
    ['3/8', 0.375],
    ['9/8', 1.125],
    ['2 3/4', 2.75],
    ['2-3/4', 2.75],
    ['2 ¾', 2.75],
    ['2¾', 2.75],
    ['22½', 22.5],
    ['½', 0.5],
    ['-2 1/16', -2.0625],
    ['1 234 3/8', 1234.375],
  ])('"%s" is %d', (text, value) => {
    expect(readNumber(text)).toEqual({ kind: 'number', value });
  });

  test.each([
    ['1,234', ['1234', '1.2340']],
    ['12.500', ['12500', '12.5000']],
    ['-1.234', ['-1234', '-1.2340']],
    ['2 5/4', ['3.25']],
  ])('"%s" is unclear, and each of the ways to write it is clear', (text, either) => {
    expect(readNumber(text)).toMatchObject({ kind: 'unclear', either });
    for (const way of either) expect(readNumber(way).kind).toBe('number');
  });

  test('that may be a thousand asks which of the two it is, and says how to write each', () => {
    expect(readNumber('1,234')).toMatchObject({
      why: '1,234: is it 1.234 or 1234? Write 1234 or 1.2340.',
    });
  });

  test.each(['12 5', '1.23.4', '0.123,4', '12.34,5', "5'11", '1 234.567,8', '1.2345.678', '0 123'])(
    '"%s" is unclear: its groups are not of three',
    (text) => {
      expect(readNumber(text)).toMatchObject({ kind: 'unclear', either: [] });
    },
  );

  test.each(['about 80', '--3', '3/0', '1e3', '.', '-', '1/2/3', '160 lbf', '1 2/', '9'.repeat(400)])(
    '"%s" is not a number, and the reason begins with what was found',
    (text) => {
      const read = readNumber(text);
      expect(read.kind).toBe('not a number');
      expect(read.kind === 'not a number' && read.why.startsWith(text.slice(0, 1))).toBe(true);
    },
  );

  test.each(['', ' ', '\u2009'])('"%s" is empty', (text) => {
    expect(readNumber(text)).toEqual({ kind: 'empty' });
  });

  test('is never minus nothing, which no file can hold', () => {
    expect(Object.is((readNumber('-0') as { value: number }).value, 0)).toBe(true);
  });
});

describe('Reading what was written', () => {
  const number = fc.double({ min: -1e9, max: 1e9, noNaN: true }).map((value) => value + 0);

  test('gives the very number back, with a point and with a comma', () => {
    fc.assert(
      fc.property(number, (value) => {
        const written = plainDecimal(value);
        expect(readNumber(written)).toEqual({ kind: 'number', value });
        expect(readNumber(written.replace('.', ','))).toEqual({ kind: 'number', value });
      }),
      run,
    );
  });

  test('gives it back from decimals of every length, three among them', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e7, max: 1e7 }), fc.integer({ min: 0, max: 6 }), (digits, decimals) => {
        const value = Number(`${digits}e-${decimals}`) + 0;
        expect(readNumber(plainDecimal(value))).toEqual({ kind: 'number', value });
      }),
      run,
    );
  });

  // Grouping as the languages do it, by the platform's own Intl: 1,234.5 · 1.234,5 · 1 234,5 · 1’234.5.
  test.each(['en', 'de', 'fr', 'de-CH', 'sv'])(
    'gives it back from the grouping of "%s", where it has decimals',
    (locale) => {
      const style = new Intl.NumberFormat(locale, { minimumFractionDigits: 2, maximumFractionDigits: 2 });
      fc.assert(
        fc.property(fc.integer({ min: -1e9, max: 1e9 }), (hundredths) => {
          expect(readNumber(style.format(hundredths / 100))).toEqual({
            kind: 'number',
            value: hundredths / 100 + 0,
          });
        }),
        run,
      );
    },
  );

  test('gives it back from the sixteenths of an inch rule', () => {
    fc.assert(
      fc.property(fc.integer({ min: -4000, max: 4000 }), (sixteenths) => {
        const value = sixteenths / 16 + 0;
        expect(readNumber(plainFraction(value, 16))).toEqual({ kind: 'number', value });
      }),
      run,
    );
  });

  test('never throws and never gives a number that is not finite, whatever the text', () => {
    const sign = fc.constantFrom(..."0123456789.,/ '-+½x");
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(sign, { maxLength: 12 }).map((signs) => signs.join('')),
        ),
        (text) => {
          const read = readNumber(text);
          if (read.kind === 'number') expect(Number.isFinite(read.value)).toBe(true);
          else if (read.kind !== 'empty') expect(read.why.length).toBeGreaterThan(10);
        },
      ),
      run,
    );
  });
});

test.each([
  [2.0625, '2 1/16'],
  [2.125, '2 1/8'],
  [0.5, '1/2'],
  [-2.75, '-2 3/4'],
  [3, '3'],
  [2.3, '2.3'],
])('%d in sixteenths is written "%s"', (value, text) => {
  expect(plainFraction(value, 16)).toBe(text);
});
