import type { FirstMoments } from '@sagwright/model/masses/pointMass';
import type { Figure, Planned, SpringPlan } from '@sagwright/model/plan/answer';
import { withoutStruts } from '@sagwright/model/plan/endPlan';
import { withPressureSet } from '@sagwright/model/plan/pressureInputs';
import { asChosen, type LoadCaseSI } from '@sagwright/model/plan/question';
import { settingInputs } from '@sagwright/model/plan/settingDoubt';
import { FRONT_TRAVEL, REAR_TRAVEL } from '@sagwright/model/statics/gradient';
import type { MachineSI } from '@sagwright/model/statics/machine';
import { type Parameters, parametersOf, putOn } from '@sagwright/model/statics/parameters';
import { type Prepared, prepare } from '@sagwright/model/statics/prepared';
import { restOf } from '@sagwright/model/statics/rest';
import { type Figures, figureDerivatives, stateDerivatives } from '@sagwright/model/uncertainty/derivatives';
import { directionsOf, type UncertainInput } from '@sagwright/model/uncertainty/inputs';
import { mergeInputs } from '@sagwright/model/uncertainty/merge';
import { type Contribution, contributionsAt, halfWidthOf } from '@sagwright/model/uncertainty/spread';
import type { JobPlan } from '../path.ts';
import type { End } from '../result/inView.ts';

/** A machine at rest with what is uncertain about it, from which figures can be read with their ±. */
export interface Standing {
  readonly parameters: Parameters;
  readonly prepared: Prepared;
  readonly state: Float64Array;
  readonly inputs: readonly UncertainInput[];
}

/** The machine of one cell of the plan: the spring at its setting, the other end as found; with the load, or alone. */
export function standingOfCell(
  planned: JobPlan,
  end: End,
  spring: SpringPlan,
  cell: Planned,
  loadCase: LoadCaseSI | null,
): Standing | null {
  const question = asChosen(planned.inputs.question);
  const choice = question[end].choices.find(({ id }) => id === spring.spring)!;
  const found = question[end].found?.map((position) => choice.preloadAtZero + position);
  const struts = question.machine[end].struts.map((strut, i) => ({
    ...strut,
    ...(strut.air !== undefined &&
      cell.pressure?.isPlanned && { air: { ...strut.air, pressure: cell.pressure.set } }),
    spring: choice.spring,
    preload: cell.setting === null ? (found?.[i] ?? cell.set.preload) : cell.set.preload,
  }));
  const { pressure } = cell;
  const onSprings = mergeInputs(
    withoutStruts(end, question.inputs),
    choice.inputs,
    cell.setting === null ? [] : settingInputs(question[end].doubt, end, cell.setting, struts.length),
    ...(loadCase === null ? [] : [loadCase.inputs]),
  );
  const inputs = pressure?.isPlanned
    ? withPressureSet(end, onSprings, question[end].pressure!, pressure.set, struts.length)
    : onSprings;
  const machine = { ...question.machine, [end]: { ...question.machine[end], struts } };
  return standing(machine, loadCase?.load ?? null, inputs);
}

/** The machine as found with a load and a full tank, as its limits are held against. */
export function standingFullTank(planned: JobPlan, loadCase: LoadCaseSI): Standing | null {
  const { question } = planned.inputs;
  const inputs = mergeInputs(question.inputs, loadCase.inputsFullTank);
  return standing(question.machine, loadCase.loadFullTank, inputs);
}

/** A machine at rest with a load on it (null: as it is); null where it has no rest. */
export function standing(
  machine: MachineSI,
  load: FirstMoments | null,
  inputs: readonly UncertainInput[],
): Standing | null {
  const parameters = parametersOf(machine);
  if (load !== null) putOn(parameters, load);
  const prepared = prepare(parameters.machine);
  const answer = restOf(prepared);
  if (answer.kind !== 'rest') return null;
  return { parameters, prepared, state: Float64Array.from(answer.rest.state), inputs };
}

