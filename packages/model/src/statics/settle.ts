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

/** Pitch beyond which the machine counts as tipping over [rad], and beyond which none is looked for. */
export const PITCH_USE = 0.5;
const PITCH_MAX = 0.6;
const NEWTON_MAX = 30;
const DESCENT_MAX = 400;
/** Walks down the energy that are tried, each ended by Newton. */
const WALKS_MAX = 3;
/** Left-over force as a share of the weight; from the second one on Newton finishes better than a walk. */
const TOLERANCE = 1e-11;
const NEAR = 1e-6;
/** A step of a few roundings [m, rad]: against a very hard rubber no state leaves less force than what it would cure. */
const STILL = 4e-15;
/** How far a balance on a knife's edge is pushed off it [m]. */
const NUDGE = 1e-5;

/**
 * Finds where the machine comes to rest: the state at which its potential energy is least, 0 <= z <= z_max at each wheel.
 * Newton on the gradient, the travel limits as an active set (a wheel on its stop leaves the system while the stop pushes);
 * where Newton runs astray (a kink, a falling ratio) the energy is walked down with damping, then Newton ends it.
 * A balance on a knife's edge is no rest: it is nudged and walked down from.
 * state  in: where to start (`startState`), held travels where they are held; out: the rest
 * Writes `prepared.gradient` at the rest. Found means: 1e-11 of the weight left over, or a Newton step of a few roundings.
 * Not converging is told with the force left over, never hidden.
 * Source: projected Newton for simple bounds (Bertsekas 1982) with Levenberg damping; arrow matrix solved wheels first.
 */
export function settle(prepared: Prepared, state: State, settling: Settling, held: Held, out: Settled): void {
  out.iterations = 0;
  if (held !== 'rear' && held !== 'both')
    state[REAR_TRAVEL] = within(state[REAR_TRAVEL]!, prepared.rearTravelMax);
  if (held !== 'front' && held !== 'both')
    state[FRONT_TRAVEL] = within(state[FRONT_TRAVEL]!, prepared.frontTravelMax);
  newton(prepared, state, settling, held, out);
  for (let walk = 0; walk < WALKS_MAX && !out.converged; walk += 1) {
    if (out.residual < NEAR * weightOf(prepared)) nudge(prepared, state, held);
    descend(prepared, state, settling, held, out);
    newton(prepared, state, settling, held, out);
  }
}

/** Whether a solve ended on both wheels: found, each wheel pressed to the ground, the body not pitched beyond all use. */
export function standsOnBoth(prepared: Prepared, state: State, settled: Settled): boolean {
  const { rear, front } = prepared.gradient;
  return (
    settled.converged && rear.wheelLoad > 0 && front.wheelLoad > 0 && Math.abs(state[PITCH]!) <= PITCH_USE
  );
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
  const { machine, gradient, move, rearTravelMax, frontTravelMax } = prepared;
  const tolerance = TOLERANCE * weightOf(prepared);
  const rearHeld = held === 'rear' || held === 'both';
  const frontHeld = held === 'front' || held === 'both';
  let still = false;
  out.converged = false;
  for (let iteration = 0; ; iteration += 1) {
    gradientAt(prepared, state, settling);
    const rearFree = !rearHeld && isFree(state[REAR_TRAVEL]!, rearTravelMax, gradient.rear);
    const frontFree = !frontHeld && isFree(state[FRONT_TRAVEL]!, frontTravelMax, gradient.front);
    out.residual = leftOver(gradient, machine.geometry.wheelbase, rearFree, frontFree);
    if (out.residual <= tolerance || still) {
      // Only whether the curvature is positive is asked here; what it makes of `move` goes unused.
      out.converged = solveWheelsFirst(prepared, rearFree, frontFree, 0, move);
      return;
    }
    if (iteration === NEWTON_MAX || !(out.residual < Number.MAX_VALUE)) return;
    if (!step(prepared, state, rearFree, frontFree, 0)) return;
    still = isStill(move);
    out.iterations += 1;
    if (Math.abs(state[PITCH]!) > PITCH_MAX) return;
  }
}

function isStill(move: Float64Array): boolean {
  return (
    Math.max(
      Math.abs(move[HEAVE]!),
      Math.abs(move[PITCH]!),
      Math.abs(move[REAR_TRAVEL]!),
      Math.abs(move[FRONT_TRAVEL]!),
    ) < STILL
  );
}

function weightOf({ machine }: Prepared): number {
  return GRAVITY * (machine.sprung.mass + machine.load.mass + machine.rear.unsprung + machine.front.unsprung);
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
  const { machine, gradient, move, rearTravelMax, frontTravelMax } = prepared;
  const rearHeld = held === 'rear' || held === 'both';
  const frontHeld = held === 'front' || held === 'both';
  const near = NEAR * weightOf(prepared);
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
    if (out.residual < near) return;
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
    if (stepped && isStill(move)) return;
  }
}

/** Pushes a wheel that is not held towards the middle of its travel, or the body's pitch where both are. */
function nudge(prepared: Prepared, state: State, held: Held): void {
  if (held === 'both') {
    state[PITCH] = state[PITCH]! + NUDGE;
    return;
  }
  const place = held === 'rear' ? FRONT_TRAVEL : REAR_TRAVEL;
  const travelMax = held === 'rear' ? prepared.frontTravelMax : prepared.rearTravelMax;
  state[place] = state[place]! + (state[place]! < 0.5 * travelMax ? NUDGE : -NUDGE);
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
