import {
  type KinematicsSI,
  strokeAt,
  strokeLimit,
  travelAtStroke,
  travelOnCubic,
} from '../rear/kinematics.ts';
import { LEAST_RATIO } from '../rear/riseAtStroke.ts';
import { surveyRear } from '../rear/survey.ts';
import { axleHeightOf, referenceTravelOf, swingarmOf } from '../rear/wheelMotion.ts';
import type { EndSI, MachineSI } from '../statics/machine.ts';

/**
 * The machine with its rear shocks longer by `change` [m] (shorter: below 0), eye to eye fully out; stroke, spring and
 * preload as before. At each stroke the wheel stands where the shock that was fitted before had made `change` less:
 *   s'(z') = s(z' − Δ) + change,   s(−Δ) = −change
 * so that the body coordinates hold at a travel that is Δ further from the new stop.
 * Null where the arm, the ratio or the hard points do not let the shock be so long through its whole stroke.
 */
export function withShockLength(machine: MachineSI, change: number): MachineSI | null {
  if (change === 0) return machine;
  const { rear } = machine;
  const moved = longerShock(rear, change);
  return moved === null || !armReaches(moved, machine.geometry.rake) ? null : { ...machine, rear: moved };
}

/**
 * The machine with its fork tubes raised in their clamps by `change` [m] along the tubes: the front comes down.
 * The axle stands higher in the body by change·cos ε at each stroke, so that the body coordinates hold at a travel that is
 * so much nearer to the stop.
 * Throws RangeError where the front is no telescopic fork.
 */
export function withClampHeight(machine: MachineSI, change: number): MachineSI {
  const { front, geometry } = machine;
  if (front.kinematics.kind !== 'fork') {
    throw new RangeError(
      `withClampHeight: a front known by its ${front.kinematics.kind}; only the tubes of a fork stand in clamps`,
    );
  }
  const referenceTravel = front.referenceTravel - change * Math.cos(geometry.rake);
  return { ...machine, front: { ...front, referenceTravel } };
}

/** The machine on another tyre at one end, of radius [m] unloaded: the axle stays where it was in the body. */
export function withTyreRadius(machine: MachineSI, end: 'rear' | 'front', radius: number): MachineSI {
  const before = machine[end];
  return {
    ...machine,
    [end]: { ...before, tyre: { ...before.tyre, radius }, axleHeight: axleHeightOf(before) },
  };
}

function longerShock(rear: EndSI, change: number): EndSI | null {
  const { kinematics } = rear;
  switch (kinematics.kind) {
    case 'direct':
    case 'linkage': {
      const { damper } = kinematics;
      const points = { ...kinematics, damper: { ...damper, extendedLength: damper.extendedLength + change } };
      const onArm = { points, arm: swingarmOf(rear.axlePath), axleHeight: axleHeightOf(rear) };
      if (surveyRear(onArm, rear.strokeMax).kind !== 'moves') return null;
      return { ...rear, kinematics: points, referenceTravel: referenceTravelOf(onArm) };
    }
    case 'fork':
      throw new RangeError('withShockLength: a fork at the rear; only shocks have a length');
    default: {
      const further = furtherOut(kinematics, change);
      if (further === null) return null;
      const shifted = { ...rear, kinematics: shiftedBy(kinematics, further, change) };
      if (!makesItsStroke(shifted.kinematics, rear.strokeMax)) return null;
      return { ...shifted, referenceTravel: rear.referenceTravel + further };
    }
  }
}

type Told = Extract<KinematicsSI, { kind: 'ratio' | 'table' | 'quadratic' | 'cubic' }>;

/** Δ [m]: how much further out the wheel stands at the new stop; null where the ratio does not go so far. */
function furtherOut(kinematics: Told, change: number): number | null {
  if (kinematics.kind === 'quadratic') {
    const { slope, bend } = kinematics;
    const inside = slope * slope - 4 * bend * change;
    return inside > 0 ? (2 * change) / (slope + Math.sqrt(inside)) : null;
  }
  if (kinematics.kind === 'cubic') {
    const travel = travelOnCubic(kinematics, -change);
    return travel === null ? null : -travel;
  }
  if (kinematics.kind === 'table') {
    const { x, y, slope } = kinematics.curve;
    const before = y[0]! + change / kinematics.scale;
    // Straight on below its first row, and no further than it spans: a curve that begins level goes nowhere there.
    if (before > 0 && !(before < slope[0]! * (x.at(-1)! - x[0]!))) return null;
    if (before <= 0 && !(-change < HAIR * strokeLimit(kinematics))) return null;
  }
  return -travelAtStroke(kinematics, 0, -change);
}

/** A hair less than the stroke at which a ratio runs out: so that the small steps by which doubts are followed have an answer too. */
const HAIR = 0.999;

/** Whether a ratio lets the shock make its whole stroke, and moves it at both ends. */
function makesItsStroke(kinematics: Told, strokeMax: number): boolean {
  if (!(strokeMax < HAIR * strokeLimit(kinematics))) return false;
  const at = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
  return [0, travelAtStroke(kinematics, 0, strokeMax)].every((travel) => {
    strokeAt(kinematics, 0, travel, at);
    return at.motionRatio > LEAST_RATIO;
  });
}

/** The same ratio, counted from a stop that lies `further` [m] of wheel travel further out, `change` [m] of stroke. */
function shiftedBy(kinematics: Told, further: number, change: number): Told {
  switch (kinematics.kind) {
    case 'ratio':
      return kinematics;
    case 'quadratic':
      return { ...kinematics, slope: kinematics.slope - 2 * kinematics.bend * further };
    case 'cubic': {
      const { slope, bend, twist } = kinematics;
      return {
        ...kinematics,
        slope: slope - (2 * bend - 3 * twist * further) * further,
        bend: bend - 3 * twist * further,
      };
    }
    case 'table': {
      const { x, y, slope } = kinematics.curve;
      const curve = {
        x: x.map((each) => each + further),
        y: y.map((each) => each + change / kinematics.scale),
        slope,
      };
      return { ...kinematics, curve };
    }
  }
}

/** Whether a swingarm is long enough for where its wheel then hangs and how high it comes. */
function armReaches(rear: EndSI, rake: number): boolean {
  const { axlePath, kinematics, referenceTravel, strokeMax } = rear;
  if (axlePath.kind !== 'circle' || kinematics.kind === 'direct' || kinematics.kind === 'linkage')
    return true;
  const axle = axleHeightOf(rear);
  const arm = Math.hypot(axlePath.pivotX, axlePath.pivotHeight - axle);
  const lowest = axle - referenceTravel - axlePath.pivotHeight;
  const highest = lowest + travelAtStroke(kinematics, rake, strokeMax);
  return Math.max(Math.abs(lowest), Math.abs(highest)) < arm;
}
