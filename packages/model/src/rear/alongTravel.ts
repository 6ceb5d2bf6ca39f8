import type { SwingarmPathSI } from './axlePath.ts';
import { type FinalDriveSI, type Squat, squatOf } from './finalDrive.ts';
import type { HardPoint } from './hardPoints.ts';
import { armAngle } from './swingarm.ts';
import { axleHeightOf, swingarmOf, type WheelMotionSI, wheelAt } from './wheelMotion.ts';

/** A rear at one wheel travel. */
export interface TravelRow {
  readonly travel: number;
  /** Damper stroke [m], motion ratio [-] and its slope [1/m]. */
  readonly stroke: number;
  readonly motionRatio: number;
  readonly ratioSlope: number;
  /** The axle in the body [m]. */
  readonly axleX: number;
  readonly axleHeight: number;
  /** How steeply the arm falls from its pivot to the axle, against the body's level [rad]. */
  readonly armAngle: number;
  /** Between the sprockets' centres [m]; null with a shaft or a drive not known. */
  readonly centreDistance: number | null;
  readonly squat: Squat | null;
}

/** What squat needs besides the rear: height of the whole machine's centre of mass and wheelbase, reference attitude [m]. */
export interface WholeMachine {
  readonly centreHeight: number;
  readonly wheelbase: number;
}

/**
 * A rear along its whole travel, in `count` even steps from the extension stop. The axle must run about a pivot.
 * Squat here is with the body held level, as a drawing shows it: tyre unloaded, ground below it. At rest with a load, with
 * its pitch, it is `squatAtRest`.
 */
export function alongTravel(
  end: WheelMotionSI,
  travelMax: number,
  count: number,
  drive: FinalDriveSI | null,
  whole: WholeMachine | null,
): readonly TravelRow[] {
  if (!(count >= 2)) throw new RangeError(`alongTravel: ${count} rows; at least 2, one at each end`);
  return Array.from({ length: count }, (_, i) => rowAt(end, (travelMax * i) / (count - 1), drive, whole));
}

function rowAt(
  end: WheelMotionSI,
  travel: number,
  drive: FinalDriveSI | null,
  whole: WholeMachine | null,
): TravelRow {
  const { pivotX, pivotHeight } = swingarmOf(end.axlePath);
  const at = { x: 0, height: 0, axleSlope: 0, axleBend: 0, stroke: 0, motionRatio: 0, ratioSlope: 0 };
  wheelAt(end, 0, 0, travel, at);
  const sprocket = frontSprocketOf(drive);
  return {
    travel,
    stroke: at.stroke,
    motionRatio: at.motionRatio,
    ratioSlope: at.ratioSlope,
    axleX: at.x,
    axleHeight: at.height,
    armAngle: armAngle(at, pivotX, pivotHeight),
    centreDistance: sprocket === null ? null : Math.hypot(sprocket.x - at.x, sprocket.height - at.height),
    squat: drive === null || whole === null ? null : levelSquat(end, at, drive, whole),
  };
}

function levelSquat(end: WheelMotionSI, axle: HardPoint, drive: FinalDriveSI, whole: WholeMachine): Squat {
  const { pivotX, pivotHeight } = swingarmOf(end.axlePath);
  const ground = axle.height - end.tyre.radius;
  const above = ({ x, height }: HardPoint): HardPoint => ({ x, height: height - ground });
  const sprocket = frontSprocketOf(drive);
  const places = {
    axle: above(axle),
    pivot: above({ x: pivotX, height: pivotHeight }),
    frontSprocket: sprocket === null ? null : above(sprocket),
  };
  return squatOf(drive, places, whole.centreHeight - ground, whole.wheelbase - axle.x);
}

function frontSprocketOf(drive: FinalDriveSI | null): HardPoint | null {
  return drive === null || drive.kind === 'shaft' ? null : drive.frontSprocket;
}

/** Where a chain or belt is tightest: its sprockets furthest apart [m]. */
export interface Tightest {
  readonly travel: number;
  readonly centreDistance: number;
}

/**
 * Where along the travel front sprocket and axle are furthest apart: there slack is set, or the chain tears.
 * They are furthest where sprocket, pivot and axle lie on one line, the pivot between: if that is on the travel it is
 * there, else at one of its ends. Exact.
 */
export function tightestDrive(end: WheelMotionSI, travelMax: number, frontSprocket: HardPoint): Tightest {
  const path = swingarmOf(end.axlePath);
  const inLine = travelInLine(end, path, frontSprocket);
  const isOn = inLine !== null && inLine > 0 && inLine < travelMax;
  const at = { x: 0, height: 0, axleSlope: 0, axleBend: 0, stroke: 0, motionRatio: 0, ratioSlope: 0 };
  const places = (isOn ? [inLine] : [0, travelMax]).map((travel) => {
    wheelAt(end, 0, 0, travel, at);
    return { travel, centreDistance: Math.hypot(frontSprocket.x - at.x, frontSprocket.height - at.height) };
  });
  return places.reduce((a, b) => (b.centreDistance > a.centreDistance ? b : a));
}

/** Wheel travel at which sprocket, pivot and axle are in line, in this order [m]; null with the sprocket not ahead of the pivot. */
function travelInLine(
  end: WheelMotionSI,
  { pivotX, pivotHeight }: SwingarmPathSI,
  sprocket: HardPoint,
): number | null {
  const arm = Math.hypot(pivotX, pivotHeight - axleHeightOf(end));
  const x = pivotX - sprocket.x;
  const height = pivotHeight - sprocket.height;
  const distance = Math.hypot(x, height);
  if (!(x < 0)) return null;
  return pivotHeight + (arm * height) / distance - axleHeightOf(end) + end.referenceTravel;
}
