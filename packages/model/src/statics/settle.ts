import type { Settling } from './endAt.ts';
import { energyAt, FRONT_TRAVEL, gradientAt, HEAVE, PITCH, REAR_TRAVEL, type State } from './gradient.ts';
import { GRAVITY } from './machine.ts';
import type { Gradient, Prepared, WheelGradient } from './prepared.ts';
import { solveWheelsFirst } from './wheelsFirst.ts';

/** Which wheel travels are held where the state has them, instead of being found. */
export type Held = 'none' | 'rear' | 'front' | 'both';

/** How a solve ended. */
export interface Settled {
  converged: boolean;
  /** Largest force left over at the free coordinates [N] (the moment about the rear axle divided by the wheelbase). */
  residual: number;
  iterations: number;
}

/** Pitch beyond which the machine counts as tipping over [rad]; the balance then has no answer on two wheels. */
const PITCH_MAX = 0.6;
const NEWTON_MAX = 30;
const DESCENT_MAX = 400;
/** Left-over force as a share of the weight. */
const TOLERANCE = 1e-11;

/**
 * Finds where the machine comes to rest: the state at which its potential energy is least, 0 <= z <= z_max at each wheel.
 * Newton on the gradient, the travel limits as an active set (a wheel on its stop leaves the system while the stop pushes);
 * where Newton runs astray (a kink, a falling ratio) the energy is walked down with damping, then Newton ends it.
 * state  in: where to start (`startState`), held travels where they are held; out: the rest
 * Writes `prepared.gradient` at the rest. Not converging is told with the force left over, never hidden.
 * Source: projected Newton for simple bounds (Bertsekas 1982) with Levenberg damping; arrow matrix solved wheels first.
 */
export function settle(prepared: Prepared, state: State, settling: Settling, held: Held, out: Settled): void {
  out.iterations = 0;
  newton(prepared, state, settling, held, out);
  if (out.converged) return;
  descend(prepared, state, settling, held, out);
  newton(prepared, state, settling, held, out);
}

/** A cold start: body level, wheels a third into their travel, tyres at the load of the lever rule. */
export function startState(prepared: Prepared, state: State): void {
  const { machine, rearTravelMax, frontTravelMax } = prepared;
  const { rear, front, geometry, sprung, load } = machine;
  const mass = sprung.mass + load.mass;
  const frontLoad =
    front.unsprung * GRAVITY + (GRAVITY * (sprung.mass * sprung.x + load.momentX)) / geometry.wheelbase;
  const rearLoad = (mass + rear.unsprung + front.unsprung) * GRAVITY - frontLoad;
  const rearTravel = 0.35 * rearTravelMax;
  const frontTravel = 0.35 * frontTravelMax;
  const rearDrop = rearLoad / rear.tyre.rate + rearTravel - rear.referenceTravel;
  const frontDrop = frontLoad / front.tyre.rate + frontTravel - front.referenceTravel;
  state[HEAVE] = -rearDrop;
  state[PITCH] = Math.max(-0.3, Math.min(0.3, (frontDrop - rearDrop) / geometry.wheelbase));
  state[REAR_TRAVEL] = rearTravel;
  state[FRONT_TRAVEL] = frontTravel;
}

function newton(prepared: Prepared, state: State, settling: Settling, held: Held, out: Settled): void {
  const { machine, gradient, rearTravelMax, frontTravelMax } = prepared;
  const weight =
    GRAVITY * (machine.sprung.mass + machine.load.mass + machine.rear.unsprung + machine.front.unsprung);
  const tolerance = TOLERANCE * weight;
  const rearHeld = held === 'rear' || held === 'both';
  const frontHeld = held === 'front' || held === 'both';
  out.converged = false;
  for (let iteration = 0; ; iteration += 1) {
    gradientAt(prepared, state, settling);
    const rearFree = !rearHeld && isFree(state[REAR_TRAVEL]!, rearTravelMax, gradient.rear);
    const frontFree = !frontHeld && isFree(state[FRONT_TRAVEL]!, frontTravelMax, gradient.front);
    out.residual = leftOver(gradient, machine.geometry.wheelbase, rearFree, frontFree);
    if (out.residual <= tolerance) {
      out.converged = true;
      return;
    }
    if (iteration === NEWTON_MAX || !(out.residual < Number.MAX_VALUE)) return;
    if (!step(prepared, state, rearFree, frontFree, 0)) return;
    out.iterations += 1;
    if (Math.abs(state[PITCH]!) > PITCH_MAX) return;
  }
}

