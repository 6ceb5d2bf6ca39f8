import { root } from '../numerics/root.ts';
import { axleAt, type SwingarmPathSI } from './axlePath.ts';
import { type DeadCentre, type RiseRange, riseRange } from './deadCentres.ts';
import type { HardPointsSI } from './hardPoints.ts';
import type { StrokeAt } from './kinematics.ts';
import { strokeOnArm } from './strokeOnArm.ts';

/** A rear with hard points, as far as its damper's stroke hangs on them. */
export interface HardPointRear {
  readonly points: HardPointsSI;
  readonly arm: SwingarmPathSI;
  /** Height of the axle in the reference attitude: the radius of the unloaded tyre [m]. */
  readonly axleHeight: number;
}

/** Stroke and motion ratio with the axle risen by so much above the reference attitude; false where nothing can stand so. */
export type StrokeAtRise = (rise: number, out: StrokeAt) => boolean;

/** Where the axle has come to: rise [m] and damper stroke [m]; or what stopped it before. */
export type Reached =
  | { readonly kind: 'reached'; readonly rise: number }
  | { readonly kind: 'stopped'; readonly by: DeadCentre; readonly rise: number; readonly stroke: number };

/** Steps between the lowest and the highest place of the axle: a few millimetres each, over which a ratio changes little. */
const STEPS = 512;

/** A damper that moves by less than this for each metre of wheel travel is at its dead centre: no spring holds a wheel so. */
export const LEAST_RATIO = 0.01;

const STEPS_MAX = 40;
/** A step is the last where the next, about its cube times the square of the bend of the stroke, would be no longer [m]. */
const LAST_STEP = 1e-17;

/** How a rear with hard points answers `StrokeAtRise`. */
export function strokesOf(rear: HardPointRear): StrokeAtRise {
  return (rise, out) => strokeAtRise(rear, rise, out);
}

function strokeAtRise({ points, arm, axleHeight }: HardPointRear, rise: number, out: StrokeAt): boolean {
  const start = axleHeight - arm.pivotHeight;
  const above = start + rise;
  if (!(above * above < arm.pivotX * arm.pivotX + start * start)) return false;
  axleAt(arm, 0, axleHeight, rise, 0, axle);
  return strokeOnArm(points, arm, axleHeight, axle, out);
}

const axle = { x: 0, height: 0, axleSlope: 0, axleBend: 0 };

/**
 * Rise of the axle [m] at which the damper has made `stroke` [m]; null where the geometry does not let it.
 * Halley's steps from `start`; where they leave the range or meet a dead centre, on foot from the reference attitude.
 * Source: Halley's method, x − f/(f' − f f''/2f'), of third order (any numerical analysis text).
 */
export function riseAtStroke(rear: HardPointRear, stroke: number, start: number): number | null {
  const near = inLargeSteps(rear, stroke, start);
  if (near !== null) return near;
  const range = riseRange(rear.points, rear.arm, rear.axleHeight);
  if (typeof range === 'string') return null;
  const found = stepTo(strokesOf(rear), range, stroke, 0);
  return found.kind === 'reached' ? found.rise : null;
}

function inLargeSteps(rear: HardPointRear, stroke: number, start: number): number | null {
  let rise = start;
  let before = start;
  for (let i = 0; i < STEPS_MAX; i += 1) {
    if (!strokeAtRise(rear, rise, reached)) {
      if (rise === before) return null;
      rise = 0.5 * (rise + before);
      continue;
    }
    const { motionRatio, ratioSlope } = reached;
    if (!(motionRatio > LEAST_RATIO)) return null;
    const miss = reached.stroke - stroke;
    const slope = motionRatio - (0.5 * miss * ratioSlope) / motionRatio;
    const step = miss / (slope > 0.5 * motionRatio ? slope : motionRatio);
    before = rise;
    rise -= step;
    const bend = Math.max(1, Math.abs(ratioSlope / motionRatio));
    if (Math.abs(step * step * step) * bend * bend < LAST_STEP) return rise;
  }
  return null;
}

const reached: StrokeAt = { stroke: 0, motionRatio: 0, ratioSlope: 0 };

/**
 * Goes from a rise, where the damper follows the wheel, to the rise at which it has made `stroke`, or to what comes first:
 * the end of the range, or the damper's dead centre.
 */
export function stepTo(strokes: StrokeAtRise, range: RiseRange, stroke: number, from: number): Reached {
  const at: StrokeAt = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
  strokes(from, at);
  const up = at.stroke < stroke;
  const end = up ? range.highest : range.lowest;
  const step = (range.highest - range.lowest) / STEPS;
  const isThere = (): boolean => (up ? at.stroke >= stroke : at.stroke <= stroke);
  let before = from;
  for (let i = 1; i <= STEPS && before !== end; i += 1) {
    const next = up ? Math.min(end, from + i * step) : Math.max(end, from - i * step);
    strokes(next, at);
    const follows = at.motionRatio > LEAST_RATIO;
    const last = follows ? next : deadCentreBetween(strokes, before, next);
    if (!follows) strokes(last, at);
    if (isThere()) return { kind: 'reached', rise: crossing(strokes, stroke, before, last) };
    if (!follows) return { kind: 'stopped', by: 'damper over centre', rise: last, stroke: at.stroke };
    before = next;
  }
  const by = up ? range.highestBy : range.lowestBy;
  return { kind: 'stopped', by, rise: before, stroke: at.stroke };
}

function deadCentreBetween(strokes: StrokeAtRise, one: number, other: number): number {
  const at: StrokeAt = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
  const ratio = (rise: number): number => {
    strokes(rise, at);
    return at.motionRatio - LEAST_RATIO;
  };
  return root(ratio, Math.min(one, other), Math.max(one, other), 1e-12);
}

function crossing(strokes: StrokeAtRise, stroke: number, one: number, other: number): number {
  const at: StrokeAt = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
  const miss = (rise: number): number => {
    strokes(rise, at);
    return at.stroke - stroke;
  };
  return root(miss, Math.min(one, other), Math.max(one, other), 1e-15);
}
