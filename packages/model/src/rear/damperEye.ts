import type { DirectSI, HardPointsSI, LinkageSI } from './hardPoints.ts';
import { blankLoop, type Loop, loopOf } from './link.ts';
import { type RockerTurn, rockerTurn } from './rocker.ts';
import type { ArmTurn } from './swingarm.ts';

/** Eye to eye of the damper [m], and how that changes with the turn α of the swingarm: dL/dα [m/rad], d²L/dα² [m/rad²]. */
export interface EyeToEye {
  length: number;
  slope: number;
  bend: number;
}

/**
 * The damper's length at a turn of the swingarm about its pivot. m from eye to eye in the side view, y sideways:
 *   L² = m² + y²,  L L' = m·m',  L'' = (m·m'' + m'·m' − L'²)/L
 * Returns false, `out` then being unusable, where link and rocker cannot be joined.
 * Derived; checked by differences and against Newton's method in wheelMotion.test.ts.
 */
export function eyeToEye(
  points: HardPointsSI,
  pivotX: number,
  pivotHeight: number,
  turn: ArmTurn,
  out: EyeToEye,
): boolean {
  if (points.kind === 'direct') {
    directLength(points, pivotX, pivotHeight, turn, out);
    return true;
  }
  loopOf(points, ownLoop);
  return linkageLength(points, ownLoop, pivotX, pivotHeight, turn, out);
}

function directLength(
  { armEye, frameEye, damper }: DirectSI,
  pivotX: number,
  pivotHeight: number,
  turn: ArmTurn,
  out: EyeToEye,
): void {
  const fromX = armEye.x - pivotX;
  const fromHeight = armEye.height - pivotHeight;
  const x = fromX * turn.cos - fromHeight * turn.sin;
  const height = fromX * turn.sin + fromHeight * turn.cos;
  const acrossX = pivotX + x - frameEye.x;
  const acrossHeight = pivotHeight + height - frameEye.height;
  lengthOf(acrossX, acrossHeight, -height, x, -x, -height, damper.sideways, out);
}

/**
 * The same with a rocker whose loop is told apart from its points. Seen in the body that carries the rocker: with a rocker
 * on the arm it is the frame that turns, the other way round.
 */
export function linkageLength(
  { rocker, linkEnd, rockerEye, farEye, damper }: LinkageSI,
  loop: Loop,
  pivotX: number,
  pivotHeight: number,
  turn: ArmTurn,
  out: EyeToEye,
): boolean {
  const sense = rocker.on === 'frame' ? 1 : -1;
  const sin = sense * turn.sin;
  const { cos } = turn;
  const { pivot } = rocker;
  const linkX = linkEnd.x - pivotX;
  const linkHeight = linkEnd.height - pivotHeight;
  const radiusX = linkX * cos - linkHeight * sin;
  const radiusHeight = linkX * sin + linkHeight * cos;
  const endX = pivotX + radiusX - pivot.x;
  const endHeight = pivotHeight + radiusHeight - pivot.height;
  if (!rockerTurn(loop, endX, endHeight, radiusX, radiusHeight, ownTurn)) return false;

  const { slope, bend } = ownTurn;
  const eyeX = rockerEye.x - pivot.x;
  const eyeHeight = rockerEye.height - pivot.height;
  const x = eyeX * ownTurn.cos - eyeHeight * ownTurn.sin;
  const height = eyeX * ownTurn.sin + eyeHeight * ownTurn.cos;
  let acrossX = pivot.x + x - farEye.x;
  let acrossHeight = pivot.height + height - farEye.height;
  let moveX = -slope * height;
  let moveHeight = slope * x;
  let curveX = -bend * height - slope * slope * x;
  let curveHeight = bend * x - slope * slope * height;
  if (farEye.on !== rocker.on) {
    const farX = farEye.x - pivotX;
    const farHeight = farEye.height - pivotHeight;
    const turnedX = farX * cos - farHeight * sin;
    const turnedHeight = farX * sin + farHeight * cos;
    acrossX += farX - turnedX;
    acrossHeight += farHeight - turnedHeight;
    moveX += turnedHeight;
    moveHeight -= turnedX;
    curveX += turnedX;
    curveHeight += turnedHeight;
  }
  lengthOf(acrossX, acrossHeight, moveX, moveHeight, curveX, curveHeight, damper.sideways, out);
  out.slope *= sense;
  return true;
}

function lengthOf(
  acrossX: number,
  acrossHeight: number,
  moveX: number,
  moveHeight: number,
  curveX: number,
  curveHeight: number,
  sideways: number,
  out: EyeToEye,
): void {
  const length = Math.sqrt(acrossX * acrossX + acrossHeight * acrossHeight + sideways * sideways);
  const inverse = 1 / length;
  const slope = (acrossX * moveX + acrossHeight * moveHeight) * inverse;
  out.length = length;
  out.slope = slope;
  out.bend =
    (acrossX * curveX +
      acrossHeight * curveHeight +
      moveX * moveX +
      moveHeight * moveHeight -
      slope * slope) *
    inverse;
}

const ownLoop: Loop = blankLoop();
const ownTurn: RockerTurn = { cos: 1, sin: 0, slope: 0, bend: 0 };
