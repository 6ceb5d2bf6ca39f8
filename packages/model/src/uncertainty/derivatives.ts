import { FRONT_TRAVEL, gradientAt, HEAVE, PITCH, REAR_TRAVEL, type State } from '../statics/gradient.ts';
import type { Parameters } from '../statics/parameters.ts';
import { type Prepared, prepare } from '../statics/prepared.ts';
import { type Held, isFree } from '../statics/settle.ts';
import { solveWheelsFirst } from '../statics/wheelsFirst.ts';
import { type Direction, figuresOf, moveAlong, restore } from './inputs.ts';

/** Travel [m] at which an end is held, as a function of the machine: a target in % of travel moves with the travel. */
export type HeldTravel = (prepared: Prepared) => number;

/**
 * How a rest moves with each input: dx/dq = −J⁻¹ · ∂r/∂q (implicit function theorem), x = [u, θ, z_r, z_f].
 * r is the gradient of the energy, J its curvature (analytic); ∂r/∂q is a central difference of r at the same x, never of a
 * solved output. A wheel on a stop stays there: its derivative is 0, right on the side that keeps it pressed.
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
  const { rear, front } = prepared.gradient;
  const rearFree =
    held !== 'rear' && held !== 'both' && isFree(state[REAR_TRAVEL]!, prepared.rearTravelMax, rear);
  const frontFree =
    held !== 'front' && held !== 'both' && isFree(state[FRONT_TRAVEL]!, prepared.frontTravelMax, front);
  const out = new Float64Array(4 * directions.length);
  const change = new Float64Array(4);
  const heldAt = held === 'front' ? FRONT_TRAVEL : REAR_TRAVEL;
  /** The same machine with scratch of its own, so that what holds at the rest is not overwritten. */
  const moved = prepare(prepared.machine);
  for (let j = 0; j < directions.length; j += 1) {
    const shift = forceChange(parameters, moved, state, directions[j]!, heldTravel, change);
    if (heldTravel !== null) addHeldShift(prepared, heldAt, shift, change);
    if (!solveWheelsFirst(prepared, rearFree, frontFree, 0, change)) {
      throw new RangeError(
        'stateDerivatives: the machine does not rest stably here; derivatives need a stable rest',
      );
    }
    if (heldTravel !== null) change[heldAt] = shift;
    out.set(change, 4 * j);
  }
  return out;
}

/** −∂r/∂q along a direction, into `out`; returns d(held travel)/dq. */
function forceChange(
  parameters: Parameters,
  moved: Prepared,
  state: State,
  direction: Direction,
  heldTravel: HeldTravel | null,
  out: Float64Array,
): number {
  const { gradient } = moved;
  const { step } = direction;
  out.fill(0);
  if (direction.indices.length === 0 || !(step > 0)) return 0;
  const saved = figuresOf(parameters, direction);
  let shift = 0;
  for (const side of [1, -1] as const) {
    moveAlong(parameters, moved, direction, side * step);
    gradientAt(moved, state, 0);
    const share = -side / (2 * step);
    out[HEAVE] = out[HEAVE]! + share * gradient.heave;
    out[PITCH] = out[PITCH]! + share * gradient.pitch;
    out[REAR_TRAVEL] = out[REAR_TRAVEL]! + share * gradient.rear.travel;
    out[FRONT_TRAVEL] = out[FRONT_TRAVEL]! + share * gradient.front.travel;
    if (heldTravel !== null) shift -= share * heldTravel(moved);
    restore(parameters, moved, direction, saved);
  }
  return shift;
}

/** A held wheel that moves pushes on heave and pitch: their right side takes −(column of J)·dz. */
function addHeldShift(prepared: Prepared, heldAt: number, shift: number, change: Float64Array): void {
  const wheel = heldAt === REAR_TRAVEL ? prepared.gradient.rear : prepared.gradient.front;
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
