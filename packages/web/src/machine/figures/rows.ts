import type { Quantity } from '@sagwright/records/schema/quantity';
import type { Figure } from './figure.ts';

type Rows = Extract<Figure, { kind: 'rows' }>;

/** A row of a table of quantities; a bare quantity stands under ''. The key is its place, or its id where it has one. */
export interface Row {
  readonly key: string;
  readonly cells: Readonly<Record<string, Quantity>>;
}

/** The rows of a table as the job holds it. What is missing in a row is not there. */
export function rowsOf({ columns, held }: Rows, value: unknown): readonly Row[] {
  if (typeof value !== 'object' || value === null) return [];
  const entries = Object.entries(value as Readonly<Record<string, unknown>>);
  const inOrder = held === 'list' ? entries : entries.sort(([, a], [, b]) => orderOf(a) - orderOf(b));
  const isBare = columns[0]!.name === null;
  return inOrder.map(([key, row]) => ({
    key,
    cells: isBare
      ? bareCells(row)
      : namedCells(
          row,
          columns.map(({ name }) => name ?? ''),
        ),
  }));
}

/** The same rows as the job holds them: a list in this order, or members by their ids; nothing where a table that may be empty is. */
export function withRows({ columns, held, least }: Rows, rows: readonly Row[]): unknown {
  if (least === 0 && rows.length === 0) return undefined;
  const isBare = columns[0]!.name === null;
  if (held === 'list') return rows.map(({ cells }) => (isBare ? (cells[''] ?? {}) : cells));
  return Object.fromEntries(rows.map(({ key, cells }, i) => [key, { order: i + 1, ...cells }]));
}

function orderOf(row: unknown): number {
  return (row as { readonly order?: number }).order ?? 0;
}

function bareCells(row: unknown): Row['cells'] {
  return isQuantity(row) ? { '': row } : {};
}

function namedCells(row: unknown, names: readonly string[]): Row['cells'] {
  const cells = row as Readonly<Record<string, unknown>>;
  const given = names.map((name) => [name, cells[name]] as const);
  return Object.fromEntries(given.filter((cell): cell is [string, Quantity] => isQuantity(cell[1])));
}

function isQuantity(value: unknown): value is Quantity {
  return typeof value === 'object' && value !== null && 'value' in value && 'unit' in value;
}
