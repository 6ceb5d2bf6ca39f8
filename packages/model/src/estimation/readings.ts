import { blankEndAt, endAt, type Settling } from '../statics/endAt.ts';
import { FRONT_TRAVEL, gradientAt, REAR_TRAVEL, type State } from '../statics/gradient.ts';
import { hangingTravel } from '../statics/hanging.ts';
import { type EndSI, GRAVITY, type MachineSI } from '../statics/machine.ts';
import { type Parameters, parametersOf } from '../statics/parameters.ts';
import { type EndName, type Prepared, prepare, refresh } from '../statics/prepared.ts';
import { type Settled, settle, standsOnBoth, startState } from '../statics/settle.ts';
import { figureDerivatives, stateDerivatives } from '../uncertainty/derivatives.ts';
import {
  type Direction,
  directionsOf,
  figuresOf,
  moveFrom,
  type UncertainInput,
} from '../uncertainty/inputs.ts';
import { mergeInputs } from '../uncertainty/merge.ts';
import type { Evidence } from './evidence.ts';
import type { Predict, Predicted, Unknowns } from './mostProbable.ts';

/** How the machine stood while it was read: its springs and preloads then, what was aboard, and all that is uncertain of it. */
export interface StoodSI {
  readonly id: string;
  readonly machine: MachineSI;
  /** An input that several of them have, by its name, is one. */
  readonly inputs: readonly UncertainInput[];
}

/** What was read of an end. */
export type ReadOf =
  /**
   * A tape between axle and a mark on the body, or along the slider of a fork: it gets shorter by the wheel travel, or by the
   * stroke. Where the mark is nobody knows beforehand; readings from the same mark share it.
   */
  | { readonly kind: 'length'; readonly mark: string; readonly came: 'hanging' | 'pressed' | 'lifted' }
  /** A scale under that wheel [kg]. */
  | { readonly kind: 'scale' };

/** One reading. */
export interface ReadingSI {
  readonly id: string;
  /** `StoodSI.id`. */
  readonly stood: string;
  readonly end: EndName;
  readonly of: ReadOf;
  readonly evidence: Evidence;
}

/** Readings made ready for `mostProbable`. */
export interface Inquiry {
  readonly readings: readonly ReadingSI[];
  /** The known unknowns, each in its own deviations. */
  readonly inputs: readonly UncertainInput[];
  /** The free ones: where marks are, as the length that a tape would show at no travel [m]. */
  readonly marks: readonly string[];
  readonly predict: Predict;
  readonly start: Unknowns;
  /** What the machine shows if it is as it is thought to be, but for the marks. */
  readonly asThought: Predicted;
}

/**
 * What the machine would show where it was read, as a function of all that is uncertain about it:
 *   pressed, lifted   c − z, at a fork c − s, at the rest with friction on that side;   hanging   the same where the wheel hangs
 *   scale             N/g at the frictionless rest
 * A wheel on its stop shows the stop, and more load shows no more: such a reading says nothing beyond that.
 * Throws RangeError where a reading names a machine that is not among `stood`; null where it does not stand as it is thought to be.
 */
export function inquiryOf(stood: readonly StoodSI[], readings: readonly ReadingSI[]): Inquiry | null {
  const inputs = mergeInputs(...stood.map((each) => each.inputs)).filter((input) => input.deviation > 0);
  const marks = [...new Set(readings.flatMap(({ of }) => (of.kind === 'length' ? [of.mark] : [])))];
  const places = new Map(inputs.map((input, i) => [input.name, i]));
  const machines = stood.map((each) => movable(each, places));
  const plan = readings.map((reading) => {
    const index = stood.findIndex(({ id }) => id === reading.stood);
    if (index < 0)
      throw new RangeError(`inquiryOf: reading ${reading.id} is of "${reading.stood}", which is not given`);
    return { reading, machine: machines[index]! };
  });
  const predict: Predict = ({ known, free }) =>
    whereItCanBe(() => {
      for (const machine of machines) moveTo(machine, known);
      const rows = plan.map(({ reading, machine }) => shown(reading, machine, inputs.length));
      return rows.includes(null) ? null : withMarks(readings, rows as readonly Row[], marks, free);
    });
  const known = inputs.map(() => 0);
  const asThought = predict({ known, free: marks.map(() => 0) });
  if (asThought === null) return null;
  const start = { known, free: marks.map((mark) => markFrom(readings, asThought, mark)) };
  return { readings, inputs, marks, predict, start, asThought };
}

