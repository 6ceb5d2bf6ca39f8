import { gradientAt, HEAVE, PITCH } from '../statics/gradient.ts';
import type { Prepared } from '../statics/prepared.ts';

/** A point of the machine: in the side view by its body coordinates, and how far it stands out from the middle [m]. */
export interface PointSI {
  readonly x: number;
  readonly height: number;
  /** Left or right alike; null where nobody has read it. */
  readonly sideways: number | null;
}

/** Height above the ground [m] of a body point (X, Z) at a state: u − X sin θ + Z cos θ. */
export function heightAt(
  state: ArrayLike<number>,
  { x, height }: { readonly x: number; readonly height: number },
): number {
  return state[HEAVE]! - x * Math.sin(state[PITCH]!) + height * Math.cos(state[PITCH]!);
}

/** Radius of the tyres' crowns across [m]: 0 is a tyre as thin as a blade, on which parts touch the ground soonest. */
export interface CrownsSI {
  readonly rear: number;
  readonly front: number;
}

/**
 * Angle from upright [rad] to which the machine leans, without being pressed further down, until a point touches the ground.
 * The tyres roll on their crowns, whose centres keep their height ρ; about the line through them the point turns:
 *   ρ + (h − ρ) cos φ − y sin φ = 0      φ = atan2(h − ρ, y) + asin(ρ / √((h − ρ)² + y²))
 * h, y  height above the ground and distance from the middle with the machine upright [m];  ρ there, between both tyres
 * Null where nothing of it ever touches (inside the crown's round). Valid: steering straight; the slope of the line
 * through the centres is left out (ρ differs by a few centimetres over the wheelbase).
 * Source: plane geometry; with ρ = 0 it is atan(h/y). Checked: leanAngle.test.ts.
 */
export function leanToTouch(
  prepared: Prepared,
  state: ArrayLike<number>,
  point: PointSI & { readonly sideways: number },
  crowns: CrownsSI,
): number | null {
  gradientAt(prepared, Float64Array.from(state), 0);
  const { rear, front } = prepared.gradient;
  const forward = point.x * Math.cos(state[PITCH]!) + point.height * Math.sin(state[PITCH]!);
  const along = (forward - rear.forward) / (front.forward - rear.forward);
  const crown = crowns.rear + (crowns.front - crowns.rear) * along;
  return touchAngle(heightAt(state, point), point.sideways, Math.max(0, crown));
}

/** φ [rad] at which a point of height h, y [m] from the middle, touches, on crowns of radius ρ; null where it never does. */
export function touchAngle(height: number, sideways: number, crown: number): number | null {
  const above = height - crown;
  const distance = Math.hypot(above, sideways);
  if (!(distance > crown)) return null;
  return Math.atan2(above, sideways) + Math.asin(crown / distance);
}
