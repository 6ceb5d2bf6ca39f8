import { axleAt } from './axlePath.ts';
import { linkageLength } from './damperEye.ts';
import { type DeadCentre, riseRange } from './deadCentres.ts';
import type { LinkageSI } from './hardPoints.ts';
import { blankLoop, type Loop, loopOf } from './link.ts';
import { type HardPointRear, LEAST_RATIO, type StrokeAtRise, stepTo } from './riseAtStroke.ts';
import { strokeOf } from './strokeOnArm.ts';
import { armTurn } from './swingarm.ts';

/** A length of the linkage, and by how much it is too short for the damper's stroke [m]. */
export interface TooShort {
  /** The link, or the rocker's arm from its pivot to the link. */
  readonly part: 'link' | 'rocker';
  readonly by: number;
}

/** Longest addition that is tried, as a share of the length, and in how many steps; then halved so many times. */
const MOST = 0.3;
const STEPS = 60;
const HALVINGS = 30;

/**
 * What must be how much longer, all else as surveyed, for the damper to make its whole stroke: the link where it is pulled
 * straight; where it folds against the rocker, the shorter of the two. Null for any other dead centre, and where 30 % more
 * do not help.
 */
export function tooShort(rear: HardPointRear, strokeMax: number, by: DeadCentre): TooShort | null {
  const { points } = rear;
  if (points.kind === 'direct' || (by !== 'link straight' && by !== 'link folded')) return null;
  const loop = blankLoop();
  loopOf(points, loop);
  const part = by === 'link straight' || loop.linkSquare < loop.armSquare ? 'link' : 'rocker';
  const length = Math.sqrt(part === 'link' ? loop.linkSquare : loop.armSquare);
  const isEnough = (more: number): boolean =>
    reaches(rear, points, longer(loop, part, more / length), strokeMax);
  const step = (MOST * length) / STEPS;
  let enough = step;
  while (enough <= MOST * length && !isEnough(enough)) enough += step;
  if (!isEnough(enough)) return null;
  let less = enough - step;
  for (let i = 0; i < HALVINGS; i += 1) {
    const middle = 0.5 * (less + enough);
    if (isEnough(middle)) enough = middle;
    else less = middle;
  }
  return { part, by: enough };
}

function longer(loop: Loop, part: TooShort['part'], share: number): Loop {
  const square = (1 + share) ** 2;
  if (part === 'link') return { ...loop, linkSquare: loop.linkSquare * square };
  return {
    ...loop,
    armX: loop.armX * (1 + share),
    armHeight: loop.armHeight * (1 + share),
    armSquare: loop.armSquare * square,
  };
}

function reaches(rear: HardPointRear, points: LinkageSI, loop: Loop, strokeMax: number): boolean {
  const range = riseRange(points, rear.arm, rear.axleHeight, loop);
  if (typeof range === 'string') return false;
  const strokes = strokesWith(rear, points, loop);
  const at = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
  if (!strokes(0, at) || at.motionRatio <= LEAST_RATIO) return false;
  const stop = stepTo(strokes, range, 0, 0);
  return stop.kind === 'reached' && stepTo(strokes, range, strokeMax, stop.rise).kind === 'reached';
}

function strokesWith({ arm, axleHeight }: HardPointRear, points: LinkageSI, loop: Loop): StrokeAtRise {
  const { pivotX, pivotHeight } = arm;
  const axle = { x: 0, height: 0, axleSlope: 0, axleBend: 0 };
  const turn = { cos: 1, sin: 0, slope: 0, bend: 0 };
  const eyes = { length: 0, slope: 0, bend: 0 };
  return (rise, out) => {
    axleAt(arm, 0, axleHeight, rise, 0, axle);
    armTurn(-pivotX, axleHeight - pivotHeight, axle.x - pivotX, axle.height - pivotHeight, turn);
    if (!linkageLength(points, loop, pivotX, pivotHeight, turn, eyes)) return false;
    strokeOf(points, eyes, turn, out);
    return true;
  };
}
