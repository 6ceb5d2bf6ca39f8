import { springAt } from '../springs/spring.ts';
import { GRAVITY, type MachineSI } from '../statics/machine.ts';
import { type Parameters, parametersOf, putOn } from '../statics/parameters.ts';
import { type EndName, prepare } from '../statics/prepared.ts';
import { type Direction, directionsOf, type UncertainInput } from '../uncertainty/inputs.ts';
import { mergeInputs } from '../uncertainty/merge.ts';
import { settingNear } from './adjuster.ts';
import type { EndPlan, PlanCell, Planned, PlannedPressure, SpringPlan } from './answer.ts';
import { type Demand, preloadFor } from './demand.ts';
import { positionSpread } from './positionSpread.ts';
import type { EndQuestion, LoadCaseSI, PlanQuestion, SpringChoiceSI } from './question.ts';
import { reachOf } from './reach.ts';
import { reasonsOf } from './reasons.ts';
import { atSetting, type Fitted } from './setting.ts';
import { settingInputs } from './settingDoubt.ts';
import { atPressure, springPressure } from './springPressure.ts';
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
  const pressureOf = springPressure(fitted, question, inputs);
  const cells = question.loadCases.map((loadCase): PlanCell => {
    if (refused.has(loadCase.id)) return { kind: 'refused', loadCase: loadCase.id };
    const want = wanted.get(loadCase.id)!;
    if (want.kind === 'outside travel') {
      const { wanted: travel, travelMax } = want;
      return { kind: 'target outside travel', loadCase: loadCase.id, wanted: travel, travelMax };
    }
    if (want.kind === 'no rest') return { kind: 'no rest', loadCase: loadCase.id, residual: want.residual };
    if (want.kind === 'not wanted') return { kind: 'not wanted', loadCase: loadCase.id };
    const directions = withMore(fitted.parameters, alone, loadCase.inputs);
    const pressure = pressureOf?.(want) ?? null;
    const cell = plannedCell(fitted, question[name], loadCase, want, own, directions, alone, pressure);
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

/** Directions that are ready, and those of a few inputs more; an input that both have is one. */
function withMore(
  parameters: Parameters,
  ready: readonly Direction[],
  more: readonly UncertainInput[],
): readonly Direction[] {
  if (more.length === 0) return ready;
  const names = new Set(ready.map((direction) => direction.input.name));
  if (!more.some((input) => names.has(input.name))) return [...ready, ...directionsOf(parameters, more)];
  return directionsOf(
    parameters,
    mergeInputs(
      ready.map((direction) => direction.input),
      more,
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
  pressure: PlannedPressure | null,
): Planned {
  const { choice, parameters, prepared, name } = fitted;
  const wanted = { low: want.low.travel, aim: want.aim.travel, high: want.high.travel };
  const preload = preloadFor(choice.spring, want.aim);
  if (preload === null || end.adjuster === null) {
    return asItStands(fitted, end, loadCase, want, directions, alone, pressure);
  }
  const spread = positionSpread(parameters, prepared, name, want.aim, want.slopes, own);
  const aim = preload - choice.preloadAtZero;
  const loosest = (preloadFor(choice.spring, want.high) ?? -want.high.stroke) - choice.preloadAtZero;
  const tightest = (preloadFor(choice.spring, want.low) ?? preload) - choice.preloadAtZero;
  const origin = choice.fitted && end.found !== null ? end.found[0]! : 0;
  const setting = settingNear(end.adjuster, aim, origin);
  const preloads = fitted.preloads.map(() => choice.preloadAtZero + setting.position);
  const counted = settingInputs(end.doubt, name, setting, preloads.length);
  const acting = withMore(parameters, directions, counted);
  const onItsOwn = withMore(parameters, alone, counted);
  return {
    wanted,
    preload: { value: preload, plusMinus: spread.plusMinus },
    preloadBothAtTarget: want.bothAtTarget === null ? null : preloadFor(choice.spring, want.bothAtTarget),
    positions: { loosest, aim: { value: aim, plusMinus: spread.plusMinus }, tightest },
    reach: reachOf(end.adjuster, loosest, aim, tightest, origin),
    ...(pressure !== null && { pressure }),
    setting,
    set: atSetting(fitted, end, loadCase.load, preloads, setting, want.aim.state, acting, onItsOwn),
    contributions: spread.contributions,
  };
}

/** Where no preload is set, or no spring is wanted: the coil stays where it was found, on the planned pressure if that sets the end. */
function asItStands(
  fitted: Fitted,
  end: EndQuestion,
  loadCase: LoadCaseSI,
  want: Extract<WantedLoad, { kind: 'wanted' }>,
  directions: readonly Direction[],
  alone: readonly Direction[],
  pressure: PlannedPressure | null,
): Planned {
  const { choice } = fitted;
  const preload = preloadFor(choice.spring, want.aim);
  const isBare = preload === null && choice.spring.kind !== 'none' && !pressure?.isPlanned;
  const preloads = fitted.preloads.map((_, i) => choice.preloadAtZero + (end.found?.[i] ?? 0));
  const settle = (acting: readonly Direction[], onItsOwn: readonly Direction[]): Planned['set'] =>
    atSetting(fitted, end, loadCase.load, preloads, null, want.aim.state, acting, onItsOwn);
  return {
    wanted: { low: want.low.travel, aim: want.aim.travel, high: want.high.travel },
    preload: preload === null ? null : { value: preload, plusMinus: null },
    preloadBothAtTarget: null,
    positions: null,
    reach: { kind: isBare ? 'no spring wanted' : 'no adjuster' },
    ...(pressure !== null && { pressure }),
    setting: null,
    set: pressure?.isPlanned
      ? atPressure(fitted, end, pressure, directions, alone, settle)
      : settle(directions, alone),
    contributions: [],
  };
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
