import type { Settling } from '../statics/endAt.ts';
import {
  FRONT_TRAVEL,
  gradientAgain,
  gradientAt,
  HEAVE,
  PITCH,
  REAR_TRAVEL,
  type State,
} from '../statics/gradient.ts';
import type { Parameters, Reach } from '../statics/parameters.ts';
import { type EndName, type Prepared, prepare, type WheelGradient } from '../statics/prepared.ts';
import { type Held, isFree } from '../statics/settle.ts';
import { solveWheelsFirst } from '../statics/wheelsFirst.ts';
import { type Direction, figuresOf, moveFrom, restore } from './inputs.ts';

/** Travel [m] at which an end is held, as a function of the machine: a target in % of travel moves with the travel. */
export type HeldTravel = (prepared: Prepared) => number;

/**
 * How a rest moves with each input: dx/dq = −J⁻¹ · ∂r/∂q (implicit function theorem), x = [u, θ, z_r, z_f].
 * r is the gradient of the energy, J its curvature (analytic); ∂r/∂q is a central difference of r at the same x, never of a
 * solved output. A wheel on a stop stays on it, and moves as the stop does: right on the side that keeps it pressed, and
 * told by `EndRest.standing` and its stop force (`travelHalfWidths`).
 * state  the rest (held travels included);  held, heldTravel  the end that is held and where;  settling  how it came to rest
 * Returns 4 numbers for each direction, one after the other, and leaves `prepared.gradient` at the rest.
 * Throws RangeError where the rest is not stable.
 * Source: implicit function theorem; checked against re-solved machines (derivatives.test.ts) and Monte Carlo.
 */
export function stateDerivatives(
  parameters: Parameters,
  prepared: Prepared,
  state: State,
  directions: readonly Direction[],
  held: Held = 'none',
  heldTravel: HeldTravel | null = null,
  settling: Settling = 0,
): Float64Array {
  gradientAt(prepared, state, settling);
  const rear = wheelPlace(prepared, state, 'rear', held === 'rear' || held === 'both', heldTravel);
  const front = wheelPlace(prepared, state, 'front', held === 'front' || held === 'both', heldTravel);
  const out = new Float64Array(4 * directions.length);
  const change = new Float64Array(4);
  const moving = movingAbout(parameters, prepared, state, settling);
  for (let j = 0; j < directions.length; j += 1) {
    forceChange(moving, directions[j]!, rear, front, change);
    if (rear.at !== null) pushByWheel(prepared.gradient.rear, rear.shift, change);
    if (front.at !== null) pushByWheel(prepared.gradient.front, front.shift, change);
    if (!solveWheelsFirst(prepared, rear.free, front.free, 0, change)) {
      throw new RangeError(
        'stateDerivatives: the machine does not rest stably here; derivatives need a stable rest',
      );
    }
    if (rear.at !== null) change[REAR_TRAVEL] = rear.shift;
    if (front.at !== null) change[FRONT_TRAVEL] = front.shift;
    for (let i = 0; i < 4; i += 1) out[4 * j + i] = change[i]!;
  }
  return out;
}

/** A wheel that is found by the balance, or stands where something else says. */
interface WheelPlace {
  readonly free: boolean;
  /** Where it stands, as a function of the machine; null where it is free, or stays whatever is moved. */
  readonly at: HeldTravel | null;
  /** d(that)/dq along the direction at hand. */
  shift: number;
}

function wheelPlace(
  prepared: Prepared,
  state: State,
  name: EndName,
  held: boolean,
  heldTravel: HeldTravel | null,
): WheelPlace {
  if (held) return { free: false, at: heldTravel, shift: 0 };
  const travel = state[name === 'rear' ? REAR_TRAVEL : FRONT_TRAVEL]!;
  if (isFree(travel, travelMaxAt(prepared, name), prepared.gradient[name]))
    return { free: true, at: null, shift: 0 };
  const bottomed = travel > 0;
  return { free: false, at: bottomed ? (machine) => travelMaxAt(machine, name) : null, shift: 0 };
}

function travelMaxAt(prepared: Prepared, name: EndName): number {
  return name === 'rear' ? prepared.rearTravelMax : prepared.frontTravelMax;
}

