import type { HardPoint, PartName } from './hardPoints.ts';
import type { HardPointRear } from './riseAtStroke.ts';

/** Centres nearer than this cannot be two bolts: a place typed twice [m]. */
const APART = 0.001;

/** Two parts that stand at one place although the linkage only works with them apart; null if none do. */
export function samePlace({ points, arm, axleHeight }: HardPointRear): readonly [PartName, PartName] | null {
  const pivot = { x: arm.pivotX, height: arm.pivotHeight };
  const axle = { x: 0, height: axleHeight };
  const pairs: readonly (readonly [PartName, HardPoint, PartName, HardPoint])[] =
    points.kind === 'direct'
      ? [
          ['axle', axle, 'pivot', pivot],
          ['arm eye', points.armEye, 'pivot', pivot],
          ['frame eye', points.frameEye, 'pivot', pivot],
          ['arm eye', points.armEye, 'frame eye', points.frameEye],
        ]
      : [
          ['axle', axle, 'pivot', pivot],
          ['rocker pivot', points.rocker.pivot, 'link pin', points.rocker.pin],
          ['rocker pivot', points.rocker.pivot, 'rocker eye', points.rockerEye],
          ['rocker pivot', points.rocker.pivot, 'link end', points.linkEnd],
          ['link pin', points.rocker.pin, 'link end', points.linkEnd],
          ['link end', points.linkEnd, 'pivot', pivot],
          ['rocker eye', points.rockerEye, 'far eye', points.farEye],
        ];
  const same = pairs.find(
    ([, one, , other]) => Math.hypot(one.x - other.x, one.height - other.height) < APART,
  );
  return same === undefined ? null : [same[0], same[2]];
}
