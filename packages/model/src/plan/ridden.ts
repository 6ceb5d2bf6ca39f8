import { springAt } from '../springs/spring.ts';
import { GRAVITY, type MachineSI } from '../statics/machine.ts';
import type { EndName } from '../statics/prepared.ts';
import type { Planned, Reason, SpringPlan } from './answer.ts';
import type { Demand } from './demand.ts';
import type { SpringChoiceSI } from './question.ts';
import { rulesOut } from './reasons.ts';

/** How much of a load is more than a spring bears at its tightest, or its air at the most pressure [kg on the wheel]. */
export interface Excess {
  readonly loadCase: string;
  readonly kilograms: number;
}

/** Planned cells of the loads that are ridden. */
export function riddenCells(
  spring: SpringPlan,
  ridden: ReadonlySet<string>,
): readonly { readonly loadCase: string; readonly cell: Planned }[] {
  return spring.cells.flatMap((cell) => (cell.kind === 'planned' && ridden.has(cell.loadCase) ? [cell] : []));
}

/** What rules a spring out: over all, or with a load that is ridden. */
export function failuresOf(spring: SpringPlan, ridden: ReadonlySet<string>): readonly Reason[] {
  return spring.reasons.filter(
    (reason) => rulesOut(reason) && (reason.loadCase === undefined || ridden.has(reason.loadCase)),
  );
}

/**
 * Kilograms on the wheel that a load is heavier than what a spring bears at an adjuster position, at the wanted sag;
 * negative where it is lighter:  n·(F − F_spring(s + p₀ + a))·MR / (g (cos θ − X' sin θ)).
 * Exact but for the tyre, which the load presses too.
 */
export function kilogramsBeyond(
  machine: MachineSI,
  name: EndName,
  choice: SpringChoiceSI,
  demand: Demand,
  position: number,
): number {
  const at = { force: 0, rate: 0, energy: 0 };
  springAt(choice.spring, demand.stroke + choice.preloadAtZero + position, at);
  const { springForce, motionRatio, rise } = demand;
  return (machine[name].struts.length * (springForce - at.force) * motionRatio) / (GRAVITY * rise);
}
