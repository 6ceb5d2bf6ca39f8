/** A length adjuster as it stands: lengths [m] along its thread, longer positive; `null` where nobody has read it. */
export interface LengthAdjusterSI {
  /** Where it stands, and the ends of its range, from one zero. */
  readonly change: number;
  readonly least: number | null;
  readonly most: number | null;
  /** Advance of one turn. */
  readonly lead: number | null;
  /** Thread that is engaged now, and what must remain. */
  readonly thread: { readonly engaged: number; readonly needed: number } | null;
  /** How much further out it may come before its mark shows, or its safety ring no longer seats. */
  readonly toMark: number | null;
}

/** What ends the adjustment. */
export type ThreadEnd = 'range' | 'thread' | 'mark';

/** How far an adjuster can still be turned one way, below 0: how far it must be turned back. */
export interface ThreadLeft {
  readonly length: number;
  /** The same in turns; null where the lead is not known. */
  readonly turns: number | null;
  readonly by: ThreadEnd;
}

/**
 * How much longer the shock can still be made: the least of what range, thread engagement and mark leave.
 *   most − change,   engaged − needed,   to the mark
 * Null where none of the three is known: not checked, and never passed. Below 0 it stands too far out already.
 * Source: common practice, no source: at least one diameter of thread engaged, steel in steel; the maker's own mark goes before it.
 */
export function longerLeft(adjuster: LengthAdjusterSI): ThreadLeft | null {
  const { change, most, thread, toMark } = adjuster;
  const ends: readonly (readonly [ThreadEnd, number | null])[] = [
    ['range', most === null ? null : most - change],
    ['thread', thread === null ? null : thread.engaged - thread.needed],
    ['mark', toMark],
  ];
  let left: ThreadLeft | null = null;
  for (const [by, length] of ends) {
    if (length !== null && (left === null || length < left.length)) left = leftBy(adjuster, by, length);
  }
  return left;
}

/** How much shorter it can still be made: down to the end of its range; null where nobody read that. */
export function shorterLeft(adjuster: LengthAdjusterSI): ThreadLeft | null {
  const { change, least } = adjuster;
  return least === null ? null : leftBy(adjuster, 'range', change - least);
}

function leftBy({ lead }: LengthAdjusterSI, by: ThreadEnd, length: number): ThreadLeft {
  return { by, length, turns: lead === null ? null : length / lead };
}
