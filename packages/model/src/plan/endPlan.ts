import { springAt } from '../springs/spring.ts';
import { GRAVITY, type MachineSI } from '../statics/machine.ts';
import { type Parameters, parameter, parametersOf, putOn, setParameter } from '../statics/parameters.ts';
import { type EndName, prepare } from '../statics/prepared.ts';
import { type Direction, directionsOf, type UncertainInput } from '../uncertainty/inputs.ts';
import { mergeInputs } from '../uncertainty/merge.ts';
import { settingNear } from './adjuster.ts';
import type { EndPlan, PlanCell, Planned, PlannedPressure, Reach, SpringPlan } from './answer.ts';
import { type Demand, preloadFor } from './demand.ts';
import { positionSpread } from './positionSpread.ts';
import { plannedPressure } from './pressure.ts';
import type { EndQuestion, LoadCaseSI, PlanQuestion, SpringChoiceSI } from './question.ts';
import { reachOf } from './reach.ts';
import { reasonsOf } from './reasons.ts';
import { atSetting, type Fitted } from './setting.ts';
import { suggestionOf } from './suggestion.ts';
import { type WantedLoad, wantedOf } from './wantedLoad.ts';

/** Plans one end: every spring with every load, then the suggestion. `refused` holds the loads that exceed a limit. */
export function planEnd(question: PlanQuestion, name: EndName, refused: ReadonlySet<string>): EndPlan {
  const end = question[name];
  const inputs = withoutStruts(name, question.inputs);
  const wanted = wantedByLoad(question, name, inputs);
  const springs = end.choices.map((choice) => springPlan(question, name, choice, inputs, wanted, refused));
  const sorted = [...springs].sort((a, b) => a.rate - b.rate);
  return {
    springs: sorted,
    suggestion: suggestionOf(sorted, end, question.loadCases, name, question.machine, wanted),
  };
}

/** What inputs did to springs and preloads as found acts through the weighing only; a candidate brings its own. */
export function withoutStruts(name: EndName, inputs: readonly UncertainInput[]): readonly UncertainInput[] {
  const ofSprings = new RegExp(`^${name}\\.struts\\.\\d+\\.(spring\\.|preload$)`);
  return inputs
    .map((input) => ({ ...input, moves: input.moves.filter((move) => !ofSprings.test(move.parameter)) }))
    .filter((input) => input.moves.length > 0 && input.deviation > 0);
}

function wantedByLoad(
  question: PlanQuestion,
  name: EndName,
  inputs: readonly UncertainInput[],
): ReadonlyMap<string, WantedLoad> {
  const parameters = parametersOf(question.machine);
  const prepared = prepare(parameters.machine);
  return new Map(
    question.loadCases.map((loadCase) => {
      putOn(parameters, loadCase.load);
      const directions = directionsOf(parameters, mergeInputs(inputs, loadCase.inputs));
      return [loadCase.id, wantedOf(parameters, prepared, name, loadCase, directions)];
    }),
  );
}

function springPlan(
  question: PlanQuestion,
  name: EndName,
  choice: SpringChoiceSI,
  inputs: readonly UncertainInput[],
  wanted: ReadonlyMap<string, WantedLoad>,
  refused: ReadonlySet<string>,
): SpringPlan {
  const fitted = fit(question.machine, name, choice);
  const own = directionsOf(fitted.parameters, choice.inputs);
  const alone = directionsOf(fitted.parameters, mergeInputs(inputs, choice.inputs));
  const cells = question.loadCases.map((loadCase): PlanCell => {
    if (refused.has(loadCase.id)) return { kind: 'refused', loadCase: loadCase.id };
    const want = wanted.get(loadCase.id)!;
    if (want.kind === 'outside travel') {
      const { wanted: travel, travelMax } = want;
      return { kind: 'target outside travel', loadCase: loadCase.id, wanted: travel, travelMax };
    }
    if (want.kind === 'no rest') return { kind: 'no rest', loadCase: loadCase.id, residual: want.residual };
    if (want.kind === 'not wanted') return { kind: 'not wanted', loadCase: loadCase.id };
    const directions = withLoad(fitted.parameters, alone, loadCase.inputs);
    const cell = plannedCell(fitted, question[name], loadCase, want, own, directions, alone);
    return { kind: 'planned', loadCase: loadCase.id, cell };
  });
  const judged = reasonsOf(choice, question[name], question.loadCases, cells);
  return {
    spring: choice.id,
    fitted: choice.fitted,
    rate: rateAtMainLoad(choice, question.loadCases, wanted),
    cells,
    reasons: judged.reasons,
    kilogramsPerTurn: kilogramsPerTurn(fitted.prepared.machine, name, choice, question, wanted),
    fits: judged.fits,
  };
}

