import type { AxleAt } from './axlePath.ts';

/** How far the swingarm is turned from the reference attitude, from x towards z positive: the wheel rises as it falls. */
export interface ArmTurn {
  cos: number;
  sin: number;
  /** dα/dz [rad/m] and d²α/dz² [rad/m²], z wheel travel. */
  slope: number;
  bend: number;
}

/**
 * Turn α of the arm whose axle stood at (startX, startHeight) and stands at `axle` now; all seen from the pivot [m].
 *   cos α = a₀·a / a²,  sin α = a₀×a / a²,  dα/dz = 1/a_x,  d²α/dz² = a_z/a_x³     (the axle rises by dz: dz = a_x dα)
 * Exact: no angle is taken and turned back.
 */
export function armTurn(startX: number, startHeight: number, x: number, height: number, out: ArmTurn): void {
  const inverse = 1 / (startX * startX + startHeight * startHeight);
  const slope = 1 / x;
  out.cos = (startX * x + startHeight * height) * inverse;
  out.sin = (startX * height - startHeight * x) * inverse;
  out.slope = slope;
  out.bend = height * slope * slope * slope;
}

/** How steeply the arm falls from its pivot back to the axle [rad]: 0 level, positive with the pivot above the axle. */
export function armAngle(axle: Pick<AxleAt, 'x' | 'height'>, pivotX: number, pivotHeight: number): number {
  return Math.atan2(pivotHeight - axle.height, pivotX - axle.x);
}
