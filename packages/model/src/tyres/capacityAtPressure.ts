/** A row of a maker's table: what the tyre may bear [kg] at a cold pressure [Pa, gauge]. */
export interface CapacityAt {
  readonly pressure: number;
  readonly capacity: number;
}

/**
 * What a tyre may bear at a pressure [kg], along straight lines between the rows of its maker's table.
 * rows  at least one, pressures rising
 * Null below the first row: not known there. Above the last row its figure holds: more air is not taken to bear more.
 * Rejected: carrying the capacity of one pressure over to another by a power of their ratio; the power that is found
 * is for car tyres, and the maker's table rules.
 * Throws RangeError for a table without rows or a pressure that is no number.
 */
export function capacityAtPressure(rows: readonly CapacityAt[], pressure: number): number | null {
  const last = rows.at(-1);
  if (last === undefined || Number.isNaN(pressure))
    throw new RangeError(
      `capacityAtPressure: ${rows.length} rows, pressure ${pressure}; at least one row and a number`,
    );
  if (pressure >= last.pressure) return last.capacity;
  const above = rows.findIndex((row) => row.pressure > pressure);
  const [low, high] = [rows[above - 1], rows[above]!];
  if (low === undefined) return null;
  const share = (pressure - low.pressure) / (high.pressure - low.pressure);
  return low.capacity + share * (high.capacity - low.capacity);
}
