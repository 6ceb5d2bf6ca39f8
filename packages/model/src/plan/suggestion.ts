import type { MachineSI } from '../statics/machine.ts';
import type { EndName } from '../statics/prepared.ts';
import { rangeOf } from './adjuster.ts';
import type { Flip, Reason, SpringPlan, Suggestion } from './answer.ts';
import type { EndQuestion, LoadCaseSI } from './question.ts';
import { remediesOf } from './remedies.ts';
import { kilogramsPerMetre, riddenCells } from './ridden.ts';
import type { WantedLoad } from './wantedLoad.ts';

/** Rates closer than this share count as the same. */
const SAME_RATE = 1e-3;

/**
 * One suggested spring: of those that fit, the softest; of equals the one with less collar travel. With it the spring that
 * comes next and what that one fails on, and what load would change the answer. Where nothing fits: what would.
 * springs  softest first
 */
export function suggestionOf(
  springs: readonly SpringPlan[],
  end: EndQuestion,
  loadCases: readonly LoadCaseSI[],
  name: EndName,
  machine: MachineSI,
  wanted: ReadonlyMap<string, WantedLoad>,
): Suggestion {
  const ridden = new Set(loadCases.filter((load) => load.share > 0).map((load) => load.id));
  const asked = springs.some((spring) => riddenCells(spring, ridden).length > 0);
  if (!asked) return { kind: 'nothing to choose' };
  const fitting = springs.filter((spring) => spring.fits);
  if (fitting.length === 0) {
    return { kind: 'none', remedies: remediesOf(springs, end, ridden, name, machine, wanted) };
  }
  const softest = fitting[0]!;
  const equals = fitting.filter((spring) => spring.rate <= softest.rate * (1 + SAME_RATE));
  const best = equals.reduce((a, b) => (collarTravel(b, ridden) < collarTravel(a, ridden) ? b : a));
  const runnerUp = runnerUpOf(springs, best, fitting);
  return {
    kind: 'spring',
    spring: best.spring,
    runnerUp: runnerUp === null ? null : { spring: runnerUp.spring, failsOn: firstFailure(runnerUp) },
    flips: flipsOf(best, runnerUp, end, ridden, name, machine),
  };
}

function collarTravel(spring: SpringPlan, ridden: ReadonlySet<string>): number {
  const positions = riddenCells(spring, ridden).map(({ cell }) => cell.positions?.aim.value ?? 0);
  return Math.max(...positions) - Math.min(...positions);
}

/** The next softer spring, which fails; with none softer the next stiffer that fits. */
function runnerUpOf(
  springs: readonly SpringPlan[],
  best: SpringPlan,
  fitting: readonly SpringPlan[],
): SpringPlan | null {
  const softer = springs.filter((spring) => spring.rate < best.rate * (1 - SAME_RATE));
  return softer.at(-1) ?? fitting.find((spring) => spring !== best) ?? null;
}

function firstFailure(spring: SpringPlan): Reason | null {
  const against = spring.reasons.filter(
    (reason) => reason.side === 'against' && reason.code !== 'machine alone tops out',
  );
  return against.reduce<Reason | null>((worst, each) => {
    if (worst === null) return each;
    return (each.figures.short ?? 0) > (worst.figures.short ?? 0) ? each : worst;
  }, null);
}

function flipsOf(
  best: SpringPlan,
  runnerUp: SpringPlan | null,
  end: EndQuestion,
  ridden: ReadonlySet<string>,
  name: EndName,
  machine: MachineSI,
): readonly Flip[] {
  if (end.adjuster === null) return [];
  const { most } = rangeOf(end.adjuster);
  const flips: Flip[] = [];
  if (runnerUp !== null && !runnerUp.fits) {
    const failing = riddenCells(runnerUp, ridden).filter(({ cell }) => cell.reach.kind !== 'reached');
    const [only] = failing;
    // It fits once its aim is reached, so what counts is how far the aim lies past the end, not how far the band does.
    const past = (only?.cell.positions?.aim.value ?? 0) - most;
    if (failing.length === 1 && only !== undefined && past > 0) {
      const kilograms = past * kilogramsPerMetre(runnerUp, only.cell, name, machine);
      flips.push({ to: 'runner-up', loadCase: only.loadCase, kilograms });
    }
  }
  let nearest: Flip | null = null;
  for (const { loadCase, cell } of riddenCells(best, ridden)) {
    if (cell.positions === null) continue;
    const kilograms = (most - cell.positions.aim.value) * kilogramsPerMetre(best, cell, name, machine);
    if (nearest === null || kilograms < nearest.kilograms) nearest = { to: 'fails', loadCase, kilograms };
  }
  return nearest === null ? flips : [...flips, nearest];
}
