import { type AxleAt, type AxlePathSI, axleAt, type SwingarmPathSI } from './axlePath.ts';
import { isHardPoints, type KinematicsSI, type StrokeAt, strokeAt, travelAtStroke } from './kinematics.ts';
import { type HardPointRear, riseAtStroke } from './riseAtStroke.ts';
import { strokeOnArm } from './strokeOnArm.ts';

/** What of an end says how its wheel and its dampers move. */
export interface WheelMotionSI {
  readonly kinematics: KinematicsSI;
  readonly axlePath: AxlePathSI;
  readonly tyre: { readonly radius: number };
  readonly axleHeight?: number;
  /** Wheel travel of the reference attitude [m]; with hard points it follows from them: `referenceTravelOf`. */
  readonly referenceTravel: number;
}

/**
 * Axle and damper of an end at wheel travel z [m], whatever the depth at which it is known.
 * axleX  the axle at the reference travel, body coordinates [m]: 0 at the rear;  rake [rad], read by a fork
 * Throws RangeError where the geometry cannot stand so; `surveyRear` tells beforehand how far it goes.
 */
export function wheelAt(
  end: WheelMotionSI,
  rake: number,
  axleX: number,
  z: number,
  out: AxleAt & StrokeAt,
): void {
  const { kinematics, axlePath } = end;
  const axleHeight = axleHeightOf(end);
  axleAt(axlePath, axleX, axleHeight, z - end.referenceTravel, rake, out);
  if (!isHardPoints(kinematics)) strokeAt(kinematics, rake, z, out);
  else if (!strokeOnArm(kinematics, swingarmOf(axlePath), axleHeight, out, out)) {
    throw new RangeError(
      `wheelAt: link and rocker cannot be joined at a wheel travel of ${z} m; the hard points must be surveyed first`,
    );
  }
}

/** Height of an end's axle in the reference attitude [m]: with another tyre than it was measured on, the axle stays where it was. */
export function axleHeightOf(end: Pick<WheelMotionSI, 'tyre' | 'axleHeight'>): number {
  return end.axleHeight ?? end.tyre.radius;
}

/** The damper alone: stroke, motion ratio and its slope at wheel travel z [m]. */
export function damperAt(end: WheelMotionSI, rake: number, z: number, out: StrokeAt): void {
  wheelAt(end, rake, 0, z, wheel);
  out.stroke = wheel.stroke;
  out.motionRatio = wheel.motionRatio;
  out.ratioSlope = wheel.ratioSlope;
}

const wheel = { x: 0, height: 0, axleSlope: 0, axleBend: 0, stroke: 0, motionRatio: 0, ratioSlope: 0 };

/**
 * Wheel travel [m] at which the damper has made `stroke` [m]: the inverse of `damperAt`.
 * Throws RangeError where the wheel cannot get there.
 */
export function wheelTravelAt(end: WheelMotionSI, rake: number, stroke: number): number {
  const { kinematics, axlePath, referenceTravel } = end;
  if (!isHardPoints(kinematics)) return travelAtStroke(kinematics, rake, stroke);
  const rear = { points: kinematics, arm: swingarmOf(axlePath), axleHeight: axleHeightOf(end) };
  const rise = riseAtStroke(rear, stroke, -referenceTravel);
  if (rise !== null) return rise + referenceTravel;
  throw new RangeError(
    `wheelTravelAt: no wheel travel gives a damper stroke of ${stroke} m on these hard points`,
  );
}

/**
 * Wheel travel of the reference attitude [m] as the hard points say it: how far the axle stands above where the damper is
 * at its extension stop. Below 0 where they were surveyed with the wheel hanging lower than the damper lets it.
 * Throws RangeError where the damper's extended length is never reached; `surveyRear` tells by how much.
 */
export function referenceTravelOf(rear: HardPointRear): number {
  const rise = riseAtStroke(rear, 0, 0);
  if (rise !== null) return -rise;
  throw new RangeError(
    `referenceTravelOf: these hard points never let the damper be ${rear.points.damper.extendedLength} m long`,
  );
}

/** The circle about the swingarm's pivot that hard points need; throws RangeError for any other path. */
export function swingarmOf(axlePath: AxlePathSI): SwingarmPathSI {
  if (axlePath.kind === 'circle') return axlePath;
  throw new RangeError(
    `an axle path that is ${axlePath.kind}: with hard points the axle must run on a circle about the swingarm's pivot`,
  );
}