/** A machine that is moved about a rest; with scratch of its own, so that what holds at the rest is not overwritten. */
interface Moving {
  readonly parameters: Parameters;
  readonly prepared: Prepared;
  readonly state: State;
  readonly settling: Settling;
  /** As they are at the rest. */
  readonly figures: Float64Array;
  /** What the gradient still holds of the direction moved along last. */
  left: Reach;
}

function movingAbout(
  parameters: Parameters,
  { machine }: Prepared,
  state: State,
  settling: Settling,
): Moving {
  const left = { rear: true, front: true, travel: true };
  return { parameters, prepared: prepare(machine), state, settling, figures: figuresOf(parameters), left };
}

/** −∂r/∂q along a direction, into `out`, and how the wheels that are not free shift. */
function forceChange(
  moving: Moving,
  direction: Direction,
  rear: WheelPlace,
  front: WheelPlace,
  out: Float64Array,
): void {
  const { parameters, prepared, figures } = moving;
  const { gradient } = prepared;
  const { step } = direction;
  for (let i = 0; i < 4; i += 1) out[i] = 0;
  rear.shift = 0;
  front.shift = 0;
  if (direction.indices.length === 0 || !(step > 0)) return;
  for (const side of [1, -1] as const) {
    moveFrom(parameters, prepared, direction, figures, side * step);
    gradientMoved(moving, direction.reach);
    const share = -side / (2 * step);
    out[HEAVE] = out[HEAVE]! + share * gradient.heave;
    out[PITCH] = out[PITCH]! + share * gradient.pitch;
    out[REAR_TRAVEL] = out[REAR_TRAVEL]! + share * gradient.rear.travel;
    out[FRONT_TRAVEL] = out[FRONT_TRAVEL]! + share * gradient.front.travel;
    if (rear.at !== null) rear.shift -= share * rear.at(prepared);
    if (front.at !== null) front.shift -= share * front.at(prepared);
  }
  restore(parameters, prepared, direction, figures);
}

/** Works out what this direction reaches, and what the one before left moved. */
function gradientMoved(moving: Moving, reach: Reach): void {
  const { prepared, state, settling, left } = moving;
  gradientAgain(prepared, state, settling, reach.rear || left.rear, reach.front || left.front);
  moving.left = reach;
}

/** A wheel that is put elsewhere pushes on heave and pitch: their right side takes −(column of J)·dz. */
function pushByWheel(wheel: WheelGradient, shift: number, change: Float64Array): void {
  change[HEAVE] = change[HEAVE]! - wheel.travelHeave * shift;
  change[PITCH] = change[PITCH]! - wheel.travelPitch * shift;
}

/** Figures of a machine at a state, written into `out`; may read `prepared.gradient` after calling `gradientAt` itself. */
export type Figures = (prepared: Prepared, state: State, out: Float64Array) => void;

/**
 * Total derivatives of figures by each input: each figure is differenced along the tangent of the rest,
 * (x + dx/dq·ε, q + ε), so that what hangs on state and machine together comes out whole, with nothing solved again.
 * Returns `count` numbers for each direction.
 */
export function figureDerivatives(
  parameters: Parameters,
  prepared: Prepared,
  state: State,
  directions: readonly Direction[],
  derivatives: Float64Array,
  figuresAt: Figures,
  count: number,
): Float64Array {
  const out = new Float64Array(count * directions.length);
  const above = new Float64Array(count);
  const below = new Float64Array(count);
  const beside = new Float64Array(4);
  const moved = prepare(prepared.machine);
  const figures = figuresOf(parameters);
  for (let j = 0; j < directions.length; j += 1) {
    const direction = directions[j]!;
    const { step } = direction;
    if (!(step > 0)) continue;
    for (const side of [1, -1] as const) {
      moveFrom(parameters, moved, direction, figures, side * step);
      for (let i = 0; i < 4; i += 1) beside[i] = state[i]! + side * step * derivatives[4 * j + i]!;
      figuresAt(moved, beside, side === 1 ? above : below);
    }
    restore(parameters, moved, direction, figures);
    for (let i = 0; i < count; i += 1) out[count * j + i] = (above[i]! - below[i]!) / (2 * step);
  }
  return out;
}
