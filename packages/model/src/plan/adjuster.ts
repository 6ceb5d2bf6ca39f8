/**
 * A preload adjuster. Its position a is how much further it squeezes the spring than at its loosest end [m], so that
 * preload = a + (preload at a = 0, which hangs on the spring's free length).
 */
export type AdjusterSI =
  /** Collar, cap or spacer: any position of 0 … most; hands set it to `quantum` (a quarter turn, a cut). */
  | {
      readonly kind: 'continuous';
      readonly most: number;
      readonly quantum: number;
      /** Advance of one turn [m]; null where nothing is turned (a spacer). */
      readonly lead: number | null;
      /** What is read at a = 0 between the two named faces [m], and whether it grows (+1) or shrinks (−1) with a. */
      readonly readingAtZero: number;
      readonly sense: 1 | -1;
    }
  /** A stepped cam or clicks: only these positions [m], rising from 0. */
  | { readonly kind: 'steps'; readonly positions: readonly number[] };

/** Where an adjuster is set: position [m]; reading [m] between its faces, or the step (0 is the loosest), as fits its kind. */
export interface AdjusterSetting {
  readonly position: number;
  readonly reading: number | null;
  readonly step: number | null;
}

/** The ends of an adjuster's range of positions [m]. */
export function rangeOf(adjuster: AdjusterSI): { readonly least: 0; readonly most: number } {
  return { least: 0, most: adjuster.kind === 'continuous' ? adjuster.most : adjuster.positions.at(-1)! };
}

/**
 * The setting nearest to a wanted position that hands can really make: a quarter turn, a cut, a step, inside the range.
 * Quarter turns are counted from `origin`, the position that the collar stands at now, since that is where turning starts.
 */
export function settingNear(adjuster: AdjusterSI, position: number, origin: number): AdjusterSetting {
  if (adjuster.kind === 'steps') {
    const distance = (step: number): number => Math.abs(adjuster.positions[step]! - position);
    const step = adjuster.positions.reduce((best, _, i) => (distance(i) < distance(best) ? i : best), 0);
    return { position: adjuster.positions[step]!, reading: null, step };
  }
  const set = reachable(position, adjuster.most, adjuster.quantum, origin);
  return { position: set, reading: readingAt(adjuster, set), step: null };
}

/** The ends of the range can always be set; between them the quanta counted from `origin`. */
function reachable(position: number, most: number, quantum: number, origin: number): number {
  if (position >= most) return most;
  if (position <= 0) return 0;
  const nearest = origin + Math.round((position - origin) / quantum) * quantum;
  return Math.max(0, Math.min(most, nearest));
}

/** Reading [m] between the two named faces at a position. */
export function readingAt(adjuster: Extract<AdjusterSI, { kind: 'continuous' }>, position: number): number {
  return adjuster.readingAtZero + adjuster.sense * position;
}

/** Turns from one position to another, tighter positive; null where nothing is turned. */
export function turnsBetween(adjuster: AdjusterSI, from: number, to: number): number | null {
  return adjuster.kind === 'continuous' && adjuster.lead !== null ? (to - from) / adjuster.lead : null;
}