/** Where a mark is if the machine is as it is thought to be: on average over its readings. */
function markFrom(readings: readonly ReadingSI[], { figures }: Predicted, mark: string): number {
  const own = readings.flatMap(({ of, evidence }, i) =>
    of.kind === 'length' && of.mark === mark ? [evidence.value - figures[i]!] : [],
  );
  return own.reduce((sum, each) => sum + each, 0) / own.length;
}

/** What a reading would show but for its mark, and its slopes by each known unknown. */
interface Row {
  readonly figure: number;
  readonly slopes: readonly number[];
}

function withMarks(
  readings: readonly ReadingSI[],
  rows: readonly Row[],
  marks: readonly string[],
  free: readonly number[],
): Predicted {
  const markOf = readings.map(({ of }) => (of.kind === 'length' ? marks.indexOf(of.mark) : -1));
  return {
    figures: rows.map(({ figure }, i) => figure + (markOf[i]! < 0 ? 0 : free[markOf[i]!]!)),
    byKnown: rows.map(({ slopes }) => slopes),
    byFree: markOf.map((own) => marks.map((_, j) => (j === own ? 1 : 0))),
  };
}

/** A machine that can be put to any values of the unknowns, and what was found of it there. */
interface Movable {
  readonly parameters: Parameters;
  readonly prepared: Prepared;
  readonly directions: readonly Direction[];
  /** Place of each direction among the known unknowns. */
  readonly places: readonly number[];
  readonly asThought: Float64Array;
  /** Where it rested last, for each way of settling; looked for from there the next time. */
  readonly rests: Map<Settling, State>;
  readonly found: Map<Settling, Float64Array | null>;
}

function movable({ machine, inputs }: StoodSI, placeOf: ReadonlyMap<string, number>): Movable {
  const parameters = parametersOf(machine);
  const directions = directionsOf(
    parameters,
    inputs.filter((input) => input.deviation > 0),
  );
  return {
    parameters,
    prepared: prepare(parameters.machine),
    directions,
    places: directions.map(({ input }) => placeOf.get(input.name)!),
    asThought: figuresOf(parameters),
    rests: new Map(),
    found: new Map(),
  };
}

/** Puts the machine to those unknowns. Throws RangeError where there is no such machine: a ratio that lets the damper make no whole stroke. */
function moveTo(machine: Movable, known: readonly number[]): void {
  const { parameters, prepared, directions, places, asThought } = machine;
  const { holders, keys } = parameters;
  for (let i = 0; i < asThought.length; i += 1) holders[i]![keys[i]!] = asThought[i]!;
  directions.forEach(({ indices, by, input }, j) => {
    const change = known[places[j]!]! * input.deviation;
    indices.forEach((index, i) => {
      holders[index]![keys[index]!]! += by[i]! * change;
    });
  });
  machine.found.clear();
  refresh(prepared);
}

