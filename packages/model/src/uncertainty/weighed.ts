import { FRONT_TRAVEL, gradientAt, HEAVE, PITCH, REAR_TRAVEL, type State } from '../statics/gradient.ts';
import { GRAVITY, type MachineSI } from '../statics/machine.ts';
import { type Parameters, parametersOf } from '../statics/parameters.ts';
import { type Prepared, prepare } from '../statics/prepared.ts';
import { isFree, type Settled, settle, startState } from '../statics/settle.ts';
import { levelBody, type WeighingSI } from '../statics/weighing.ts';
import { solveWheelsFirst } from '../statics/wheelsFirst.ts';
import {
  type Direction,
  directionsOf,
  figuresOf,
  type Move,
  moveAlong,
  restore,
  type UncertainInput,
} from './inputs.ts';

/** A machine as it was weighed; its parameters then include 'weighing.front', 'weighing.rear', 'weighing.wholeHeight'. */
export interface WeighedSI extends MachineSI {
  readonly weighing: WeighingSI;
}

/** A machine weighed with a load aboard; its parameters include 'aboard.front', 'aboard.rear' [kg], 'aboard.height' [m]. */
export interface LoadWeighedSI extends MachineSI {
  readonly aboard: { readonly front: number; readonly rear: number; readonly height: number };
}

/**
 * What each input does to the sprung body through the weighing: the inputs again, each with its moves of
 * 'sprung.mass', 'sprung.x' and 'sprung.height' added, and its moves of 'weighing.*' used up.
 * The weighing is part of the sum: its balance and "the front wheel carries what the scale read" are one residual in
 * (u, θ, z_r, z_f, x_body), and dx_body/dq follows as in `stateDerivatives`, bordered by that fifth line.
 * weighed  the machine with the body that `weigh` found
 */
export function throughWeighing(
  weighed: WeighedSI,
  inputs: readonly UncertainInput[],
): readonly UncertainInput[] {
  return through(weighed, inputs, 'weighing.', {
    part: 'sprung',
    found: weighed.weighing.attitude === 'level' ? null : 'x',
    momentOfFound: weighed.sprung.mass,
    follow: bodyFollows,
    frontReading: (machine) => machine.weighing.front,
  });
}

/**
 * The same for a load that was weighed aboard: each input with its moves of 'load.mass', 'load.momentX' and
 * 'load.momentHeight'. Inputs come in through the machine's own weighing already.
 * weighed  the machine carrying the load that `weighLoad` found
 */
export function throughLoadWeighing(
  weighed: LoadWeighedSI,
  inputs: readonly UncertainInput[],
): readonly UncertainInput[] {
  return through(weighed, inputs, 'aboard.', {
    part: 'load',
    found: 'momentX',
    momentOfFound: 1,
    follow: loadFollows,
    frontReading: (machine) => machine.aboard.front,
  });
}

/** A mass whose figures follow from scale readings: some explicitly, one found by the balance. */
interface Weighed<M extends MachineSI> {
  readonly part: 'sprung' | 'load';
  /** The figure found by the balance; null where all follow explicitly. */
  readonly found: 'x' | 'momentX' | null;
  /** First moment that one unit of the found figure adds [kg or 1]. */
  readonly momentOfFound: number;
  /** The figures that follow explicitly, from the machine as its figures stand. */
  readonly follow: (machine: M) => Readonly<Record<string, number>>;
  readonly frontReading: (machine: M) => number;
}

function bodyFollows(machine: WeighedSI): Readonly<Record<string, number>> {
  const { mass, x, height } = levelBody(machine, machine.weighing);
  return machine.weighing.attitude === 'level' ? { mass, x, height } : { mass, height };
}

function loadFollows(machine: LoadWeighedSI): Readonly<Record<string, number>> {
  const { aboard, sprung, rear, front } = machine;
  const mass = aboard.front + aboard.rear - sprung.mass - rear.unsprung - front.unsprung;
  return { mass, momentHeight: mass * aboard.height };
}

