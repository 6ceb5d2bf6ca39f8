import type { AxleAt } from './axlePath.ts';
import type { HardPoint, LinkageSI, PartName } from './hardPoints.ts';
import { isHardPoints } from './kinematics.ts';
import { blankLoop, loopOf } from './link.ts';
import { rockerTurn } from './rocker.ts';
import { armTurn } from './swingarm.ts';
import { axleHeightOf, swingarmOf, type WheelMotionSI, wheelAt } from './wheelMotion.ts';

/** A part of the rear and where it stands in the body [m]. */
export interface PartAt extends HardPoint {
  readonly part: PartName;
}

/** A turn about a point. */
interface Turn {
  readonly cos: number;
  readonly sin: number;
}

/**
 * Where axle, pivot, eyes, rocker and link stand in the body at wheel travel z [m], for drawing and for measuring on the
 * machine. Throws RangeError where the rear has no hard points, and where it cannot stand so.
 */
export function partsAt(end: WheelMotionSI, z: number): readonly PartAt[] {
  const { kinematics, axlePath } = end;
  const { pivotX, pivotHeight } = swingarmOf(axlePath);
  if (!isHardPoints(kinematics)) {
    throw new RangeError(`partsAt: a rear known by its ${kinematics.kind}; only hard points have places`);
  }
  const axle = { x: 0, height: 0, axleSlope: 0, axleBend: 0, stroke: 0, motionRatio: 0, ratioSlope: 0 };
  wheelAt(end, 0, 0, z, axle);
  const pivot = { x: pivotX, height: pivotHeight };
  const turn = turnOfArm(pivot, axleHeightOf(end), axle);
  const onArm = (point: HardPoint): HardPoint => turned(point, pivot, turn);
  const both: readonly PartAt[] = [
    { part: 'axle', x: axle.x, height: axle.height },
    { part: 'pivot', ...pivot },
  ];
  if (kinematics.kind === 'linkage') return [...both, ...linkageParts(kinematics, pivot, turn)];
  return [
    ...both,
    { part: 'arm eye', ...onArm(kinematics.armEye) },
    { part: 'frame eye', ...kinematics.frameEye },
  ];
}

function turnOfArm(pivot: HardPoint, axleHeight: number, axle: Pick<AxleAt, 'x' | 'height'>): Turn {
  const turn = { cos: 1, sin: 0, slope: 0, bend: 0 };
  armTurn(-pivot.x, axleHeight - pivot.height, axle.x - pivot.x, axle.height - pivot.height, turn);
  return turn;
}

function linkageParts(points: LinkageSI, pivot: HardPoint, arm: Turn): readonly PartAt[] {
  const { rocker, linkEnd, rockerEye, farEye } = points;
  const sense = rocker.on === 'frame' ? 1 : -1;
  const end = turned(linkEnd, pivot, { cos: arm.cos, sin: sense * arm.sin });
  const loop = blankLoop();
  loopOf(points, loop);
  const own = { cos: 1, sin: 0, slope: 0, bend: 0 };
  rockerTurn(loop, end.x - rocker.pivot.x, end.height - rocker.pivot.height, 0, 0, own);
  // The rocker turns in the body that carries it; with the arm, all of it is turned once more.
  const carried = (on: 'frame' | 'arm', point: HardPoint): HardPoint =>
    on === 'frame' ? point : turned(point, pivot, arm);
  const onRocker = (point: HardPoint): HardPoint => carried(rocker.on, turned(point, rocker.pivot, own));
  return [
    { part: 'rocker pivot', ...carried(rocker.on, rocker.pivot) },
    { part: 'link pin', ...onRocker(rocker.pin) },
    { part: 'link end', ...carried(rocker.on === 'frame' ? 'arm' : 'frame', pointOf(linkEnd)) },
    { part: 'rocker eye', ...onRocker(rockerEye) },
    { part: 'far eye', ...carried(farEye.on, pointOf(farEye)) },
  ];
}

function pointOf({ x, height }: HardPoint): HardPoint {
  return { x, height };
}

function turned(point: HardPoint, about: HardPoint, { cos, sin }: Turn): HardPoint {
  const x = point.x - about.x;
  const height = point.height - about.height;
  return { x: about.x + x * cos - height * sin, height: about.height + x * sin + height * cos };
}
