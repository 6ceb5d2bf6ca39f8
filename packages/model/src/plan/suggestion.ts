import type { MachineSI } from '../statics/machine.ts';
import type { EndName } from '../statics/prepared.ts';
import type { AdjusterSI } from './adjuster.ts';
import type { Flip, Reason, SpringPlan, Suggestion } from './answer.ts';
import { kilogramsAbove } from './pressureReach.ts';
import type { EndQuestion, LoadCaseSI, SpringChoiceSI } from './question.ts';
import { roomToTighten } from './reach.ts';
import { excessOf, remediesOf } from './remedies.ts';
import { failuresOf, kilogramsBeyond, riddenCells } from './ridden.ts';
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
  const ridden = riddenLoads(springs, loadCases);
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
    runnerUp: runnerUp === null ? null : { spring: runnerUp.spring, failsOn: worstFailure(runnerUp, ridden) },
    flips: [
      ...runnerUpFlip(runnerUp, end, ridden, name, machine, wanted),
      ...failsFlip(best, end, ridden, name, machine, wanted),
    ],
  };
}

/** Loads that choose the spring: with a share of the riding, and not refused. */
function riddenLoads(springs: readonly SpringPlan[], loadCases: readonly LoadCaseSI[]): ReadonlySet<string> {
  const refused = new Set(
    (springs[0]?.cells ?? []).filter((cell) => cell.kind === 'refused').map((cell) => cell.loadCase),
  );
  return new Set(loadCases.filter(({ id, share }) => share > 0 && !refused.has(id)).map(({ id }) => id));
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

/** Of what rules a spring out, that by which it falls shortest; null where it fits. */
function worstFailure(spring: SpringPlan, ridden: ReadonlySet<string>): Reason | null {
  return failuresOf(spring, ridden).reduce<Reason | null>((worst, each) => {
    if (worst === null) return each;
    return (each.figures.short ?? 0) > (worst.figures.short ?? 0) ? each : worst;
  }, null);
}

/** How much less of one load would let the runner-up do: only where that load alone is too much for it. */
function runnerUpFlip(
  runnerUp: SpringPlan | null,
  end: EndQuestion,
  ridden: ReadonlySet<string>,
  name: EndName,
  machine: MachineSI,
  wanted: ReadonlyMap<string, WantedLoad>,
): readonly Flip[] {
  if (runnerUp === null || runnerUp.fits) return [];
  const excess = excessOf(runnerUp, end, ridden, name, machine, wanted);
  if (excess === null || excess.length !== 1) return [];
  return [{ to: 'runner-up', ...excess[0]! }];
}

/** How much more of a load the suggested spring bears before its adjuster ends or its coils come too near. */
function failsFlip(
  best: SpringPlan,
  end: EndQuestion,
  ridden: ReadonlySet<string>,
  name: EndName,
  machine: MachineSI,
  wanted: ReadonlyMap<string, WantedLoad>,
): readonly Flip[] {
  const choice = end.choices.find(({ id }) => id === best.spring);
  const { adjuster } = end;
  if (choice === undefined) return [];
  if (adjuster === null) return pressureFails(best, end, ridden, name, machine, wanted);
  const coils = coilBindPosition(choice, end, machine[name].strokeMax);
  const left = riddenCells(best, ridden).flatMap(({ loadCase, cell: { positions } }): Flip[] => {
    const want = wanted.get(loadCase);
    if (want?.kind !== 'wanted' || positions === null) return [];
    const { loosest, aim, tightest } = positions;
    const reached = aim.value + roomToTighten(adjuster, loosest, aim.value, tightest);
    const last = Math.min(reached, lastSetTo(adjuster, coils));
    return [{ to: 'fails', loadCase, kilograms: -kilogramsBeyond(machine, name, choice, want.aim, last) }];
  });
  return nearestOf(left);
}

/** The same where a pressure sets the end: until the most that the unit may hold. */
function pressureFails(
  best: SpringPlan,
  { pressure: range }: EndQuestion,
  ridden: ReadonlySet<string>,
  name: EndName,
  machine: MachineSI,
  wanted: ReadonlyMap<string, WantedLoad>,
): readonly Flip[] {
  if (range === undefined) return [];
  const left = riddenCells(best, ridden).flatMap(({ loadCase, cell: { pressure } }): Flip[] => {
    const want = wanted.get(loadCase);
    if (want?.kind !== 'wanted' || !pressure?.isPlanned) return [];
    const kilograms = -kilogramsAbove(machine, name, want.aim, pressure.aim.value, range.most);
    return [{ to: 'fails', loadCase, kilograms }];
  });
  return nearestOf(left);
}

function nearestOf(flips: readonly Flip[]): readonly Flip[] {
  const nearest = flips.reduce<Flip | null>(
    (a, b) => (a === null || b.kilograms < a.kilograms ? b : a),
    null,
  );
  return nearest === null ? [] : [nearest];
}

/** The tightest aim that is still set to no more than `most`: between steps the nearest is taken. */
function lastSetTo(adjuster: AdjusterSI, most: number): number {
  if (adjuster.kind === 'continuous') return most;
  const next = adjuster.positions.findIndex((step) => step > most);
  if (next < 0) return Number.POSITIVE_INFINITY;
  return next === 0 ? most : (adjuster.positions[next - 1]! + adjuster.positions[next]!) / 2;
}

/** Position at which the room that must be left before the coils touch is used up; endless where lengths are not known. */
function coilBindPosition(choice: SpringChoiceSI, end: EndQuestion, strokeMax: number): number {
  const { freeLength, solidLength, preloadAtZero } = choice;
  if (freeLength === null || solidLength === null) return Number.POSITIVE_INFINITY;
  return freeLength - solidLength - strokeMax - end.keepFromCoilBind - preloadAtZero;
}
