import { useState } from 'react';
import type { DrawingTable } from './table.ts';
import './drawing.css';

/** A drawing said as a table, folded away and not made until it is asked for; `of` tells it from others beside it. */
export function AsTable({ table, of }: { readonly table: () => DrawingTable; readonly of?: string }) {
  const [open, setOpen] = useState(false);
  return (
    <details className="as-table" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{of === undefined ? 'As table' : `As table: ${of}`}</summary>
      {open && <Rows table={table()} />}
    </details>
  );
}

function Rows({ table }: { readonly table: DrawingTable }) {
  return (
    <div className="as-table-room">
      <table>
        <caption>{table.caption}</caption>
        <thead>
          <tr>
            {table.headings.map((heading) => (
              <th key={heading} scope="col">
                {heading}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map(([first, ...cells]) => (
            <tr key={`${first} ${cells.join()}`}>
              <th scope="row">{first}</th>
              {cells.map((cell, index) => (
                <td key={table.headings[index + 1]} data-title={table.headings[index + 1]}>
                  {cell}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
