import type { AxleAt, SwingarmPathSI } from './axlePath.ts';
import { type EyeToEye, eyeToEye } from './damperEye.ts';
import type { HardPointsSI } from './hardPoints.ts';
import type { StrokeAt } from './kinematics.ts';
import { type ArmTurn, armTurn } from './swingarm.ts';

/**
 * Damper stroke of a rear with hard points, its axle standing where `axle` says.
 *   s = L_extended − L,  MR = −L' α',  dMR/dz = −(L'' α'² + L' α'')      α turn of the arm, ' of L by α, of α by z
 * axleHeight  of the axle in the reference attitude, where it is at x = 0 [m]
 * Returns false, `out` then being unusable, where link and rocker cannot be joined.
 */
export function strokeOnArm(
  points: HardPointsSI,
  arm: SwingarmPathSI,
  axleHeight: number,
  axle: Pick<AxleAt, 'x' | 'height'>,
  out: StrokeAt,
): boolean {
  const { pivotX, pivotHeight } = arm;
  armTurn(-pivotX, axleHeight - pivotHeight, axle.x - pivotX, axle.height - pivotHeight, turn);
  if (!eyeToEye(points, pivotX, pivotHeight, turn, eyes)) return false;
  strokeOf(points, eyes, turn, out);
  return true;
}

/** The same once the damper's length is known. */
export function strokeOf(
  points: HardPointsSI,
  { length, slope, bend }: EyeToEye,
  arm: ArmTurn,
  out: StrokeAt,
): void {
  out.stroke = points.damper.extendedLength - length;
  out.motionRatio = -slope * arm.slope;
  out.ratioSlope = -(bend * arm.slope * arm.slope + slope * arm.bend);
}

const turn: ArmTurn = { cos: 1, sin: 0, slope: 0, bend: 0 };
const eyes: EyeToEye = { length: 0, slope: 0, bend: 0 };