/** The directions of the machine and of a load's own inputs; an input that both have is one. */
function withLoad(
  parameters: Parameters,
  alone: readonly Direction[],
  load: readonly UncertainInput[],
): readonly Direction[] {
  const names = new Set(alone.map((direction) => direction.input.name));
  if (!load.some((input) => names.has(input.name))) return [...alone, ...directionsOf(parameters, load)];
  return directionsOf(
    parameters,
    mergeInputs(
      alone.map((direction) => direction.input),
      load,
    ),
  );
}

function fit(machine: MachineSI, name: EndName, choice: SpringChoiceSI): Fitted {
  const struts = machine[name].struts.map((strut) => ({
    ...strut,
    spring: choice.spring,
    preload: choice.preloadAtZero,
  }));
  const parameters = parametersOf({ ...machine, [name]: { ...machine[name], struts } });
  const preloads = struts.map((_, i) => parameters.indexOf.get(`${name}.struts.${i}.preload`)!);
  const prepared = prepare(parameters.machine);
  return { name, choice, parameters, prepared, preloads, alone: new Map() };
}

function plannedCell(
  fitted: Fitted,
  end: EndQuestion,
  loadCase: LoadCaseSI,
  want: Extract<WantedLoad, { kind: 'wanted' }>,
  own: readonly Direction[],
  directions: readonly Direction[],
  alone: readonly Direction[],
): Planned {
  const { choice, parameters, prepared, name } = fitted;
  const pressure = pressureOf(fitted, end, want, alone);
  const wanted = { low: want.low.travel, aim: want.aim.travel, high: want.high.travel };
  const preload = preloadFor(choice.spring, want.aim);
  const count = fitted.preloads.length;
  const asFound = end.found === null ? choice.preloadAtZero : choice.preloadAtZero + end.found[0]!;
  const settle = (preloads: readonly number[], setting: Planned['setting']): Planned['set'] =>
    atSetting(fitted, end, loadCase.load, preloads, setting, want.aim.state, directions, alone);
  if (preload === null || end.adjuster === null) {
    const isBare = preload === null && choice.spring.kind !== 'none';
    const reach: Reach = { kind: isBare ? 'no spring wanted' : 'no adjuster' };
    const stays =
      end.found?.map((position) => choice.preloadAtZero + position) ??
      Array.from({ length: count }, () => asFound);
    return {
      wanted,
      preload: preload === null ? null : { value: preload, plusMinus: null },
      preloadBothAtTarget: null,
      positions: null,
      reach,
      ...(pressure !== null && { pressure }),
      setting: null,
      set: atPressure(fitted, pressure, () => settle(stays, null)),
      contributions: [],
    };
  }
  const spread = positionSpread(parameters, prepared, name, want.aim, want.slopes, own);
  const aim = preload - choice.preloadAtZero;
  const loosest = (preloadFor(choice.spring, want.high) ?? -want.high.stroke) - choice.preloadAtZero;
  const tightest = (preloadFor(choice.spring, want.low) ?? preload) - choice.preloadAtZero;
  const origin = choice.fitted && end.found !== null ? end.found[0]! : 0;
  const setting = settingNear(end.adjuster, aim, origin);
  const set = choice.preloadAtZero + setting.position;
  return {
    wanted,
    preload: { value: preload, plusMinus: spread.plusMinus },
    preloadBothAtTarget: want.bothAtTarget === null ? null : preloadFor(choice.spring, want.bothAtTarget),
    positions: { loosest, aim: { value: aim, plusMinus: spread.plusMinus }, tightest },
    reach: reachOf(end.adjuster, loosest, aim, tightest, origin),
    ...(pressure !== null && { pressure }),
    setting,
    set: settle(
      Array.from({ length: count }, () => set),
      setting,
    ),
    contributions: spread.contributions,
  };
}

