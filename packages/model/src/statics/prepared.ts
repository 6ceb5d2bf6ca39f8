import { isHardPoints } from '../rear/kinematics.ts';
import { axleHeightOf, damperAt, referenceTravelOf, swingarmOf, wheelTravelAt } from '../rear/wheelMotion.ts';
import { blankEndAt, type EndAt, type Settling } from './endAt.ts';
import type { EndSI, MachineSI } from './machine.ts';

/** The two ends of a machine. */
export type EndName = 'rear' | 'front';

/**
 * A machine made ready for many solves: what does not change with the load is worked out once, and the scratch
 * that the solver writes into lies beside it. It never leaves the call or the worker that made it.
 */
export interface Prepared {
  machine: MachineSI;
  /** Wheel travel at metal-to-metal [m]. */
  rearTravelMax: number;
  frontTravelMax: number;
  readonly gradient: Gradient;
  /** A step of the solver, [du, dθ, dz_r, dz_f]. */
  readonly move: Float64Array;
}

/** First and second derivatives of the potential energy at one state; see `gradientAt`. */
export interface Gradient {
  readonly rear: WheelGradient;
  readonly front: WheelGradient;
  /** Which way friction acted; the energy of the same state needs it. */
  settling: Settling;
  /** dV/du [N], dV/dθ [N·m]. */
  heave: number;
  pitch: number;
  heaveHeave: number;
  heavePitch: number;
  pitchPitch: number;
}

/** What one wheel adds to the derivatives, and where it stands. */
export interface WheelGradient {
  readonly at: EndAt;
  /** Force of the ground on the tyre [N]. */
  wheelLoad: number;
  /** dV/dz [N], d²V/dz² [N/m], d²V/dz du [N/m], d²V/dz dθ [N]. */
  travel: number;
  travelTravel: number;
  travelHeave: number;
  travelPitch: number;
  /** World place of the axle: height above the ground and forward coordinate [m]. */
  height: number;
  forward: number;
  /** World rise of the axle for each metre of travel with the body held: cos θ − X'·sin θ [-]. */
  rise: number;
}

/**
 * Makes a machine ready. Throws RangeError where its ratio never lets the damper make its whole stroke, and where a
 * swingarm is too short for the travel or its pivot not ahead of the axle. With hard points also where the reference
 * travel is not theirs (`referenceTravelOf`).
 */
export function prepare(machine: MachineSI): Prepared {
  const { rear, front, geometry } = machine;
  requireStop(rear);
  if (isHardPoints(front.kinematics))
    throw new RangeError('prepare: hard points at the front; they are of a rear swingarm');
  const rearTravelMax = travelMaxOf(rear, geometry.rake);
  const frontTravelMax = travelMaxOf(front, geometry.rake);
  requireArm(rear, 0, rearTravelMax);
  requireArm(front, geometry.wheelbase, frontTravelMax);
  return {
    machine,
    rearTravelMax,
    frontTravelMax,
    gradient: {
      rear: blankWheel(),
      front: blankWheel(),
      settling: 0,
      heave: 0,
      pitch: 0,
      heaveHeave: 0,
      heavePitch: 0,
      pitchPitch: 0,
    },
    move: new Float64Array(4),
  };
}

/**
 * Works out again what hangs on the machine's figures, after some were moved: with hard points also the reference travel,
 * which is written into the machine.
 */
export function refresh(prepared: Prepared): void {
  const { machine } = prepared;
  followHardPoints(machine.rear);
  prepared.rearTravelMax = travelMaxOf(machine.rear, machine.geometry.rake);
  prepared.frontTravelMax = travelMaxOf(machine.front, machine.geometry.rake);
}

/** Wheel travel [m] at which the damper of this end is at metal-to-metal. */
function travelMaxOf(end: EndSI, rake: number): number {
  return wheelTravelAt(end, rake, end.strokeMax);
}

function followHardPoints(end: EndSI): void {
  const { kinematics, axlePath } = end;
  if (!isHardPoints(kinematics)) return;
  const moved: { referenceTravel: number } = end;
  moved.referenceTravel = referenceTravelOf({
    points: kinematics,
    arm: swingarmOf(axlePath),
    axleHeight: axleHeightOf(end),
  });
}

/** With hard points the damper must stand at its extension stop at travel 0: nothing else says where travel is counted from. */
function requireStop(end: EndSI): void {
  if (!isHardPoints(end.kinematics)) return;
  damperAt(end, 0, 0, atStop);
  if (Math.abs(atStop.stroke) < STOP_MISSED) return;
  throw new RangeError(
    `prepare: at travel 0 the damper is ${atStop.stroke} m short of its extended length; with hard points the reference travel is what referenceTravelOf gives`,
  );
}

/** What is left of the stop by figures rounded to a tenth of a micrometre, as in a file [m]. */
const STOP_MISSED = 1e-7;
const atStop = { stroke: 0, motionRatio: 0, ratioSlope: 0 };

function requireArm(end: EndSI, axleX: number, travelMax: number): void {
  const { axlePath, referenceTravel } = end;
  if (axlePath.kind !== 'circle') return;
  const axleHeight = axleHeightOf(end);
  const ahead = axlePath.pivotX - axleX;
  const arm = Math.hypot(ahead, axlePath.pivotHeight - axleHeight);
  const lowest = axleHeight - referenceTravel - axlePath.pivotHeight;
  const furthest = Math.max(Math.abs(lowest), Math.abs(lowest + travelMax));
  if (ahead > 0 && furthest < arm) return;
  throw new RangeError(
    `prepare: a pivot ${ahead} m ahead of the axle, an arm of ${arm} m, and ${furthest} m of height to reach; the pivot must lie ahead and the arm be longer`,
  );
}

function blankWheel(): WheelGradient {
  return {
    at: blankEndAt(),
    wheelLoad: 0,
    travel: 0,
    travelTravel: 0,
    travelHeave: 0,
    travelPitch: 0,
    height: 0,
    forward: 0,
    rise: 0,
  };
}
