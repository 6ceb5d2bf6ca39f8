import { ATMOSPHERE, GRAVITY, type MachineSI } from '../statics/machine.ts';
import type { EndName } from '../statics/prepared.ts';
import type { Planned, PlannedPressure, Reach, Reason } from './answer.ts';
import type { Demand } from './demand.ts';
import { squeezed } from './pressure.ts';
import type { PressureRangeSI } from './question.ts';

/** How far what sets an end gets with a load: its pressure where that is planned [Pa], else its adjuster [m]. */
export function reachOfCell({ pressure, reach }: Planned): Reach {
  return pressure?.isPlanned ? pressure.reach : reach;
}

/** What speaks for or against a spring whose end is set by pressure. Pressures as a gauge reads them, strut fully out. */
export function pressureReason(
  loadCase: string,
  { aim, reach }: PlannedPressure,
  travel: number,
  range: PressureRangeSI,
): Reason {
  const pressure = aim.value - ATMOSPHERE;
  if (reach.kind !== 'at the edge' && reach.kind !== 'out of reach') {
    return { code: 'pressure reaches', side: 'for', loadCase, figures: { pressure } };
  }
  const isHigh = reach.past === 'tightest';
  const end = (isHigh ? range.most : range.least) - ATMOSPHERE;
  const figures = { pressure, end, short: reach.short, travel };
  if (reach.kind === 'at the edge')
    return { code: 'pressure only at the edge', side: 'against', loadCase, figures };
  const code = isHigh ? 'pressure past its most' : 'pressure past its least';
  return { code, side: 'against', loadCase, figures };
}

/**
 * Kilograms on the wheel that a load is heavier than what the air bears at a pressure [Pa], at the wanted sag; negative where it is
 * lighter:  n·A·(P − P_set)·V0/(V0 − A s)·MR / (g (cos θ − X' sin θ)).
 * Exact but for the tyre, which the load presses too. Throws RangeError for struts without air.
 */
export function kilogramsAbove(
  machine: MachineSI,
  name: EndName,
  { stroke, motionRatio, rise }: Demand,
  wanted: number,
  pressure: number,
): number {
  const { struts } = machine[name];
  const air = struts[0]?.air;
  if (air === undefined) throw new RangeError('kilogramsAbove: a strut without air; it must have some');
  const force = struts.length * air.area * (wanted - pressure) * squeezed(air, stroke);
  return (force * motionRatio) / (GRAVITY * rise);
}
