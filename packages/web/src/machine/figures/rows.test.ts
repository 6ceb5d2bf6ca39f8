import { arbitraryJob } from '@sagwright/records/testing/arbitraryJob';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { at } from '../../job/edits.ts';
import type { Figure } from './figure.ts';
import { figureGroups } from './groups.ts';
import { rowsOf, withRows } from './rows.ts';

type Rows = Extract<Figure, { kind: 'rows' }>;

test('every table of any job survives being taken apart into rows and put together again', () => {
  let tables = 0;
  fc.assert(
    fc.property(arbitraryJob, (job) => {
      const figures = figureGroups(job).flatMap(({ parts }) => parts.flatMap((part) => part.figures));
      for (const figure of figures.filter((each): each is Rows => each.kind === 'rows')) {
        const value = at(job, figure.path.split('.'));
        const rows = rowsOf(figure, value);
        const again = withRows(figure, rows);
        if (figure.held === 'list') expect(again).toEqual(value);
        // Members keep their ids; their order is told anew.
        else expect(rowsOf(figure, again)).toEqual(rows);
        tables += 1;
      }
    }),
    { seed: 41, numRuns: 100 },
  );
  expect(tables).toBeGreaterThan(20);
});

test('a row that is just begun has no cells yet and breaks nothing', () => {
  const figure: Rows = {
    kind: 'rows',
    path: 'machine.rear.travel.rows',
    label: '',
    columns: [
      { name: 'wheel', label: '', bound: 'wheelTravel', reading: 'tape' },
      { name: 'shock', label: '', bound: 'shockLength', reading: 'tape' },
    ],
    least: 3,
    held: 'list',
  };
  const held = withRows(figure, [{ key: 'new', cells: {} }]);
  expect(held).toEqual([{}]);
  expect(rowsOf(figure, held)).toEqual([{ key: '0', cells: {} }]);
});
