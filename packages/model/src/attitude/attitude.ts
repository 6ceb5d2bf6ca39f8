import { gradientAt, HEAVE, PITCH } from '../statics/gradient.ts';
import type { Prepared } from '../statics/prepared.ts';

/** How the machine stands: all in the attitude it found. `null` where the figure it needs was never read. */
export interface Attitude {
  /** Nose-down positive [rad]. */
  readonly pitch: number;
  /** Steering head from the vertical [rad]. */
  readonly rake: number;
  /** Trail along the ground, and square to the steering axis [m]. */
  readonly groundTrail: number | null;
  readonly normalTrail: number | null;
  /** Between the contact points [m]. */
  readonly wheelbase: number;
  /** Of the seat point above the ground [m]. */
  readonly seatHeight: number | null;
}

/**
 * Attitude of a machine at a state [u, θ, z_r, z_f].
 *   rake      = ε − θ
 *   trail     = (R sin(ε−θ) − d) / cos(ε−θ),  normal trail = trail·cos(ε−θ);  R the loaded front radius, d the fork offset
 *   wheelbase = distance of the axles along the ground (contact points stand vertically below them)
 *   seat      = u − X sin θ + Z cos θ
 * Source of the trail: sympy's and Meijaard et al. 2007 form, rake offset = R sin ε − trail cos ε
 * (checks/meijaard-2007-bicycle-benchmark.test.ts).
 */
export function attitudeAt(prepared: Prepared, state: ArrayLike<number>): Attitude {
  const { geometry } = prepared.machine;
  const scratch = Float64Array.from(state);
  gradientAt(prepared, scratch, 0);
  const { rear, front } = prepared.gradient;
  const pitch = state[PITCH]!;
  const rake = geometry.rake - pitch;
  const { forkOffset, seat } = geometry;
  const normalTrail = forkOffset === null ? null : normalTrailOf(front.height, rake, forkOffset);
  return {
    pitch,
    rake,
    groundTrail: normalTrail === null ? null : normalTrail / Math.cos(rake),
    normalTrail,
    wheelbase: front.forward - rear.forward,
    seatHeight:
      seat === null ? null : state[HEAVE]! - seat.x * Math.sin(pitch) + seat.height * Math.cos(pitch),
  };
}

/** a_n = R sin ε − d [m]: radius to the ground [m], rake from the vertical [rad], fork offset [m]. */
export function normalTrailOf(radius: number, rake: number, forkOffset: number): number {
  return radius * Math.sin(rake) - forkOffset;
}

/** The inverse: fork offset [m] that gives a ground trail [m]: d = R sin ε − a cos ε. */
export function forkOffsetOf(radius: number, rake: number, groundTrail: number): number {
  return radius * Math.sin(rake) - groundTrail * Math.cos(rake);
}
