import { cubicAt, type MonotoneCubic } from '../numerics/monotoneCubic.ts';
import type { HardPointsSI } from './hardPoints.ts';

/**
 * How damper stroke s follows wheel travel z, both from the hard extension stop, positive in compression [m]: told as a
 * ratio, or by the hard points that make it (`wheelAt`).
 * The motion ratio is MR = ds/dz; the trade's leverage ratio is 1/MR.
 */
export type KinematicsSI = RatioSI | HardPointsSI;

/** Stroke told by travel, without the parts that make it so. */
export type RatioSI =
  /** One motion ratio [-] at all travels: s = MR·z. */
  | { readonly kind: 'ratio'; readonly motionRatio: number }
  /** Drawn or computed points: s = scale · (monotone cubic through them); `scale` is 1 but for its uncertainty. */
  | { readonly kind: 'table'; readonly curve: MonotoneCubic; readonly scale: number }
  /** Taped points, fitted: s = slope·z + bend·z²  [-], [1/m]. */
  | { readonly kind: 'quadratic'; readonly slope: number; readonly bend: number }
  /** The same with one term more: s = slope·z + bend·z² + twist·z³  [-], [1/m], [1/m²]. */
  | { readonly kind: 'cubic'; readonly slope: number; readonly bend: number; readonly twist: number }
  /** Telescopic fork: s = z / cos(rake). */
  | { readonly kind: 'fork' };

/** Whether an end is known by its hard points. */
export function isHardPoints(kinematics: KinematicsSI): kinematics is HardPointsSI {
  return kinematics.kind === 'direct' || kinematics.kind === 'linkage';
}

/** Stroke s [m], motion ratio MR = ds/dz [-] and its slope dMR/dz [1/m] at one wheel travel. */
export interface StrokeAt {
  stroke: number;
  motionRatio: number;
  ratioSlope: number;
}

/**
 * Damper stroke and motion ratio at wheel travel z [m]; `rake` [rad] is read by the fork only.
 * Source: virtual work for the fork, F_w dz = F s' dz (checks/sharp-1994-motorcycle-data.test.ts).
 */
export function strokeAt(kinematics: RatioSI, rake: number, z: number, out: StrokeAt): void {
  switch (kinematics.kind) {
    case 'ratio':
      out.stroke = kinematics.motionRatio * z;
      out.motionRatio = kinematics.motionRatio;
      out.ratioSlope = 0;
      return;
    case 'fork': {
      const ratio = 1 / Math.cos(rake);
      out.stroke = ratio * z;
      out.motionRatio = ratio;
      out.ratioSlope = 0;
      return;
    }
    case 'quadratic':
      out.stroke = (kinematics.slope + kinematics.bend * z) * z;
      out.motionRatio = kinematics.slope + 2 * kinematics.bend * z;
      out.ratioSlope = 2 * kinematics.bend;
      return;
    case 'cubic': {
      const { slope, bend, twist } = kinematics;
      out.stroke = (slope + (bend + twist * z) * z) * z;
      out.motionRatio = slope + (2 * bend + 3 * twist * z) * z;
      out.ratioSlope = 2 * bend + 6 * twist * z;
      return;
    }
    case 'table':
      cubicAt(kinematics.curve, z, scratch);
      out.stroke = kinematics.scale * scratch.value;
      out.motionRatio = kinematics.scale * scratch.first;
      out.ratioSlope = kinematics.scale * scratch.second;
  }
}

const scratch = { value: 0, first: 0, second: 0 };

/**
 * Stroke [m] that the damper never gets past, however far the wheel goes; Infinity where there is none.
 *   quadratic  s = a z + b z² with b < 0 turns back at −a²/(4 b)
 *   cubic      turns back where its ratio a + 2 b z + 3 t z² first is 0
 *   table      straight on past its last point for as much travel again as it spans, and no further
 * From there on `travelAtStroke` has no answer; for a table that ends flat (ratio 0) its last point still has one.
 */
export function strokeLimit(kinematics: RatioSI): number {
  switch (kinematics.kind) {
    case 'ratio':
    case 'fork':
      return Number.POSITIVE_INFINITY;
    case 'quadratic': {
      const { slope, bend } = kinematics;
      return bend < 0 ? -(slope * slope) / (4 * bend) : Number.POSITIVE_INFINITY;
    }
    case 'cubic': {
      const turns = turningPoint(kinematics, 1);
      if (turns === null) return Number.POSITIVE_INFINITY;
      strokeAt(kinematics, 0, turns, cubicScratch);
      return cubicScratch.stroke;
    }
    case 'table': {
      const { x, y, slope } = kinematics.curve;
      return kinematics.scale * (y.at(-1)! + slope.at(-1)! * (x.at(-1)! - x[0]!));
    }
  }
}

