import { bounds } from '@sagwright/records/schema/bounds';
import type { Quantity } from '@sagwright/records/schema/quantity';
import { newId } from '../../app/newId.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { rows as words } from '../../words/figures.ts';
import type { Column, Figure } from './figure.ts';
import { type Row, rowsOf, withRows } from './rows.ts';

interface RowsFieldProps {
  readonly figure: Extract<Figure, { kind: 'rows' }>;
  /** As the job holds it. */
  readonly value: unknown;
  readonly onCommit: (value: unknown) => void;
}

/** A small table: a row for each pair that was read, one more at the end, the last taken away. */
export function RowsField({ figure, value, onCommit }: RowsFieldProps) {
  const { path, label, columns, least } = figure;
  const rows = rowsOf(figure, value);
  const commit = (next: readonly Row[]): void => onCommit(withRows(figure, next));
  const setCell = (row: number, column: Column, quantity: Quantity | null): void =>
    commit(rows.map((each, i) => (i === row ? withCell(each, column, quantity) : each)));
  return (
    <fieldset className="figures-rows sheet-wide" id={path}>
      <legend>{label}</legend>
      {rows.map((row, i) => (
        <div key={row.key} className="figures-row">
          {columns.map((column) => (
            <QuantityField
              key={column.name}
              small
              label={`${i + 1}: ${column.label}`}
              path={[path, row.key, column.name].filter((step) => step !== null).join('.')}
              quantity={row.cells[column.name ?? '']}
              dimension={bounds[column.bound].dimension}
              bound={column.bound}
              reading={column.reading}
              onCommit={(quantity) => setCell(i, column, quantity)}
            />
          ))}
        </div>
      ))}
      <div className="sheet-keys">
        <button
          type="button"
          className="key"
          onClick={() => commit([...rows, { key: newId('row'), cells: {} }])}
        >
          {words.more}
        </button>
        <button
          type="button"
          className="key"
          disabled={rows.length <= least}
          onClick={() => commit(rows.slice(0, -1))}
        >
          {words.less}
        </button>
      </div>
    </fieldset>
  );
}

function withCell(row: Row, { name }: Column, quantity: Quantity | null): Row {
  const { [name ?? '']: _before, ...others } = row.cells;
  return { ...row, cells: quantity === null ? others : { ...others, [name ?? '']: quantity } };
}
