import { solveLinear } from '../numerics/solveLinear.ts';
import { FRONT_TRAVEL, gradientAt, HEAVE, PITCH, REAR_TRAVEL } from '../statics/gradient.ts';
import { GRAVITY } from '../statics/machine.ts';
import type { EndName, Prepared } from '../statics/prepared.ts';
import { PITCH_USE } from '../statics/settle.ts';
import { actionForces, type SteadyAction, wholeMass } from './forces.ts';

/** How the machine stands in a steady action; or what wheel comes off the ground, or that none was found. */
export type SteadyAnswer =
  | { readonly kind: 'stands'; readonly stand: SteadyStand }
  | { readonly kind: 'lifts'; readonly wheel: EndName; readonly stand: SteadyStand }
  | { readonly kind: 'not found'; readonly residual: number };

export interface SteadyStand {
  /** [u, θ, z_r, z_f]. */
  readonly state: readonly number[];
  /** Which travels are found by the balance; the others lie on a stop that pushes. */
  readonly free: { readonly rear: boolean; readonly front: boolean };
  /** Of the ground on each tyre [N]; below 0 the wheel would have to be held down. */
  readonly rearLoad: number;
  readonly frontLoad: number;
}

const ITERATIONS = 80;
const HALVINGS = 40;
/** Left-over force as a share of the weight. */
const TOLERANCE = 1e-10;
/** For differences of the forces [m, rad]. */
const STEP = 1e-6;

/**
 * How the machine stands while it is braked or driven steadily: quasi-static, D'Alembert's forces in the same balance as at
 * rest, ∂V/∂x = Q(x), travels within their stops. Dampers and the way into it are left out, and so is the wind.
 * start  a state to begin from: the rest (`restOf`)
 * A wheel without load lifts; the state told with it is where the balance would lie if the ground could pull, and only its
 * signs are of use. Each step is halved until less force is left over; not found is told with what was left.
 * Source: d'Alembert; Newton with halved steps, travel limits as an active set. Checked: steady.test.ts.
 */
export function steadyOf(prepared: Prepared, start: ArrayLike<number>, action: SteadyAction): SteadyAnswer {
  const { machine } = prepared;
  const state = Float64Array.from(start);
  const weight = GRAVITY * wholeMass(prepared);
  const most: Readonly<Record<number, number>> = {
    [REAR_TRAVEL]: prepared.rearTravelMax,
    [FRONT_TRAVEL]: prepared.frontTravelMax,
  };
  const left = new Float64Array(4);
  let free = leftOverAt(prepared, state, action, left);
  let residual = sizeOf(left, free, machine.geometry.wheelbase);
  for (let iteration = 0; iteration < ITERATIONS && residual > TOLERANCE * weight; iteration += 1) {
    const move = newtonMove(prepared, state, action, left, free);
    if (move === null) return { kind: 'not found', residual };
    const before = Float64Array.from(state);
    let share = 1;
    for (let halving = 0; halving < HALVINGS; halving += 1) {
      for (let i = 0; i < 4; i += 1) {
        const next = before[i]! + share * move[i]!;
        state[i] = most[i] === undefined ? next : Math.max(0, Math.min(most[i]!, next));
      }
      const nextFree = leftOverAt(prepared, state, action, left);
      const nextResidual = sizeOf(left, nextFree, machine.geometry.wheelbase);
      if (nextResidual < residual || halving === HALVINGS - 1) {
        [free, residual] = [nextFree, nextResidual];
        break;
      }
      share *= 0.5;
    }
  }
  if (!(residual <= TOLERANCE * weight) || Math.abs(state[PITCH]!) > PITCH_USE) {
    return { kind: 'not found', residual };
  }
  gradientAt(prepared, state, 0);
  const { rear, front } = prepared.gradient;
  const stand: SteadyStand = {
    state: Array.from(state),
    free,
    rearLoad: rear.wheelLoad,
    frontLoad: front.wheelLoad,
  };
  if (rear.wheelLoad <= 0) return { kind: 'lifts', wheel: 'rear', stand };
  if (front.wheelLoad <= 0) return { kind: 'lifts', wheel: 'front', stand };
  return { kind: 'stands', stand };
}

/** ∂V/∂x − Q at a state, into `out`; tells which travels are free: on a stop only what pushes off it is. */
export function leftOverAt(
  prepared: Prepared,
  state: Float64Array,
  action: SteadyAction,
  out: Float64Array,
): SteadyStand['free'] {
  gradientAt(prepared, state, 0);
  const { gradient } = prepared;
  actionForces(prepared, state, action, forces);
  out[HEAVE] = gradient.heave - forces[HEAVE]!;
  out[PITCH] = gradient.pitch - forces[PITCH]!;
  out[REAR_TRAVEL] = gradient.rear.travel - forces[REAR_TRAVEL]!;
  out[FRONT_TRAVEL] = gradient.front.travel - forces[FRONT_TRAVEL]!;
  const isFree = (place: number, most: number): boolean =>
    state[place]! <= 0 ? out[place]! < 0 : state[place]! >= most ? out[place]! > 0 : true;
  return {
    rear: isFree(REAR_TRAVEL, prepared.rearTravelMax),
    front: isFree(FRONT_TRAVEL, prepared.frontTravelMax),
  };
}

const forces = new Float64Array(4);

function sizeOf(left: Float64Array, free: SteadyStand['free'], wheelbase: number): number {
  return Math.max(
    Math.abs(left[HEAVE]!),
    Math.abs(left[PITCH]!) / wheelbase,
    free.rear ? Math.abs(left[REAR_TRAVEL]!) : 0,
    free.front ? Math.abs(left[FRONT_TRAVEL]!) : 0,
  );
}

/** The Newton step of the free coordinates, by differences of what is left over; null where nothing holds one of them. */
function newtonMove(
  prepared: Prepared,
  state: Float64Array,
  action: SteadyAction,
  left: Float64Array,
  free: SteadyStand['free'],
): readonly number[] | null {
  return solveFree(
    steadyCurvature(prepared, state, action),
    Array.from(left, (each) => -each),
    free,
  );
}

/** ∂(∂V/∂x − Q)/∂x at a state, row by row, by central differences. */
export function steadyCurvature(
  prepared: Prepared,
  state: ArrayLike<number>,
  action: SteadyAction,
): number[][] {
  const rows: number[][] = [[], [], [], []];
  const beside = Float64Array.from(state);
  const above = new Float64Array(4);
  const below = new Float64Array(4);
  for (let j = 0; j < 4; j += 1) {
    beside[j] = state[j]! + STEP;
    leftOverAt(prepared, beside, action, above);
    beside[j] = state[j]! - STEP;
    leftOverAt(prepared, beside, action, below);
    beside[j] = state[j]!;
    for (let i = 0; i < 4; i += 1) rows[i]![j] = (above[i]! - below[i]!) / (2 * STEP);
  }
  return rows;
}

/** Solves for the free coordinates, those on a stop kept where they are. */
export function solveFree(
  rows: readonly (readonly number[])[],
  right: readonly number[],
  free: SteadyStand['free'],
): readonly number[] | null {
  const open = [HEAVE, PITCH, ...(free.rear ? [REAR_TRAVEL] : []), ...(free.front ? [FRONT_TRAVEL] : [])];
  const solved = solveLinear(
    open.map((i) => open.map((j) => rows[i]![j]!)),
    open.map((i) => right[i]!),
  );
  if (solved === null) return null;
  const move = [0, 0, 0, 0];
  open.forEach((place, i) => {
    move[place] = solved[i]!;
  });
  return move;
}
