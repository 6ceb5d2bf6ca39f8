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

/** How far aim and band must come looser for the tightest setting to reach them [m]: 0 or less where it does. */
export function beyondTightest(adjuster: AdjusterSI, loosest: number, aim: number): number {
  const { most } = rangeOf(adjuster);
  return Math.max(aim - most - grace(adjuster).atTightest, loosest - most);
}

/**
 * How far aim and band, which are reached, may move tighter together before they no longer are [m]. With steps that may be
 * sooner than at the last of them: where the nearest step leaves the band, or the next one is not in it yet.
 */
export function roomToTighten(adjuster: AdjusterSI, loosest: number, aim: number, tightest: number): number {
  const end = -beyondTightest(adjuster, loosest, aim);
  if (adjuster.kind === 'continuous') return end;
  const { positions } = adjuster;
  const turns = positions.flatMap((step, i) => [
    step - loosest,
    (step + (positions[i + 1] ?? step)) / 2 - aim,
  ]);
  const failing = turns.filter((turn) => {
    const past = turn + 1e-9;
    const reach = reachOf(adjuster, loosest + past, aim + past, tightest + past, 0);
    return turn >= 0 && turn < end && reach.kind !== 'reached';
  });
  return Math.min(end, ...failing);
}
