import type { SwingarmPathSI } from './axlePath.ts';
import type { HardPointsSI, LinkageSI } from './hardPoints.ts';
import { blankLoop, type Loop, loopOf } from './link.ts';

/** What stops a linkage from going on: it cannot be moved further, or the damper no longer follows the wheel. */
export type DeadCentre = 'arm upright' | 'link straight' | 'link folded' | 'damper over centre';

/** How far the axle can rise above and drop below the reference attitude before parts line up [m], and which do. */
export interface RiseRange {
  readonly lowest: number;
  readonly lowestBy: DeadCentre;
  readonly highest: number;
  readonly highestBy: DeadCentre;
}

/**
 * Nearer than 1° to a straight line a tenth of a millimetre of wear decides which way a joint goes: that counts as
 * there. From an own judgement; linkages that are built stay more than ten times as far away.
 */
export const LINED_UP = Math.PI / 180;

/**
 * Between which heights of the axle swingarm and linkage can move, in closed form; the dead centre where they stand at
 * one in the reference attitude itself, so that it does not tell which way they go on.
 * The arm stands upright where its elevation reaches ±90°. A link ends at C, which turns by β about P:
 *   |C − O|² = K + A cos(β − φ)           O the rocker's pivot
 * and lines up with the rocker arm where that is r² + l² ± 2 r l cos 1°.
 */
export function riseRange(
  points: HardPointsSI,
  arm: SwingarmPathSI,
  axleHeight: number,
  loop: Loop | null = null,
): RiseRange | DeadCentre {
  const length = Math.hypot(arm.pivotX, axleHeight - arm.pivotHeight);
  const start = Math.atan2(axleHeight - arm.pivotHeight, arm.pivotX);
  const upright = Math.PI / 2 - LINED_UP;
  if (!(Math.abs(start) < upright)) return 'arm upright';
  let [low, lowestBy] = [-upright, 'arm upright' as DeadCentre];
  let [high, highestBy] = [upright, 'arm upright' as DeadCentre];
  if (points.kind === 'linkage') {
    const turns = linkTurns(points, arm, loop ?? readLoop(points));
    if (typeof turns === 'string') return turns;
    // The arm's turn falls as the wheel rises.
    if (start - turns.most > low) [low, lowestBy] = [start - turns.most, turns.mostBy];
    if (start - turns.least < high) [high, highestBy] = [start - turns.least, turns.leastBy];
  }
  const riseAt = (elevation: number): number => arm.pivotHeight + length * Math.sin(elevation) - axleHeight;
  return { lowest: riseAt(low), lowestBy, highest: riseAt(high), highestBy };
}

function readLoop(points: LinkageSI): Loop {
  const loop = blankLoop();
  loopOf(points, loop);
  return loop;
}

interface Turns {
  readonly least: number;
  readonly leastBy: DeadCentre;
  readonly most: number;
  readonly mostBy: DeadCentre;
}

/** Turns of the swingarm [rad] at which link and rocker arm line up, on either side of the reference attitude. */
function linkTurns({ rocker, linkEnd }: LinkageSI, arm: SwingarmPathSI, loop: Loop): Turns | DeadCentre {
  const fromX = arm.pivotX - rocker.pivot.x;
  const fromHeight = arm.pivotHeight - rocker.pivot.height;
  const radiusX = linkEnd.x - arm.pivotX;
  const radiusHeight = linkEnd.height - arm.pivotHeight;
  const along = fromX * radiusX + fromHeight * radiusHeight;
  const across = fromHeight * radiusX - fromX * radiusHeight;
  const mean = fromX ** 2 + fromHeight ** 2 + radiusX ** 2 + radiusHeight ** 2;
  const swing = 2 * Math.hypot(along, across);
  const phase = Math.atan2(across, along);
  const squares = loop.armSquare + loop.linkSquare;
  const product = 2 * Math.sqrt(loop.armSquare * loop.linkSquare) * Math.cos(LINED_UP);
  const now = mean + 2 * along;
  if (!(now > squares - product)) return 'link folded';
  if (!(now < squares + product)) return 'link straight';
  let [least, leastBy] = [Number.NEGATIVE_INFINITY, 'link straight' as DeadCentre];
  let [most, mostBy] = [Number.POSITIVE_INFINITY, 'link straight' as DeadCentre];
  for (const [square, by] of [
    [squares + product, 'link straight'],
    [squares - product, 'link folded'],
  ] as const) {
    const cos = (square - mean) / swing;
    if (!(Math.abs(cos) < 1)) continue;
    for (const turn of [phase + Math.acos(cos), phase - Math.acos(cos)].map(withinOneTurn)) {
      const [above, below] = turn > 0 ? [turn, turn - 2 * Math.PI] : [turn + 2 * Math.PI, turn];
      if (above < most) [most, mostBy] = [above, by];
      if (below > least) [least, leastBy] = [below, by];
    }
  }
  return rocker.on === 'frame'
    ? { least, leastBy, most, mostBy }
    : { least: -most, leastBy: mostBy, most: -least, mostBy: leastBy };
}

function withinOneTurn(turn: number): number {
  return turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI));
}
