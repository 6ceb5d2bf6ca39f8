import { type Quantity, siOf } from '@sagwright/records/schema/quantity';
import type { Desk } from './desk.ts';
import type { ReadingKind } from './widths.ts';

/** Force against compression, as tested. */
interface ForceRow {
  readonly compression: Quantity<'length'>;
  readonly force: Quantity<'force'>;
}

/** How far off all forces are together that came without a ± of their own: a tester's scale, or what it was set to. */
interface Together {
  /** As a share. */
  readonly halfWidth: number;
  readonly why: string;
}

/**
 * A tested table in SI. A figure with its own ± carries it, apart from all others; forces without one are off all together, under
 * the path of the rows; compressions without one are taken as they stand.
 */
export function forceTable(
  { take }: Desk,
  path: string,
  rows: readonly ForceRow[],
  { halfWidth, why }: Together,
): { readonly compression: readonly number[]; readonly force: readonly number[] } {
  const own = (i: number, name: keyof ForceRow, kind: ReadingKind): number | null => {
    const typed = rows[i]![name];
    return typed.plusMinus === undefined ? null : take.known(`${path}.${i}.${name}`, typed, kind);
  };
  const isShared = rows.some(({ force }) => force.plusMinus === undefined && force.value !== 0);
  const scale = isShared ? take.workedOut(path, 1, halfWidth, 'share', '%', why) : 1;
  return {
    compression: rows.map(({ compression }, i) => own(i, 'compression', 'tape') ?? siOf(compression)),
    force: rows.map(({ force }, i) => own(i, 'force', 'springPoint') ?? scale * siOf(force)),
  };
}
