import { describe, expect, test } from 'vitest';
import { paintFor } from './paint.ts';
import { type Column, table } from './table.ts';
import { columnsOf, cutTo, harmless, padTo, wrap } from './text.ts';

const plain = paintFor(false, {});

describe('A text on a terminal', () => {
  // Widths as in the Unicode Standard Annex 11 (from memory): CJK two columns, combining marks none.
  test.each([
    ['tent roll', 9],
    ['Größe', 5],
    ['e\u0301', 1],
    ['山道', 4],
    ['± 5 mm', 6],
  ])('"%s" takes %i columns', (text, columns) => {
    expect(columnsOf(text)).toBe(columns);
  });

  test('is cut with a sign that it was, and never longer than asked', () => {
    expect(cutTo('the fortnight: two, cases and the box', 20)).toBe('the fortnight: two,…');
    expect(cutTo('short', 20)).toBe('short');
    expect(columnsOf(cutTo('山道山道山道', 5))).toBeLessThanOrEqual(5);
  });

  test('is padded on either side', () => {
    expect(padTo('22.4', 6, 'right')).toBe('  22.4');
    expect(padTo('山', 4, 'left')).toBe('山  ');
  });

  test('cannot command the terminal', () => {
    expect(harmless('a\u001b[2Jb\u0007\u202ec')).toBe('a?[2Jb??c');
    expect(harmless('two\nlines\tand a tab')).toBe('two lines and a tab');
  });

  test('is wrapped between words, with its indent', () => {
    expect(wrap('one two three four', 9, ' ', '  ')).toEqual([' one two', '   three', '   four']);
    expect(wrap('unbreakableword x', 8)).toEqual(['unbreakableword', 'x']);
  });
});

describe('A table', () => {
  interface Row {
    readonly name: string;
    readonly sag: string;
  }
  const columns: readonly Column<Row>[] = [
    { head: ['', 'load'], align: 'left', cell: ({ name }) => name },
    { head: ['rear', 'mm'], align: 'right', cell: ({ sag }) => sag },
  ];
  const rows = [
    { name: 'to work', sag: '22 ± 4' },
    { name: 'the fortnight: two, cases and the box', sag: '9' },
  ];

  test('aligns its columns and cuts the first one only', () => {
    expect(table(columns, rows, 36, plain)).toEqual([
      '                                rear',
      '  load                            mm',
      '  to work                     22 ± 4',
      '  the fortnight: two, cases…       9',
    ]);
  });

  test('becomes a list where there is no room for columns, and loses nothing', () => {
    expect(table(columns, rows, 18, plain)).toEqual([
      '  to work',
      '    rear mm: 22 ± 4',
      '  the fortnight: two, cases and the box',
      '    rear mm: 9',
    ]);
  });
});
