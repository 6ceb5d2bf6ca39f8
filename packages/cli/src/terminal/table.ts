import type { Look, Paint } from './paint.ts';
import { columnsOf, cutTo, padTo } from './text.ts';

/** One column: its heading in up to two lines, and what stands in a row. */
export interface Column<Row> {
  readonly head: readonly [string, string];
  readonly align: 'left' | 'right';
  readonly cell: (row: Row) => string;
  readonly look?: (row: Row) => Look | null;
}

/** A column of figures: to the right, as it is. */
export function right<Row>(head: Column<Row>['head'], cell: Column<Row>['cell']): Column<Row> {
  return { head, align: 'right', cell };
}

const GAP = 2;
const INDENT = 2;
const NAME_AT_LEAST = 12;

/**
 * Rows under headings. The first column gives way where the terminal is narrow; where even that does not help, each row
 * becomes a short list, so that nothing is lost on a small screen.
 */
export function table<Row>(
  columns: readonly Column<Row>[],
  rows: readonly Row[],
  width: number,
  paint: Paint,
): readonly string[] {
  const cells = rows.map((row) => columns.map((column) => column.cell(row)));
  const widths = widthsOf(columns, cells, width);
  if (widths === null) return stacked(columns, rows, cells, paint);
  const line = (texts: readonly string[], looks: readonly (Look | null)[]): string => {
    const last = texts.findLastIndex((text) => text !== '');
    const padded = texts.slice(0, last + 1).map((text, i) => {
      const cut = cutTo(text, widths[i]!);
      const isOpen = i === last && columns[i]!.align === 'left';
      const filled = isOpen ? cut : padTo(cut, widths[i]!, columns[i]!.align);
      const look = looks[i] ?? null;
      return look === null || text === '' ? filled : paint(filled, look);
    });
    return ' '.repeat(INDENT) + padded.join(' '.repeat(GAP));
  };
  const quiet = columns.map((): Look => 'quiet');
  const heads = [0, 1]
    .map((i) => columns.map((column) => column.head[i]!))
    .filter((head) => head.some((text) => text !== ''));
  return [
    ...heads.map((head) => line(head, quiet)),
    ...rows.map((row, i) =>
      line(
        cells[i]!,
        columns.map((column) => column.look?.(row) ?? null),
      ),
    ),
  ];
}

/** Whether rows can stand in columns at this width. */
export function fitsIn<Row>(columns: readonly Column<Row>[], rows: readonly Row[], width: number): boolean {
  const cells = rows.map((row) => columns.map((column) => column.cell(row)));
  return widthsOf(columns, cells, width) !== null;
}

/** How wide each column is, the first one giving way; null where there is no room. */
function widthsOf<Row>(
  columns: readonly Column<Row>[],
  cells: readonly (readonly string[])[],
  width: number,
): readonly number[] | null {
  const [name = 0, ...others] = columns.map((column, i) =>
    Math.max(...column.head.map(columnsOf), ...cells.map((row) => columnsOf(row[i]!))),
  );
  const first = Math.min(name, width - others.reduce((sum, each) => sum + each + GAP, INDENT));
  return first < Math.min(NAME_AT_LEAST, name) ? null : [first, ...others];
}

function stacked<Row>(
  columns: readonly Column<Row>[],
  rows: readonly Row[],
  cells: readonly (readonly string[])[],
  paint: Paint,
): readonly string[] {
  return rows.flatMap((row, i) => [
    ' '.repeat(INDENT) + paint(cells[i]![0]!, 'strong'),
    ...columns.slice(1).flatMap((column, j) => {
      const cell = cells[i]![j + 1]!;
      if (cell === '') return [];
      const look = column.look?.(row) ?? null;
      const head = column.head.filter((text) => text !== '').join(' ');
      return [`${' '.repeat(2 * INDENT)}${head}: ${look === null ? cell : paint(cell, look)}`];
    }),
  ]);
}
