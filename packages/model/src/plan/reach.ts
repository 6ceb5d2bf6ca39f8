import { type AdjusterSI, rangeOf, settingNear } from './adjuster.ts';
import type { Reach } from './answer.ts';

/**
 * Whether an adjuster gets where it is wanted. loosest, aim, tightest: positions [m] that keep the sag in its band.
 * 'reached': the aim lies in the range; with steps, the step nearest to it lies in the band, and the aim is no further past the
 * last step than half a step, since one cannot aim closer between steps either. 'at the edge': the aim lies past the range,
 * some of the band does not; 'out of reach': none of it lies in the range, short by the distance to the nearest of it.
 */
export function reachOf(
  adjuster: AdjusterSI,
  loosest: number,
  aim: number,
  tightest: number,
  origin: number,
): Reach {
  const { least, most } = rangeOf(adjuster);
  if (loosest > most) return { kind: 'out of reach', short: loosest - most, past: 'tightest' };
  if (tightest < least) return { kind: 'out of reach', short: least - tightest, past: 'loosest' };
  const { atLoosest, atTightest } = grace(adjuster);
  if (aim > most + atTightest) return { kind: 'at the edge', short: aim - most, past: 'tightest' };
  if (aim < least - atLoosest) return { kind: 'at the edge', short: least - aim, past: 'loosest' };
  const set = settingNear(adjuster, aim, origin).position;
  if (adjuster.kind === 'steps' && (set < loosest || set > tightest)) {
    return { kind: 'between steps', nearest: set - aim };
  }
  return { kind: 'reached', left: Math.max(0, most - aim) };
}

/** How far past either end an aim still has that end for its nearest step: half a step; 0 where any position can be set. */
function grace(adjuster: AdjusterSI): { readonly atLoosest: number; readonly atTightest: number } {
  if (adjuster.kind === 'continuous' || adjuster.positions.length < 2) return { atLoosest: 0, atTightest: 0 };
  const { positions } = adjuster;
  return {
    atLoosest: (positions[1]! - positions[0]!) / 2,
    atTightest: (positions.at(-1)! - positions.at(-2)!) / 2,
  };
}