/**
 * Wheel travel [m] at which the damper has made `stroke` [m]: the inverse of `strokeAt`, for strokes of the working range.
 * Throws RangeError where the wheel cannot get there: see `strokeLimit`.
 */
export function travelAtStroke(kinematics: RatioSI, rake: number, stroke: number): number {
  switch (kinematics.kind) {
    case 'ratio':
      return stroke / kinematics.motionRatio;
    case 'fork':
      return stroke * Math.cos(rake);
    case 'quadratic': {
      const { slope, bend } = kinematics;
      const inside = slope * slope + 4 * bend * stroke;
      if (inside < 0) throw neverReached(stroke);
      return (2 * stroke) / (slope + Math.sqrt(inside));
    }
    case 'cubic': {
      const travel = travelOnCubic(kinematics, stroke);
      if (travel === null) throw neverReached(stroke);
      return travel;
    }
    case 'table':
      return travelOnCurve(kinematics, stroke);
  }
}

type Cubic = Extract<RatioSI, { kind: 'cubic' }>;

const cubicScratch: StrokeAt = { stroke: 0, motionRatio: 0, ratioSlope: 0 };

/** Where the ratio of a cubic is first 0 on one side of z = 0 (sign 1 or −1) [m]; null where it never is. */
function turningPoint({ slope, bend, twist }: Cubic, sign: 1 | -1): number | null {
  const inside = bend * bend - 3 * twist * slope;
  if (inside < 0) return null;
  const spread = Math.sqrt(inside);
  const turns = [slope / (-bend - spread), slope / (-bend + spread)]
    .filter((z) => Number.isFinite(z) && sign * z > 0)
    .map((z) => sign * z);
  return turns.length === 0 ? null : sign * Math.min(...turns);
}

/** Wheel travel [m] at which a cubic has made a stroke [m], of either sign; null where it turns back before. Slope above 0. */
export function travelOnCubic(kinematics: Cubic, stroke: number): number | null {
  if (stroke === 0) return 0;
  const sign = stroke > 0 ? 1 : -1;
  const turns = turningPoint(kinematics, sign);
  let end = turns ?? stroke / kinematics.slope;
  for (let i = 0; i < 60; i += 1) {
    strokeAt(kinematics, 0, end, cubicScratch);
    if (sign * (cubicScratch.stroke - stroke) >= 0) {
      return travelBetween(kinematics, stroke, Math.min(0, end), Math.max(0, end));
    }
    if (turns !== null) return null;
    end *= 2;
  }
  return null;
}

/** Within the points Newton in a closing bracket; beyond them straight on, past the last for as much again as they span. */
function travelOnCurve(kinematics: Extract<RatioSI, { kind: 'table' }>, stroke: number): number {
  const { x, y, slope } = kinematics.curve;
  const last = x.length - 1;
  const value = stroke / kinematics.scale;
  const end = value <= y[0]! ? 0 : last;
  const over = value - y[end]!;
  if (Math.abs(over) < 1e-14) return x[end]!;
  if (end === last && over < 0) return travelBetween(kinematics, stroke, x[0]!, x[last]!);
  const beyond = over / slope[end]!;
  if (!Number.isFinite(beyond) || beyond > x[last]! - x[0]!) throw neverReached(stroke);
  return x[end]! + beyond;
}

/** Newton in a closing bracket, on a stroke that rises with the travel. */
function travelBetween(kinematics: RatioSI, stroke: number, least: number, most: number): number {
  const at: StrokeAt = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
  let [low, high] = [least, most];
  let z = Math.min(most, Math.max(least, stroke));
  for (let iteration = 0; iteration < 100 && high - low > 1e-16; iteration += 1) {
    strokeAt(kinematics, 0, z, at);
    const miss = at.stroke - stroke;
    if (miss > 0) high = z;
    else low = z;
    const next = z - miss / at.motionRatio;
    if (Math.abs(next - z) < 1e-14) return next;
    z = next > low && next < high ? next : 0.5 * (low + high);
  }
  return z;
}

function neverReached(stroke: number): RangeError {
  return new RangeError(`travelAtStroke: no wheel travel gives a damper stroke of ${stroke} m on this ratio`);
}