/**
 * The pressure that answers the load with the coil as it stands: where a collar sets the coil too, that of the fitted spring as
 * found; null where no air is set, or nobody read where the collar stands.
 */
function pressureOf(
  fitted: Fitted,
  end: EndQuestion,
  want: Extract<WantedLoad, { kind: 'wanted' }>,
  directions: readonly Direction[],
): PlannedPressure | null {
  const { choice, parameters, prepared, name, preloads } = fitted;
  if (end.pressure === undefined) return null;
  const isPlanned = end.adjuster === null;
  if (!isPlanned && (!choice.fitted || end.found === null)) return null;
  for (const [i, index] of preloads.entries())
    setParameter(parameters, index, choice.preloadAtZero + (end.found?.[i] ?? 0));
  return plannedPressure(parameters, prepared, name, end.pressure, want, directions, isPlanned);
}

/** What `settle` finds with the planned pressure in every strut; the struts are then as before. */
function atPressure<T>(
  { parameters, name, preloads }: Fitted,
  pressure: PlannedPressure | null,
  settle: () => T,
): T {
  if (pressure === null) return settle();
  const valves = preloads.map((_, i) => parameters.indexOf.get(`${name}.struts.${i}.air.pressure`)!);
  const found = valves.map((index) => parameter(parameters, index));
  for (const index of valves) setParameter(parameters, index, pressure.set);
  const settled = settle();
  for (const [i, index] of valves.entries()) setParameter(parameters, index, found[i]!);
  return settled;
}

/** The load that is ridden most and wants something of this end. */
function mainDemand(
  loadCases: readonly LoadCaseSI[],
  wanted: ReadonlyMap<string, WantedLoad>,
): Demand | null {
  let main: { share: number; demand: Demand } | null = null;
  for (const loadCase of loadCases) {
    const want = wanted.get(loadCase.id);
    if (want?.kind === 'wanted' && (main === null || loadCase.share > main.share)) {
      main = { share: loadCase.share, demand: want.aim };
    }
  }
  return main?.demand ?? null;
}

/** A spring's rate where the main load compresses it; at its start where nothing is wanted of it. */
function rateAtMainLoad(
  choice: SpringChoiceSI,
  loadCases: readonly LoadCaseSI[],
  wanted: ReadonlyMap<string, WantedLoad>,
): number {
  const demand = mainDemand(loadCases, wanted);
  const preload = demand === null ? null : preloadFor(choice.spring, demand);
  const at = { force: 0, rate: 0, energy: 0 };
  springAt(choice.spring, preload === null ? 0 : preload + demand!.stroke, at);
  return at.rate;
}

/** n·k·MR·lead / g: what one turn of every adjuster of the end answers, as kilograms on that wheel at the same sag. */
function kilogramsPerTurn(
  machine: MachineSI,
  name: EndName,
  choice: SpringChoiceSI,
  question: PlanQuestion,
  wanted: ReadonlyMap<string, WantedLoad>,
): number | null {
  const { adjuster } = question[name];
  const demand = mainDemand(question.loadCases, wanted);
  if (adjuster === null || adjuster.kind !== 'continuous' || adjuster.lead === null || demand === null)
    return null;
  const rate = rateAtMainLoad(choice, question.loadCases, wanted);
  return (machine[name].struts.length * rate * demand.motionRatio * adjuster.lead) / GRAVITY;
}
