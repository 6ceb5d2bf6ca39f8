import type { MachineSI } from '../statics/machine.ts';
import type { EndName } from '../statics/prepared.ts';
import { rangeOf } from './adjuster.ts';
import type { Planned, Reason, Remedy, SpringPlan } from './answer.ts';
import { excessOfPressure, pressureRemedies } from './pressureRemedies.ts';
import type { EndQuestion } from './question.ts';
import { beyondTightest } from './reach.ts';
import { type Excess, excessBy, failuresOf, kilogramsBeyond, ratesForAll, riddenCells } from './ridden.ts';
import type { WantedLoad } from './wantedLoad.ts';

/** What would help where no spring fits: less on board, another rate, another damper, in that order of honesty. */
export function remediesOf(
  springs: readonly SpringPlan[],
  end: EndQuestion,
  ridden: ReadonlySet<string>,
  name: EndName,
  machine: MachineSI,
  wanted: ReadonlyMap<string, WantedLoad>,
): readonly Remedy[] {
  return [
    ...lessLoad(springs, end, ridden, name, machine, wanted),
    ...(end.adjuster === null
      ? pressureRemedies(springs, end, ridden, name, machine, wanted)
      : [...otherRate(end, ridden, wanted), ...otherDamper(springs, end, ridden)]),
  ];
}

/** The spring for which the least must be taken off, and from which loads; only where nothing else rules it out. */
function lessLoad(
  springs: readonly SpringPlan[],
  end: EndQuestion,
  ridden: ReadonlySet<string>,
  name: EndName,
  machine: MachineSI,
  wanted: ReadonlyMap<string, WantedLoad>,
): readonly Remedy[] {
  let least: { total: number; remedies: readonly Remedy[] } | null = null;
  for (const plan of springs) {
    const excess = excessOf(plan, end, ridden, name, machine, wanted);
    if (excess === null) continue;
    const total = excess.reduce((sum, { kilograms }) => sum + kilograms, 0);
    const remedies = excess.map(
      ({ loadCase, kilograms }): Remedy => ({ kind: 'less load', loadCase, spring: plan.spring, kilograms }),
    );
    if (least === null || total < least.total) least = { total, remedies };
  }
  return least?.remedies ?? [];
}

/**
 * The loads that are too much for a spring, and by how much; null where something else rules it out too, which less load
 * would not cure (coils that touch, a spring that goes loose, a sag outside the travel).
 */
export function excessOf(
  spring: SpringPlan,
  end: EndQuestion,
  ridden: ReadonlySet<string>,
  name: EndName,
  machine: MachineSI,
  wanted: ReadonlyMap<string, WantedLoad>,
): readonly Excess[] | null {
  const choice = end.choices.find(({ id }) => id === spring.spring);
  if (choice === undefined) return null;
  if (end.adjuster === null) {
    return end.pressure === undefined
      ? null
      : excessOfPressure(spring, end.pressure, ridden, name, machine, wanted);
  }
  const { adjuster } = end;
  return excessBy(spring, ridden, wanted, ENDS_OF_RANGE, ({ positions }, aim) => {
    if (positions === null) return null;
    const beyond = beyondTightest(adjuster, positions.loosest, positions.aim.value);
    return beyond > 0 ? kilogramsBeyond(machine, name, choice, aim, positions.aim.value - beyond) : null;
  });
}

/** What an adjuster of more range would cure. */
const ENDS_OF_RANGE: ReadonlySet<Reason['code']> = new Set([
  'only at the edge',
  'past the tightest',
  'past the loosest',
]);

/**
 * Rates [N/m] of a linear spring, as long as the fitted one, that would bring every load into the adjuster's range and keep
 * the stated preload: F/(s + p₀ + most) <= k <= F/(s + max(p₀, keep)) for each load, F and s what the load demands. None
 * where a load asks for what no spring can do. Between the steps of a cam it may still stand off its aim; coil bind hangs
 * on a spring that is not there yet.
 */
function otherRate(
  end: EndQuestion,
  ridden: ReadonlySet<string>,
  wanted: ReadonlyMap<string, WantedLoad>,
): readonly Remedy[] {
  const fitted = end.choices.find((choice) => choice.fitted);
  if (end.adjuster === null || fitted === undefined) return [];
  const { most } = rangeOf(end.adjuster);
  const { preloadAtZero, freeLength } = fitted;
  const rates = ratesForAll(ridden, wanted, ({ springForce, stroke }) => {
    const tightest = stroke + preloadAtZero + most;
    if (springForce <= 0 || tightest <= 0) return null;
    const loosest = stroke + Math.max(preloadAtZero, end.keepPreload);
    return { least: springForce / tightest, most: springForce / loosest };
  });
  return rates === null ? [] : [{ kind: 'other rate', ...rates, freeLength }];
}

/**
 * How much more range the adjuster would need, at both its ends together, with the spring that lacks the least of it;
 * only springs that nothing else rules out, and that keep preload and room for their coils out there.
 */
function otherDamper(
  springs: readonly SpringPlan[],
  end: EndQuestion,
  ridden: ReadonlySet<string>,
): readonly Remedy[] {
  if (end.adjuster === null) return [];
  const { most } = rangeOf(end.adjuster);
  let least: Extract<Remedy, { kind: 'other damper' }> | null = null;
  for (const spring of springs) {
    if (!failuresOf(spring, ridden).every(({ code }) => ENDS_OF_RANGE.has(code))) continue;
    const cells = riddenCells(spring, ridden);
    const positions = cells.flatMap(({ cell }) => cell.positions?.aim.value ?? []);
    if (positions.length === 0 || !cells.every(({ cell }) => wouldHold(cell, end))) continue;
    const moreRange = Math.max(0, Math.max(...positions) - most) + Math.max(0, -Math.min(...positions));
    if (moreRange > 0 && (least === null || moreRange < least.moreRange)) {
      least = { kind: 'other damper', moreRange, spring: spring.spring };
    }
  }
  return least === null ? [] : [least];
}

/** Whether a spring set where the aim lies, and not where the range ends, keeps its preload and its coils apart. */
function wouldHold({ preload, set }: Planned, end: EndQuestion): boolean {
  if (preload === null) return false;
  const tighter = preload.value - set.preload;
  const room = set.strokeToCoilBind === null ? Number.POSITIVE_INFINITY : set.strokeToCoilBind - tighter;
  return room >= end.keepFromCoilBind && preload.value >= end.keepPreload;
}
