import type { MachineSI } from '../statics/machine.ts';
import type { EndName } from '../statics/prepared.ts';
import { rangeOf } from './adjuster.ts';
import type { Remedy, SpringPlan } from './answer.ts';
import type { EndQuestion } from './question.ts';
import { kilogramsPerMetre, riddenCells } from './ridden.ts';
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
    ...lessLoad(springs, end, ridden, name, machine),
    ...otherRate(end, ridden, wanted),
    ...otherDamper(springs, end, ridden),
  ];
}

/**
 * The spring for which the least must be taken off, and from which loads; only where every failing load is too heavy for it,
 * and it fails on nothing else (coils that touch on a tight collar still do with less aboard).
 */
function lessLoad(
  springs: readonly SpringPlan[],
  end: EndQuestion,
  ridden: ReadonlySet<string>,
  name: EndName,
  machine: MachineSI,
): readonly Remedy[] {
  if (end.adjuster === null) return [];
  const { most } = rangeOf(end.adjuster);
  let least: { total: number; remedies: readonly LessLoad[] } | null = null;
  for (const spring of springs) {
    const failsAnyway = spring.reasons.some(({ side, loadCase }) => side === 'against' && !loadCase);
    if (failsAnyway) continue;
    const failing = riddenCells(spring, ridden).filter(({ cell }) => cell.reach.kind !== 'reached');
    const remedies = failing.flatMap(({ loadCase, cell }): LessLoad[] => {
      const past = (cell.positions?.aim.value ?? 0) - most;
      if (past <= 0) return [];
      const kilograms = past * kilogramsPerMetre(spring, cell, name, machine);
      return [{ kind: 'less load', loadCase, spring: spring.spring, kilograms }];
    });
    if (failing.length === 0 || remedies.length < failing.length) continue;
    const total = remedies.reduce((sum, remedy) => sum + remedy.kilograms, 0);
    if (least === null || total < least.total) least = { total, remedies };
  }
  return least?.remedies ?? [];
}

type LessLoad = Extract<Remedy, { kind: 'less load' }>;

/**
 * Rates [N/m] of a linear spring, as long as the fitted one, that would bring every load into the adjuster's range and keep
 * the stated preload: F/(s + p₀ + most) <= k <= F/(s + max(p₀, keep)) for each load, F and s what the load demands.
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
  let least = 0;
  let greatest = Number.POSITIVE_INFINITY;
  for (const [loadCase, want] of wanted) {
    if (want.kind !== 'wanted' || !ridden.has(loadCase)) continue;
    const { springForce, stroke } = want.aim;
    if (springForce <= 0) return [];
    const tightest = stroke + preloadAtZero + most;
    if (tightest <= 0) return [];
    least = Math.max(least, springForce / tightest);
    greatest = Math.min(greatest, springForce / (stroke + Math.max(preloadAtZero, end.keepPreload)));
  }
  if (!(least > 0) || least > greatest) return [];
  return [{ kind: 'other rate', least, most: greatest, freeLength }];
}

/** How much more range the adjuster would need with the spring that lacks the least of it. */
function otherDamper(
  springs: readonly SpringPlan[],
  end: EndQuestion,
  ridden: ReadonlySet<string>,
): readonly Remedy[] {
  if (end.adjuster === null) return [];
  const { most } = rangeOf(end.adjuster);
  let least: Extract<Remedy, { kind: 'other damper' }> | null = null;
  for (const spring of springs) {
    const positions = riddenCells(spring, ridden).flatMap(({ cell }) => cell.positions?.aim.value ?? []);
    if (positions.length === 0) continue;
    const moreRange = Math.max(0, Math.max(...positions) - most) + Math.max(0, -Math.min(...positions));
    if (moreRange > 0 && (least === null || moreRange < least.moreRange)) {
      least = { kind: 'other damper', moreRange, spring: spring.spring };
    }
  }
  return least === null ? [] : [least];
}
