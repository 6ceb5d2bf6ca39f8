import type { PointMass } from '../masses/pointMass.ts';
import { sprungFromScales } from '../masses/scales.ts';
import { FRONT_TRAVEL, gradientAt, HEAVE, PITCH, REAR_TRAVEL, type State } from '../statics/gradient.ts';
import { GRAVITY, type MachineSI } from '../statics/machine.ts';
import { type Parameters, parametersOf } from '../statics/parameters.ts';
import { type Prepared, prepare } from '../statics/prepared.ts';
import { isFree, type Settled, settle, startState } from '../statics/settle.ts';
import type { WeighingSI } from '../statics/weighing.ts';
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
  const parameters = parametersOf(weighed);
  const machine = parameters.machine as WeighedSI;
  const prepared = prepare(machine);
  const directions = directionsOf(parameters, inputs);
  const moved =
    machine.weighing.attitude === 'level'
      ? directions.map((direction) => explicitMoves(parameters, prepared, machine, direction))
      : movesOnOwnSag(parameters, prepared, machine, directions);
  return inputs.map((input, i) => ({
    ...input,
    moves: [...withoutWeighing(input.moves), ...bodyMoves(moved[i]!)],
  }));
}

function withoutWeighing(moves: readonly Move[]): readonly Move[] {
  return moves.filter((move) => !move.parameter.startsWith('weighing.'));
}

function bodyMoves(body: PointMass): readonly Move[] {
  return [
    { parameter: 'sprung.mass', by: body.mass },
    { parameter: 'sprung.x', by: body.x },
    { parameter: 'sprung.height', by: body.height },
  ].filter((move) => move.by !== 0);
}

/** The body that the scales give by the level formula, with the figures as they stand. */
function levelBody(machine: WeighedSI): PointMass {
  const { weighing, geometry, rear, front } = machine;
  return sprungFromScales({
    front: weighing.front,
    rear: weighing.rear,
    wholeHeight: weighing.wholeHeight,
    wheelbase: geometry.wheelbase,
    rearUnsprung: rear.unsprung,
    frontUnsprung: front.unsprung,
    rearRadius: rear.tyre.radius,
    frontRadius: front.tyre.radius,
  });
}

/** d(mass, x, height)/dq of the explicit formula, a central difference of it. */
function explicitMoves(
  parameters: Parameters,
  prepared: Prepared,
  machine: WeighedSI,
  direction: Direction,
): PointMass {
  const { step } = direction;
  if (direction.indices.length === 0 || !(step > 0)) return { mass: 0, x: 0, height: 0 };
  const saved = figuresOf(parameters, direction);
  moveAlong(parameters, prepared, direction, step);
  const above = levelBody(machine);
  restore(parameters, prepared, direction, saved);
  moveAlong(parameters, prepared, direction, -step);
  const below = levelBody(machine);
  restore(parameters, prepared, direction, saved);
  return {
    mass: (above.mass - below.mass) / (2 * step),
    x: (above.x - below.x) / (2 * step),
    height: (above.height - below.height) / (2 * step),
  };
}

function movesOnOwnSag(
  parameters: Parameters,
  prepared: Prepared,
  machine: WeighedSI,
  directions: readonly Direction[],
): readonly PointMass[] {
  const state: State = new Float64Array(4);
  const settled: Settled = { converged: false, residual: 0, iterations: 0 };
  startState(prepared, state);
  settle(prepared, state, 0, 'none', settled);
  if (!settled.converged)
    throw new RangeError(`throughWeighing: no rest at the weighing, ${settled.residual} N left over`);
  const byPlace = placeResponse(prepared, state, machine.sprung.mass);
  return directions.map((direction) => {
    const explicit = explicitMoves(parameters, prepared, machine, direction);
    if (direction.indices.length === 0 || !(direction.step > 0)) return explicit;
    const miss = frontMissChange(parameters, prepared, machine, state, direction);
    return { ...explicit, x: -miss / byPlace };
  });
}

/** d(front wheel load)/d(x of the body) at the weighing [N/m]. */
function placeResponse(prepared: Prepared, state: State, mass: number): number {
  gradientAt(prepared, state, 0);
  const change = new Float64Array(4);
  change[PITCH] = GRAVITY * mass * Math.cos(state[PITCH]!);
  solveForChange(prepared, state, change);
  return frontLoadChange(prepared, change);
}

/** d(front wheel load − front reading)/dq with the body's x as it is, mass and height following the scales [N per unit]. */
function frontMissChange(
  parameters: Parameters,
  prepared: Prepared,
  machine: WeighedSI,
  state: State,
  direction: Direction,
): number {
  const { gradient } = prepared;
  const { step } = direction;
  const saved = figuresOf(parameters, direction);
  const body = { ...machine.sprung };
  const change = new Float64Array(4);
  let direct = 0;
  for (const side of [1, -1] as const) {
    moveAlong(parameters, prepared, direction, side * step);
    const { mass, height } = levelBody(machine);
    Object.assign(machine.sprung, { mass, height });
    gradientAt(prepared, state, 0);
    const share = side / (2 * step);
    change[HEAVE] = change[HEAVE]! - share * gradient.heave;
    change[PITCH] = change[PITCH]! - share * gradient.pitch;
    change[REAR_TRAVEL] = change[REAR_TRAVEL]! - share * gradient.rear.travel;
    change[FRONT_TRAVEL] = change[FRONT_TRAVEL]! - share * gradient.front.travel;
    direct += share * (gradient.front.wheelLoad - machine.weighing.front * GRAVITY);
    Object.assign(machine.sprung, body);
    restore(parameters, prepared, direction, saved);
  }
  gradientAt(prepared, state, 0);
  solveForChange(prepared, state, change);
  return direct + frontLoadChange(prepared, change);
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
