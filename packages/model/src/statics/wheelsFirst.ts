import { FRONT_TRAVEL, HEAVE, PITCH, REAR_TRAVEL } from './gradient.ts';
import type { Prepared, WheelGradient } from './prepared.ts';

/**
 * Solves H·m = r for the curvature H that `gradientAt` wrote last: `move` comes in as r and goes out as m.
 * H is an arrow: the two wheels do not touch each other, so each is eliminated into heave and pitch first
 * (d·dz = r_z − b·(du, dθ)), and 2 × 2 is left. A wheel that is not free stays where it is: its m is 0.
 * damping [N/m] is added to heave and travels, and with the half wheelbase squared to pitch.
 * Returns false, `move` then being unusable, where the curvature is not positive in every direction (no stable rest).
 */
export function solveWheelsFirst(
  prepared: Prepared,
  rearFree: boolean,
  frontFree: boolean,
  damping: number,
  move: Float64Array,
): boolean {
  const { gradient, machine } = prepared;
  const { rear, front } = gradient;
  const arm = 0.5 * machine.geometry.wheelbase;
  let a = gradient.heaveHeave + damping;
  let b = gradient.heavePitch;
  let c = gradient.pitchPitch + damping * arm * arm;
  let heave = move[HEAVE]!;
  let pitch = move[PITCH]!;
  const rearCurve = rear.travelTravel + damping;
  const frontCurve = front.travelTravel + damping;
  if (rearFree) {
    if (!(rearCurve > 0)) return false;
    a -= (rear.travelHeave * rear.travelHeave) / rearCurve;
    b -= (rear.travelHeave * rear.travelPitch) / rearCurve;
    c -= (rear.travelPitch * rear.travelPitch) / rearCurve;
    heave -= (rear.travelHeave * move[REAR_TRAVEL]!) / rearCurve;
    pitch -= (rear.travelPitch * move[REAR_TRAVEL]!) / rearCurve;
  }
  if (frontFree) {
    if (!(frontCurve > 0)) return false;
    a -= (front.travelHeave * front.travelHeave) / frontCurve;
    b -= (front.travelHeave * front.travelPitch) / frontCurve;
    c -= (front.travelPitch * front.travelPitch) / frontCurve;
    heave -= (front.travelHeave * move[FRONT_TRAVEL]!) / frontCurve;
    pitch -= (front.travelPitch * move[FRONT_TRAVEL]!) / frontCurve;
  }
  const determinant = a * c - b * b;
  if (!(a > 0) || !(determinant > 0)) return false;
  const heaveMove = (heave * c - b * pitch) / determinant;
  const pitchMove = (a * pitch - b * heave) / determinant;
  move[HEAVE] = heaveMove;
  move[PITCH] = pitchMove;
  move[REAR_TRAVEL] = rearFree ? wheelMove(rear, move[REAR_TRAVEL]!, heaveMove, pitchMove, rearCurve) : 0;
  move[FRONT_TRAVEL] = frontFree
    ? wheelMove(front, move[FRONT_TRAVEL]!, heaveMove, pitchMove, frontCurve)
    : 0;
  return true;
}

function wheelMove(wheel: WheelGradient, push: number, heave: number, pitch: number, curve: number): number {
  return (push - wheel.travelHeave * heave - wheel.travelPitch * pitch) / curve;
}
