import { type AdjusterSI, rangeOf, settingNear } from './adjuster.ts';
import type { Reach } from './answer.ts';

/**
 * Whether an adjuster gets where it is wanted. loosest, aim, tightest: positions [m] that keep the sag in its band.
 * 'reached': the aim lies in the range (and, with steps, a step lies in the band); 'at the edge': the aim does not, some of
 * the band does; 'out of reach': none of it does, short by the distance to the nearest of it.
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
  if (aim > most) return { kind: 'at the edge', short: aim - most, past: 'tightest' };
  if (aim < least) return { kind: 'at the edge', short: least - aim, past: 'loosest' };
  const set = settingNear(adjuster, aim, origin).position;
  if (adjuster.kind === 'steps' && (set < loosest || set > tightest)) {
    return { kind: 'between steps', nearest: set - aim };
  }
  return { kind: 'reached', left: most - aim };
}
