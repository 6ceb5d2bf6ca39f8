import type { DrawingTable } from './table.ts';
import './drawing.css';

/** A drawing said as a table, folded away until it is asked for; `of` tells it from others beside it. */
export function AsTable({ table, of }: { table: DrawingTable; of?: string }) {
  return (
    <details className="as-table">
      <summary>{of === undefined ? 'As table' : `As table: ${of}`}</summary>
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
    </details>
  );
}
