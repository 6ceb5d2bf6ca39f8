import { springAt } from '../springs/spring.ts';
import { GRAVITY, type MachineSI } from '../statics/machine.ts';
import type { EndName } from '../statics/prepared.ts';
import type { Planned, Reason, SpringPlan } from './answer.ts';
import type { Demand } from './demand.ts';
import type { SpringChoiceSI } from './question.ts';
import { rulesOut } from './reasons.ts';
import type { WantedLoad } from './wantedLoad.ts';

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
 * The loads that are too much for a spring, and by how much; null where something else rules it out too, which less load would not cure.
 * cured  what less load may cure;  kilogramsOf  how much a planned load is too much, null where it is not
 */
export function excessBy(
  spring: SpringPlan,
  ridden: ReadonlySet<string>,
  wanted: ReadonlyMap<string, WantedLoad>,
  cured: ReadonlySet<Reason['code']>,
  kilogramsOf: (cell: Planned, aim: Demand) => number | null,
): readonly Excess[] | null {
  const cells = new Map(riddenCells(spring, ridden).map(({ loadCase, cell }) => [loadCase, cell]));
  const excess: Excess[] = [];
  for (const { code, loadCase = '' } of failuresOf(spring, ridden)) {
    const cell = cells.get(loadCase);
    const want = wanted.get(loadCase);
    if (!cured.has(code) || want?.kind !== 'wanted' || cell === undefined) return null;
    const kilograms = kilogramsOf(cell, want.aim);
    if (kilograms === null) return null;
    excess.push({ loadCase, kilograms });
  }
  return excess.length > 0 ? excess : null;
}

/** Of a linear spring [N/m]. */
interface Rates {
  readonly least: number;
  readonly most: number;
}

/** The rates that serve every load that is ridden; null where there are none, or where a load asks for what no spring can do. */
export function ratesForAll(
  ridden: ReadonlySet<string>,
  wanted: ReadonlyMap<string, WantedLoad>,
  ratesFor: (aim: Demand) => Rates | null,
): Rates | null {
  let [least, most] = [0, Number.POSITIVE_INFINITY];
  for (const loadCase of ridden) {
    const want = wanted.get(loadCase);
    if (want === undefined || want.kind === 'not wanted') continue;
    const rates = want.kind === 'wanted' ? ratesFor(want.aim) : null;
    if (rates === null) return null;
    least = Math.max(least, rates.least);
    most = Math.min(most, rates.most);
  }
  return least > 0 && least <= most ? { least, most } : null;
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
