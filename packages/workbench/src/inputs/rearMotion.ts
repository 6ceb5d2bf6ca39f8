import type { AxlePathSI } from '@sagwright/model/rear/axlePath';
import { siOf } from '@sagwright/records/schema/quantity';
import { type Desk, impossible, note } from './desk.ts';
import { pointsMotion, type RearMotion } from './hardPoints.ts';
import { measuredAtOf } from './measuredAt.ts';
import { rearKinematics, wheelTravel } from './travel.ts';

/** Of a rear by whichever of its travel is known; what cannot move is told with its place. */
export function rearMotion(desk: Desk, radius: number, strokeMax: number): RearMotion {
  const { travel, shock } = desk.job.machine.rear;
  if ('earlierLeverage' in travel && travel.earlierLeverage !== undefined) {
    desk.take.known('machine.rear.travel.earlierLeverage', travel.earlierLeverage, 'ratio');
  }
  if (travel.kind === 'direct' || travel.kind === 'linkage') {
    return pointsMotion(desk, travel, radius, strokeMax) ?? told;
  }
  const kinematics = rearKinematics(desk, travel, shock);
  const travelMax = wheelTravel(desk, kinematics, strokeMax);
  const referenceTravel = measuredAtOf(desk, 'rear', travelMax);
  const axlePath = axlePathOf(desk, radius, referenceTravel, travelMax - referenceTravel);
  return { kinematics, axlePath, referenceTravel };
}

/** Stands in for a rear that cannot move, so that the rest of the job is looked at too; it is never planned with. */
const told: RearMotion = {
  kinematics: { kind: 'ratio', motionRatio: 0.9 },
  axlePath: { kind: 'straight' },
  referenceTravel: 0,
};

/** How far the wheel drops below where the pivot was measured, fully out, and rises above it at full travel [m]. */
function axlePathOf(desk: Desk, radius: number, drop: number, rise: number): AxlePathSI {
  const { take, job } = desk;
  const { pivot } = job.machine.rear;
  if (pivot === undefined) {
    note(desk, 'axle path straight', 'machine.rear.pivot');
    return { kind: 'straight' };
  }
  const { wheelbase } = job.machine;
  const pivotX = take.known('machine.rear.pivot.x', pivot.x, 'geometry');
  const pivotHeight = take.known('machine.rear.pivot.height', pivot.height, 'geometry');
  const arm = Math.hypot(pivotX, pivotHeight - radius);
  const furthest = Math.max(Math.abs(radius + rise - pivotHeight), Math.abs(radius - drop - pivotHeight));
  const ahead = wheelbase === undefined || pivotX <= siOf(wheelbase);
  if (!(pivotX > 0.15) || !ahead || !(furthest < 0.9 * arm)) {
    impossible(
      desk,
      'machine.rear.pivot',
      `Swingarm pivot: ${(pivotX * 1000).toFixed(0)} mm ahead of the rear axle and ${(pivotHeight * 1000).toFixed(0)} mm high; it must lie 150 mm or more ahead, behind the front axle, and the arm must be long enough for ${((rise + drop) * 1000).toFixed(0)} mm of wheel travel.`,
    );
  }
  return { kind: 'circle', pivotX, pivotHeight };
}