/** Null where unknowns make a machine that the physics refuses: a step too far of the search. */
function whereItCanBe<T>(work: () => T | null): T | null {
  try {
    return work();
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

const REAR_LENGTH = 0;
const FRONT_LENGTH = 1;
const REAR_LOAD = 2;
const FRONT_LOAD = 3;
const FIGURES = 4;

function shown({ end, of }: ReadingSI, machine: Movable, count: number): Row | null {
  if (of.kind === 'length' && of.came === 'hanging') return hanging(machine, end, count);
  const settling = of.kind === 'scale' ? 0 : of.came === 'lifted' ? 1 : -1;
  const found = foundAt(machine, settling);
  if (found === null) return null;
  const place =
    of.kind === 'scale'
      ? end === 'rear'
        ? REAR_LOAD
        : FRONT_LOAD
      : end === 'rear'
        ? REAR_LENGTH
        : FRONT_LENGTH;
  const slopes = new Array<number>(count).fill(0);
  machine.places.forEach((at, j) => {
    slopes[at] = found[FIGURES * (j + 1) + place]! * machine.directions[j]!.input.deviation;
  });
  return { figure: found[place]!, slopes };
}

/** All figures at the rest, then their slopes by each direction; null where the machine does not stand. */
function foundAt(machine: Movable, settling: Settling): Float64Array | null {
  const before = machine.found.get(settling);
  if (before !== undefined) return before;
  const found = findAt(machine, settling);
  machine.found.set(settling, found);
  return found;
}

function findAt(
  { parameters, prepared, directions, rests }: Movable,
  settling: Settling,
): Float64Array | null {
  const state = rests.get(settling) ?? new Float64Array(4);
  if (!rests.has(settling)) startState(prepared, state);
  const settled: Settled = { converged: false, residual: 0, iterations: 0 };
  settle(prepared, state, settling, 'none', settled);
  if (!standsOnBoth(prepared, state, settled)) return null;
  rests.set(settling, state);
  const derivatives = stateDerivatives(parameters, prepared, state, directions, 'none', null, settling);
  const figures: (machine: Prepared, at: State, out: Float64Array) => void = (machine, at, out) => {
    gradientAt(machine, at, settling);
    const { rear, front } = machine.gradient;
    out[REAR_LENGTH] = -shortening(machine.machine.rear, at[REAR_TRAVEL]!, rear.at);
    out[FRONT_LENGTH] = -shortening(machine.machine.front, at[FRONT_TRAVEL]!, front.at);
    out[REAR_LOAD] = rear.wheelLoad / GRAVITY;
    out[FRONT_LOAD] = front.wheelLoad / GRAVITY;
  };
  const found = new Float64Array(FIGURES * (directions.length + 1));
  figures(prepared, state, found.subarray(0, FIGURES));
  found.set(
    figureDerivatives(parameters, prepared, state, directions, derivatives, figures, FIGURES),
    FIGURES,
  );
  return found;
}

/** Where the wheel hangs, as a length but for its mark; slopes by differences, there where a top-out spring makes any. */
function hanging({ parameters, prepared, directions, places }: Movable, end: EndName, count: number): Row {
  const slopes = new Array<number>(count).fill(0);
  if (prepared.machine[end].struts.every(({ topOut }) => topOut === null)) return { figure: 0, slopes };
  const at = (): number => -hangingLength(prepared, end);
  const figures = figuresOf(parameters);
  directions.forEach((direction, j) => {
    if (direction.indices.length === 0) return;
    moveFrom(parameters, prepared, direction, figures, direction.step);
    const above = at();
    moveFrom(parameters, prepared, direction, figures, -direction.step);
    const below = at();
    moveFrom(parameters, prepared, direction, figures, 0);
    slopes[places[j]!] = ((above - below) / (2 * direction.step)) * direction.input.deviation;
  });
  return { figure: at(), slopes };
}

function hangingLength({ machine, rearTravelMax, frontTravelMax }: Prepared, name: EndName): number {
  const end = machine[name];
  const { rake } = machine.geometry;
  const travel = hangingTravel(end, rake, name === 'rear' ? rearTravelMax : frontTravelMax);
  endAt(end, rake, 0, travel, 0, hung);
  return shortening(end, travel, hung);
}

const hung = blankEndAt();

/** By how much the tape has got shorter at a wheel travel: a fork is read along its slider, where the stroke shows. */
function shortening(end: EndSI, travel: number, { stroke }: { readonly stroke: number }): number {
  return end.kinematics.kind === 'fork' ? stroke : travel;
}
