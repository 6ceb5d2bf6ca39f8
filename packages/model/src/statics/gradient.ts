import { endAt, type Settling, strutsEnergy } from './endAt.ts';
import { type EndSI, GRAVITY } from './machine.ts';
import type { Prepared, WheelGradient } from './prepared.ts';

/**
 * State of the machine: [u, θ, z_r, z_f]: heave of the body's origin [m], pitch [rad, nose-down positive], wheel travels [m].
 * World height of a body point (X, Z): u − X sin θ + Z cos θ.
 */
export type State = Float64Array;

/** Places in a state. */
export const HEAVE = 0;
export const PITCH = 1;
export const REAR_TRAVEL = 2;
export const FRONT_TRAVEL = 3;

/**
 * Gradient and curvature of the potential energy V at a state, written into `prepared.gradient`.
 *   V = g Σ m h + ½ Σ k_t (R − h_axle)² + Σ U_strut
 *   dV/du = M g + Σ A,               A = m_u g − N,  N = k_t (R − h_axle)
 *   dV/dθ = −g (M_x cos θ + M_z sin θ) − Σ A w,      w = X cos θ + Z sin θ
 *   dV/dz = A (cos θ − X' sin θ) + Q                 Q = Σ F·MR
 * All zero is the balance: (N − m_u g)(cos θ − X' sin θ) = Q at each wheel, and moments about the current contact points.
 * The tyre is taken to pull as well as push here; a wheel load of 0 or less is told by the caller as a wheel off the ground.
 * Derived from the definitions in docs/conventions.md; checked by energy differences (gradient.test.ts) and in
 * checks/energy-minimised-machines.test.ts.
 */
export function gradientAt(prepared: Prepared, state: State, settling: Settling): void {
  gradientAgain(prepared, state, settling, true, true);
}

/**
 * The same where it was written before for this state, and since then only figures of the body and of the ends that are
 * said to have moved were changed.
 */
export function gradientAgain(
  prepared: Prepared,
  state: State,
  settling: Settling,
  rearMoved: boolean,
  frontMoved: boolean,
): void {
  const { machine, gradient } = prepared;
  const { geometry, sprung, load } = machine;
  const pitch = state[PITCH]!;
  const sin = Math.sin(pitch);
  const cos = Math.cos(pitch);
  const { rear, front } = gradient;
  gradient.settling = settling;
  if (rearMoved)
    wheelAt(machine.rear, 0, geometry.rake, state[HEAVE]!, sin, cos, state[REAR_TRAVEL]!, settling, rear);
  if (frontMoved)
    wheelAt(
      machine.front,
      geometry.wheelbase,
      geometry.rake,
      state[HEAVE]!,
      sin,
      cos,
      state[FRONT_TRAVEL]!,
      settling,
      front,
    );
  const mass = sprung.mass + load.mass;
  const momentX = sprung.mass * sprung.x + load.momentX;
  const momentHeight = sprung.mass * sprung.height + load.momentHeight;
  const rearUnborne = machine.rear.unsprung * GRAVITY - rear.wheelLoad;
  const frontUnborne = machine.front.unsprung * GRAVITY - front.wheelLoad;
  const rearRate = machine.rear.tyre.rate;
  const frontRate = machine.front.tyre.rate;
  const heave = state[HEAVE]!;

  gradient.heave = mass * GRAVITY + rearUnborne + frontUnborne;
  gradient.pitch =
    -GRAVITY * (momentX * cos + momentHeight * sin) -
    rearUnborne * rear.forward -
    frontUnborne * front.forward;
  gradient.heaveHeave = rearRate + frontRate;
  gradient.heavePitch = -rearRate * rear.forward - frontRate * front.forward;
  gradient.pitchPitch =
    -GRAVITY * (momentHeight * cos - momentX * sin) +
    rearRate * rear.forward * rear.forward +
    frontRate * front.forward * front.forward -
    rearUnborne * (rear.height - heave) -
    frontUnborne * (front.height - heave);
}

function wheelAt(
  end: EndSI,
  axleX: number,
  rake: number,
  heave: number,
  sin: number,
  cos: number,
  travel: number,
  settling: Settling,
  out: WheelGradient,
): void {
  const at = out.at;
  endAt(end, rake, axleX, travel, settling, at);
  out.height = heave - at.x * sin + at.height * cos;
  out.forward = at.x * cos + at.height * sin;
  out.rise = cos - at.axleSlope * sin;
  out.wheelLoad = end.tyre.rate * (end.tyre.radius - out.height);
  const unborne = end.unsprung * GRAVITY - out.wheelLoad;
  const advance = at.axleSlope * cos + sin;
  out.travel = unborne * out.rise + at.force;
  out.travelTravel = end.tyre.rate * out.rise * out.rise - unborne * at.axleBend * sin + at.wheelRate;
  out.travelHeave = end.tyre.rate * out.rise;
  out.travelPitch = -end.tyre.rate * out.forward * out.rise - unborne * advance;
}

/**
 * Potential energy V [J] of the state whose gradient `gradientAt` wrote last (same state, same machine); its zero is
 * the ground for weight, the extension stop for struts.
 */
export function energyAt(prepared: Prepared, state: State): number {
  const { machine, gradient } = prepared;
  const { sprung, load, rear, front } = machine;
  const sin = Math.sin(state[PITCH]!);
  const cos = Math.cos(state[PITCH]!);
  const mass = sprung.mass + load.mass;
  const momentX = sprung.mass * sprung.x + load.momentX;
  const momentHeight = sprung.mass * sprung.height + load.momentHeight;
  return (
    GRAVITY * (mass * state[HEAVE]! - momentX * sin + momentHeight * cos) +
    wheelEnergy(rear, gradient.rear, gradient.settling) +
    wheelEnergy(front, gradient.front, gradient.settling)
  );
}

function wheelEnergy(end: EndSI, wheel: WheelGradient, settling: Settling): number {
  const pressed = end.tyre.radius - wheel.height;
  return (
    GRAVITY * end.unsprung * wheel.height +
    0.5 * end.tyre.rate * pressed * pressed +
    strutsEnergy(end, wheel.at.stroke, settling)
  );
}
