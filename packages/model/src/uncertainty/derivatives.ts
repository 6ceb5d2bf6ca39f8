import { FRONT_TRAVEL, gradientAt, HEAVE, PITCH, REAR_TRAVEL, type State } from '../statics/gradient.ts';
import { GRAVITY } from '../statics/machine.ts';
import { type Parameters, parameter, setParameter } from '../statics/parameters.ts';
import { type EndName, type Prepared, prepare, refresh, type WheelGradient } from '../statics/prepared.ts';
import { type Held, isFree } from '../statics/settle.ts';
import { solveWheelsFirst } from '../statics/wheelsFirst.ts';
import { type Direction, figuresOf, moveAlong, restore } from './inputs.ts';

/** Travel [m] at which an end is held, as a function of the machine: a target in % of travel moves with the travel. */
export type HeldTravel = (prepared: Prepared) => number;

/**
 * How a rest moves with each input: dx/dq = −J⁻¹ · ∂r/∂q (implicit function theorem), x = [u, θ, z_r, z_f].
 * r is the gradient of the energy, J its curvature (analytic); ∂r/∂q is in closed form for the masses borne, for the
 * rest a central difference of r at the same x, never of a solved output. A wheel on a stop stays on it, and moves as the stop does: right on the side that keeps it pressed, and
 * told by `EndRest.standing` and its stop force (`travelHalfWidths`).
 * state  the rest (held travels included);  held, heldTravel  the end that is held and where
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
): Float64Array {
  gradientAt(prepared, state, 0);
  const rear = wheelPlace(prepared, state, 'rear', held === 'rear' || held === 'both', heldTravel);
  const front = wheelPlace(prepared, state, 'front', held === 'front' || held === 'both', heldTravel);
  const out = new Float64Array(4 * directions.length);
  const change = new Float64Array(4);
  /** The same machine with scratch of its own, so that what holds at the rest is not overwritten. */
  const moved = prepare(prepared.machine);
  for (let j = 0; j < directions.length; j += 1) {
    forceChange(parameters, moved, state, directions[j]!, rear, front, change);
    if (rear.at !== null) pushByWheel(prepared.gradient.rear, rear.shift, change);
    if (front.at !== null) pushByWheel(prepared.gradient.front, front.shift, change);
    if (!solveWheelsFirst(prepared, rear.free, front.free, 0, change)) {
      throw new RangeError(
        'stateDerivatives: the machine does not rest stably here; derivatives need a stable rest',
      );
    }
    if (rear.at !== null) change[REAR_TRAVEL] = rear.shift;
    if (front.at !== null) change[FRONT_TRAVEL] = front.shift;
    out.set(change, 4 * j);
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

/** −∂r/∂q along a direction, into `out`, and how the wheels that are not free shift. */
function forceChange(
  parameters: Parameters,
  moved: Prepared,
  state: State,
  direction: Direction,
  rear: WheelPlace,
  front: WheelPlace,
  out: Float64Array,
): void {
  const { gradient } = moved;
  const { step, otherIndices, otherBy } = direction;
  out.fill(0);
  rear.shift = 0;
  front.shift = 0;
  if (direction.indices.length === 0 || !(step > 0)) return;
  borneChange(moved, state, direction, out);
  if (otherIndices.length === 0) return;
  const saved = otherIndices.map((index) => parameter(parameters, index));
  for (const side of [1, -1] as const) {
    for (let i = 0; i < otherIndices.length; i += 1) {
      setParameter(parameters, otherIndices[i]!, saved[i]! + otherBy[i]! * side * step);
    }
    if (direction.movesTravel) refresh(moved);
    gradientAt(moved, state, 0);
    const share = -side / (2 * step);
    out[HEAVE] = out[HEAVE]! + share * gradient.heave;
    out[PITCH] = out[PITCH]! + share * gradient.pitch;
    out[REAR_TRAVEL] = out[REAR_TRAVEL]! + share * gradient.rear.travel;
    out[FRONT_TRAVEL] = out[FRONT_TRAVEL]! + share * gradient.front.travel;
    if (rear.at !== null) rear.shift -= share * rear.at(moved);
    if (front.at !== null) front.shift -= share * front.at(moved);
  }
  for (let i = 0; i < otherIndices.length; i += 1) setParameter(parameters, otherIndices[i]!, saved[i]!);
  if (direction.movesTravel) refresh(moved);
}

/**
 * −∂r/∂q of what a direction moves of body and load, in closed form, since they enter r by M, M_x and M_z alone:
 *   ∂(dV/du) = g dM,   ∂(dV/dθ) = −g (dM_x cos θ + dM_z sin θ)
 */
function borneChange(moved: Prepared, state: State, { borne }: Direction, out: Float64Array): void {
  const { sprung } = moved.machine;
  const mass = borne['sprung.mass'] + borne['load.mass'];
  const momentX = borne['sprung.mass'] * sprung.x + sprung.mass * borne['sprung.x'] + borne['load.momentX'];
  const momentHeight =
    borne['sprung.mass'] * sprung.height + sprung.mass * borne['sprung.height'] + borne['load.momentHeight'];
  const pitch = state[PITCH]!;
  out[HEAVE] = -GRAVITY * mass;
  out[PITCH] = GRAVITY * (momentX * Math.cos(pitch) + momentHeight * Math.sin(pitch));
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
  figures: Figures,
  count: number,
): Float64Array {
  const out = new Float64Array(count * directions.length);
  const above = new Float64Array(count);
  const below = new Float64Array(count);
  const beside = new Float64Array(4);
  const moved = prepare(prepared.machine);
  for (let j = 0; j < directions.length; j += 1) {
    const direction = directions[j]!;
    const { step } = direction;
    if (!(step > 0)) continue;
    const saved = figuresOf(parameters, direction);
    for (const side of [1, -1] as const) {
      moveAlong(parameters, moved, direction, side * step);
      for (let i = 0; i < 4; i += 1) beside[i] = state[i]! + side * step * derivatives[4 * j + i]!;
      figures(moved, beside, side === 1 ? above : below);
      restore(parameters, moved, direction, saved);
    }
    for (let i = 0; i < count; i += 1) out[count * j + i] = (above[i]! - below[i]!) / (2 * step);
  }
  return out;
}