/** A wheel is free unless a stop is pushing on it (or it would be pushed further into the stop). */
export function isFree(travel: number, travelMax: number, wheel: WheelGradient): boolean {
  if (travel <= 0) return wheel.travel < 0;
  if (travel >= travelMax) return wheel.travel > 0;
  return true;
}

function leftOver(gradient: Gradient, wheelbase: number, rearFree: boolean, frontFree: boolean): number {
  let most = Math.max(Math.abs(gradient.heave), Math.abs(gradient.pitch) / wheelbase);
  if (rearFree) most = Math.max(most, Math.abs(gradient.rear.travel));
  if (frontFree) most = Math.max(most, Math.abs(gradient.front.travel));
  return most;
}

/** One Newton step, damped as `solveWheelsFirst` says, kept within the travels. False where the curvature is not positive. */
function step(
  prepared: Prepared,
  state: State,
  rearFree: boolean,
  frontFree: boolean,
  damping: number,
): boolean {
  const { gradient, move } = prepared;
  move[HEAVE] = -gradient.heave;
  move[PITCH] = -gradient.pitch;
  move[REAR_TRAVEL] = -gradient.rear.travel;
  move[FRONT_TRAVEL] = -gradient.front.travel;
  if (!solveWheelsFirst(prepared, rearFree, frontFree, damping, move)) return false;
  state[HEAVE] = state[HEAVE]! + move[HEAVE]!;
  state[PITCH] = state[PITCH]! + move[PITCH]!;
  if (rearFree) state[REAR_TRAVEL] = within(state[REAR_TRAVEL]! + move[REAR_TRAVEL]!, prepared.rearTravelMax);
  if (frontFree)
    state[FRONT_TRAVEL] = within(state[FRONT_TRAVEL]! + move[FRONT_TRAVEL]!, prepared.frontTravelMax);
  return true;
}

function within(travel: number, travelMax: number): number {
  return Math.max(0, Math.min(travelMax, travel));
}

/** Walks the energy down, Levenberg style: more damping until a step lowers it, less after it did. Bounded. */
function descend(prepared: Prepared, state: State, settling: Settling, held: Held, out: Settled): void {
  const { machine, gradient, rearTravelMax, frontTravelMax } = prepared;
  const rearHeld = held === 'rear' || held === 'both';
  const frontHeld = held === 'front' || held === 'both';
  const weight = GRAVITY * (machine.sprung.mass + machine.load.mass);
  const before = new Float64Array(4);
  if (!(Math.abs(state[PITCH]!) <= PITCH_MAX) || !Number.isFinite(state[HEAVE]!))
    restart(prepared, state, held);
  let damping = 1e-3 * machine.rear.tyre.rate;
  gradientAt(prepared, state, settling);
  let energy = energyAt(prepared, state);
  for (let iteration = 0; iteration < DESCENT_MAX; iteration += 1) {
    const rearFree = !rearHeld && isFree(state[REAR_TRAVEL]!, rearTravelMax, gradient.rear);
    const frontFree = !frontHeld && isFree(state[FRONT_TRAVEL]!, frontTravelMax, gradient.front);
    out.residual = leftOver(gradient, machine.geometry.wheelbase, rearFree, frontFree);
    if (out.residual < 1e-6 * weight) return;
    before.set(state);
    const stepped = step(prepared, state, rearFree, frontFree, damping);
    if (stepped) clampPitch(state);
    gradientAt(prepared, state, settling);
    const next = energyAt(prepared, state);
    out.iterations += 1;
    if (stepped && next < energy) {
      energy = next;
      damping *= 0.25;
      continue;
    }
    state.set(before);
    gradientAt(prepared, state, settling);
    damping *= 4;
    if (damping > 1e12) return;
  }
}

function clampPitch(state: State): void {
  state[PITCH] = Math.max(-PITCH_MAX, Math.min(PITCH_MAX, state[PITCH]!));
}

function restart(prepared: Prepared, state: State, held: Held): void {
  const rear = state[REAR_TRAVEL]!;
  const front = state[FRONT_TRAVEL]!;
  startState(prepared, state);
  if (held === 'rear' || held === 'both') state[REAR_TRAVEL] = rear;
  if (held === 'front' || held === 'both') state[FRONT_TRAVEL] = front;
}