/** Whether a rest moves evenly with its inputs: not so where it is about to be none, and a ± by derivatives says nothing there. */
export function movesEvenly({ parameters, prepared, state, inputs }: Standing): boolean {
  const directions = directionsOf(parameters, inputs);
  return stateDerivatives(parameters, prepared, state, directions).every(Number.isFinite);
}

/** Wheel travel of an end at a rest [m]. */
export function travelOf(end: End, state: ArrayLike<number>): number {
  return state[end === 'rear' ? REAR_TRAVEL : FRONT_TRAVEL]!;
}

/** A figure read at a rest, with its ± and what that is made of, the greatest first. */
export function readAt(
  { parameters, prepared, state, inputs }: Standing,
  read: (prepared: Prepared, state: Float64Array) => number,
): { readonly value: Figure; readonly contributions: readonly Contribution[] } {
  const directions = directionsOf(parameters, inputs);
  const into: Figures = (machine, beside, out) => {
    out[0] = read(machine, Float64Array.from(beside));
  };
  const value = read(prepared, state);
  const derivatives = stateDerivatives(parameters, prepared, state, directions);
  const slopes = figureDerivatives(parameters, prepared, state, directions, derivatives, into, 1);
  const contributions = contributionsAt(directions, slopes, 0, 1).filter(({ halfWidth }) => halfWidth > 0);
  return { value: { value, plusMinus: wholeOf(contributions) }, contributions };
}

/** How figures of a rest move with each uncertain input, in that input's standard deviations: `count` numbers for each. */
export type Slopes = ReadonlyMap<string, readonly number[]>;

/** By derivatives through the balance, all figures in one pass. */
export function slopesOf(
  { parameters, prepared, state, inputs }: Standing,
  into: Figures,
  count: number,
): Slopes {
  const directions = directionsOf(parameters, inputs);
  const derivatives = stateDerivatives(parameters, prepared, state, directions);
  const slopes = figureDerivatives(parameters, prepared, state, directions, derivatives, into, count);
  return new Map(
    directions.map(({ input }, j) => [
      input.name,
      Array.from({ length: count }, (_, i) => slopes[count * j + i]! * input.deviation),
    ]),
  );
}

/** ± (90 % half-width) of one of those figures; against `before`, that of its change: what both share cancels. */
export function doubtAt(place: number, now: Slopes, before: Slopes | null = null): number {
  const names = new Set([...now.keys(), ...(before?.keys() ?? [])]);
  let variance = 0;
  for (const name of names)
    variance += ((now.get(name)?.[place] ?? 0) - (before?.get(name)?.[place] ?? 0)) ** 2;
  return halfWidthOf(Math.sqrt(variance));
}

/** The ± of a sum of inputs whose slopes are known. */
export function summed(
  value: number,
  slopes: ReadonlyMap<string, number>,
  deviationOf: (input: string) => number,
): { readonly value: Figure; readonly contributions: readonly Contribution[] } {
  const parts = [...slopes].map(([input, slope]) => ({
    input,
    slope,
    halfWidth: halfWidthOf(Math.abs(slope) * deviationOf(input)),
  }));
  const whole = wholeOf(parts);
  return { value: { value, plusMinus: whole }, contributions: sharesIn(whole, parts) };
}

/** The parts of a ±, each with its share of the whole, the greatest first; of what cancels out nothing is told. */
export function sharesIn(
  whole: number,
  parts: readonly Omit<Contribution, 'share'>[],
): readonly Contribution[] {
  return parts
    .map((part) => ({ ...part, share: whole > 0 ? (part.halfWidth / whole) ** 2 : 0 }))
    .filter(({ share }) => share > NOISE)
    .sort((a, b) => b.halfWidth - a.halfWidth);
}

/** What is left of an input that cancels out: the rounding of its differences. */
const NOISE = 1e-12;

function wholeOf(parts: readonly { readonly halfWidth: number }[]): number {
  return Math.sqrt(parts.reduce((sum, { halfWidth }) => sum + halfWidth ** 2, 0));
}
