import { type DeadCentre, riseRange } from './deadCentres.ts';
import type { PartName } from './hardPoints.ts';
import { linkForce } from './linkForce.ts';
import { type HardPointRear, LEAST_RATIO, riseAtStroke, stepTo, strokesOf } from './riseAtStroke.ts';
import { samePlace } from './samePlace.ts';
import { type TooShort, tooShort } from './tooShort.ts';
import { referenceTravelOf } from './wheelMotion.ts';

/** What hard points make of a rear: it moves through the damper's whole stroke, or why it does not. Lengths in m. */
export type RearSurvey =
  | RearMoves
  /** The pivot is not ahead of the axle. */
  | { readonly kind: 'pivot behind'; readonly pivotX: number }
  /** Two parts at one place, where the linkage needs them apart. */
  | { readonly kind: 'same place'; readonly parts: readonly [PartName, PartName] }
  /** At a dead centre in the reference attitude: the points do not tell which way it goes on. */
  | { readonly kind: 'lined up'; readonly by: DeadCentre }
  /** The damper gets longer as the wheel rises; its motion ratio in the reference attitude. */
  | { readonly kind: 'wrong way'; readonly motionRatio: number }
  | NeverExtended
  | LocksUp;

/** It moves, from the damper's extension stop through its whole stroke. */
export interface RearMoves {
  readonly kind: 'moves';
  /** Wheel travel of the reference attitude and at metal to metal. */
  readonly referenceTravel: number;
  readonly travelMax: number;
  /** Eye to eye in the reference attitude; longer than the damper extended, it was surveyed without its damper. */
  readonly eyeToEye: number;
  /** What the damper makes its link do; null where there is none. */
  readonly link: 'pulls' | 'pushes' | null;
}

/** The linkage stops before the damper is as long as it is extended. */
export interface NeverExtended {
  readonly kind: 'never extended';
  readonly by: DeadCentre;
  /** The eyes' distance that comes nearest to the extended length, and how far from it. */
  readonly nearest: number;
  readonly short: number;
}

/** The linkage stops inside the damper's stroke. */
export interface LocksUp {
  readonly kind: 'locks up';
  readonly by: DeadCentre;
  /** Wheel travel and stroke made by then, and stroke that is missing. */
  readonly travel: number;
  readonly stroke: number;
  readonly short: number;
  /** What would have to be how much longer, the rest as surveyed; null where no such length helps. */
  readonly tooShort: TooShort | null;
}

/**
 * Follows a rear from its hard points in the reference attitude to the damper's extension stop and on through its stroke.
 * strokeMax  from the extension stop to metal [m]
 * The linkage's own dead centres come in closed form; a damper going over centre is looked for in steps of a few millimetres.
 * Throws RangeError for a figure that is no number, and for a stroke that is not above 0.
 */
export function surveyRear(rear: HardPointRear, strokeMax: number): RearSurvey {
  const { points, arm, axleHeight } = rear;
  requireNumbers({ points, arm, axleHeight, strokeMax });
  if (!(strokeMax > 0)) throw new RangeError(`surveyRear: a stroke of ${strokeMax} m; it must be above 0`);
  if (!(arm.pivotX > 0)) return { kind: 'pivot behind', pivotX: arm.pivotX };
  const parts = samePlace(rear);
  if (parts !== null) return { kind: 'same place', parts };
  const range = riseRange(points, arm, axleHeight);
  if (typeof range === 'string') return { kind: 'lined up', by: range };
  const strokes = strokesOf(rear);
  const at = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
  strokes(0, at);
  if (at.motionRatio < -LEAST_RATIO) return { kind: 'wrong way', motionRatio: at.motionRatio };
  if (at.motionRatio <= LEAST_RATIO) return { kind: 'lined up', by: 'damper over centre' };

  const { extendedLength } = points.damper;
  const length = extendedLength - at.stroke;
  const stop = stepTo(strokes, range, 0, 0);
  if (stop.kind === 'stopped') {
    const { by, stroke } = stop;
    return { kind: 'never extended', by, nearest: extendedLength - stroke, short: Math.abs(stroke) };
  }
  const full = stepTo(strokes, range, strokeMax, stop.rise);
  if (full.kind === 'stopped') {
    const { by, rise, stroke } = full;
    const short = strokeMax - stroke;
    return {
      kind: 'locks up',
      by,
      travel: rise - stop.rise,
      stroke,
      short,
      tooShort: tooShort(rear, strokeMax, by),
    };
  }
  const referenceTravel = referenceTravelOf(rear);
  const travelMax = (riseAtStroke(rear, strokeMax, stop.rise) ?? full.rise) + referenceTravel;
  return { kind: 'moves', referenceTravel, travelMax, eyeToEye: length, link: linkForce(points) };
}

function requireNumbers(value: object): void {
  for (const [name, each] of Object.entries(value)) {
    if (typeof each === 'object' && each !== null) requireNumbers(each);
    else if (typeof each === 'number' && !Number.isFinite(each)) {
      throw new RangeError(`surveyRear: ${name} is ${each}; hard points are finite numbers of metres`);
    }
  }
}