function through<M extends MachineSI>(
  machine: M,
  inputs: readonly UncertainInput[],
  readings: string,
  weighed: Weighed<M>,
): readonly UncertainInput[] {
  const parameters = parametersOf(machine);
  const prepared = prepare(parameters.machine);
  const directions = directionsOf(parameters, inputs);
  const at = weighed.found === null ? null : restAtWeighing(prepared, weighed.momentOfFound);
  return inputs.map((input, i) => {
    const kept = input.moves.filter((move) => !move.parameter.startsWith(readings));
    const direction = directions[i]!;
    if (direction.indices.length === 0 || !(direction.step > 0)) return { ...input, moves: kept };
    return { ...input, moves: [...kept, ...movesOf(parameters, prepared, weighed, direction, at)] };
  });
}

/** The rest at the weighing, and d(front wheel load)/d(found figure) there [N per unit]. */
interface AtWeighing {
  readonly state: State;
  readonly response: number;
}

function restAtWeighing(prepared: Prepared, momentOfFound: number): AtWeighing {
  const state: State = new Float64Array(4);
  const settled: Settled = { converged: false, residual: 0, iterations: 0 };
  startState(prepared, state);
  settle(prepared, state, 0, 'none', settled);
  if (!settled.converged) {
    throw new RangeError(`throughWeighing: no rest at the weighing, ${settled.residual} N left over`);
  }
  const change = new Float64Array(4);
  change[PITCH] = GRAVITY * momentOfFound * Math.cos(state[PITCH]!);
  solveForChange(prepared, state, change);
  return { state, response: frontLoadChange(prepared, change) };
}

/** Moves of the weighed mass's figures along one direction: a central difference of what is explicit, the rest by the balance. */
function movesOf<M extends MachineSI>(
  parameters: Parameters<M>,
  prepared: Prepared,
  weighed: Weighed<M>,
  direction: Direction,
  at: AtWeighing | null,
): readonly Move[] {
  const { machine } = parameters;
  const { step } = direction;
  const part = machine[weighed.part];
  const own = { ...part };
  const saved = figuresOf(parameters);
  const change = new Float64Array(4);
  const slopes: Record<string, number> = {};
  let miss = 0;
  for (const side of [1, -1] as const) {
    const share = side / (2 * step);
    moveAlong(parameters, prepared, direction, side * step);
    const figures = weighed.follow(machine);
    for (const [name, value] of Object.entries(figures)) slopes[name] = (slopes[name] ?? 0) + share * value;
    if (at !== null) {
      Object.assign(part, figures);
      gradientAt(prepared, at.state, 0);
      subtractGradient(prepared, share, change);
      miss += share * (prepared.gradient.front.wheelLoad - weighed.frontReading(machine) * GRAVITY);
      Object.assign(part, own);
    }
    restore(parameters, prepared, direction, saved);
  }
  if (at !== null && weighed.found !== null) {
    gradientAt(prepared, at.state, 0);
    solveForChange(prepared, at.state, change);
    slopes[weighed.found] = -(miss + frontLoadChange(prepared, change)) / at.response;
  }
  return Object.entries(slopes)
    .filter(([, by]) => by !== 0)
    .map(([name, by]) => ({ parameter: `${weighed.part}.${name}`, by }));
}

function subtractGradient(prepared: Prepared, share: number, change: Float64Array): void {
  const { gradient } = prepared;
  change[HEAVE] = change[HEAVE]! - share * gradient.heave;
  change[PITCH] = change[PITCH]! - share * gradient.pitch;
  change[REAR_TRAVEL] = change[REAR_TRAVEL]! - share * gradient.rear.travel;
  change[FRONT_TRAVEL] = change[FRONT_TRAVEL]! - share * gradient.front.travel;
}

function solveForChange(prepared: Prepared, state: State, change: Float64Array): void {
  const { gradient } = prepared;
  const rearFree = isFree(state[REAR_TRAVEL]!, prepared.rearTravelMax, gradient.rear);
  const frontFree = isFree(state[FRONT_TRAVEL]!, prepared.frontTravelMax, gradient.front);
  if (!solveWheelsFirst(prepared, rearFree, frontFree, 0, change)) {
    throw new RangeError('throughWeighing: the machine did not rest stably when it was weighed');
  }
}

/** dN_f = −k_t (du − w dθ + rise·dz_f). */
function frontLoadChange(prepared: Prepared, change: Float64Array): number {
  const { front } = prepared.gradient;
  const lift = change[HEAVE]! - front.forward * change[PITCH]! + front.rise * change[FRONT_TRAVEL]!;
  return -prepared.machine.front.tyre.rate * lift;
}
