import type { ForceAt } from '../springs/forceAt.ts';

/** A spring inside the damper that is squeezed near full extension and pulls the damper shorter. */
export interface TopOutSI {
  /** [N/m] */
  readonly rate: number;
  /** Stroke below which it is squeezed: its working length from the extension stop [m]. */
  readonly length: number;
}

/**
 * The top-out spring as what it is, a spring compressed by c = max(0, length − s); all three figures are 0 or positive.
 *   F = k c,   rate = k,   E = k c²/2
 * s  damper stroke from full extension [m]
 * In the strut's sum the force counts *minus* (it shortens the damper); rate and energy count *plus*: −F grows by k
 * for each metre of stroke.
 * Writes into `out` force [N], rate [N/m], energy [J]; at s = length the rate is k. Throws RangeError for NaN.
 * Source: Hooke's law.
 */
export function topOutAt(topOut: TopOutSI, stroke: number, out: ForceAt): void {
  const compression = topOut.length - stroke;
  if (!(compression >= 0)) {
    if (Number.isNaN(stroke)) throw new RangeError('topOutAt: stroke NaN m; a number is needed');
    out.force = 0;
    out.rate = 0;
    out.energy = 0;
    return;
  }
  out.force = topOut.rate * compression;
  out.rate = topOut.rate;
  out.energy = 0.5 * topOut.rate * compression * compression;
}
