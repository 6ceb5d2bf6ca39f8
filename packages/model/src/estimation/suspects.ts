import { dot } from '../numerics/dot.ts';
import { type Estimate, seenAs } from './mostProbable.ts';

/**
 * A way in which one thing could be off: readings shifted, or what was known, each by so many of its own deviations for one
 * unit of the fault. One reading by itself is `readings: [[i, 1]]`.
 */
export interface Fault {
  readonly name: string;
  /** Place of the reading, and its shift. */
  readonly readings: readonly (readonly [number, number])[];
  /** Place among the known unknowns, and its shift. */
  readonly known: readonly (readonly [number, number])[];
}

/** How well a fault explains what surprises. */
export interface Suspect {
  readonly fault: Fault;
  /** How many units of the fault explain the surprise best, and the deviation of that. */
  readonly size: number;
  readonly deviation: number;
  /** size/deviation: of a sound set of readings a standard normal number. */
  readonly score: number;
}

/** Less of a fault than this share of a deviation comes to light, so that nothing can be said of it. */
const UNSEEN = 0.05;

/**
 * Tests each fault by itself: score = (P L⁻¹h)·surprise/|P L⁻¹h|, the size of the fault that explains most. The worst first.
 * Faults that do not show at all in these readings are left out.
 * Source: W. Baarda, A testing procedure for use in geodetic networks (1968): data snooping; with faults of several
 * readings, P. J. G. Teunissen, Quality control in integrated navigation systems (1990). From memory.
 */
export function suspectsOf({ lens, surprise }: Estimate, faults: readonly Fault[]): readonly Suspect[] {
  const suspects = faults.flatMap((fault): Suspect[] => {
    const seen = seenAs(lens, rowsMoved(lens, fault));
    const length = Math.hypot(...seen);
    if (!(length > UNSEEN)) return [];
    const score = dot(seen, surprise) / length;
    return [{ fault, size: score / length, deviation: 1 / length, score }];
  });
  return suspects.sort((a, b) => Math.abs(b.score) - Math.abs(a.score));
}

/**
 * How alike two faults look to these readings: 1 or −1 where nothing tells them apart, 0 where neither shows in what the
 * other does.
 */
export function likeness({ lens }: Estimate, one: Fault, other: Fault): number {
  const a = seenAs(lens, rowsMoved(lens, one));
  const b = seenAs(lens, rowsMoved(lens, other));
  const length = Math.hypot(...a) * Math.hypot(...b);
  return length > 0 ? dot(a, b) / length : 0;
}

/** What a fault does to the rows: a shifted reading to its own, a shifted unknown to each that hangs on it. */
function rowsMoved({ rows, weights }: Estimate['lens'], { readings, known }: Fault): readonly number[] {
  const moved = new Array<number>(rows.length).fill(0);
  for (const [i, shift] of readings) moved[i] = moved[i]! + weights[i]! * shift;
  for (const [j, shift] of known) {
    for (let i = 0; i < rows.length; i += 1) moved[i] = moved[i]! + rows[i]![j]! * shift;
  }
  return moved;
}
