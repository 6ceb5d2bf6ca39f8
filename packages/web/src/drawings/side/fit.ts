import { type Box, holds, type Point } from '../box.ts';
import { type Frame, type GroundPoint, onDrawing } from './standing.ts';
import {
  dotArea,
  freeSlots,
  leaderLength,
  type Obstacle,
  type Slot,
  seatTags,
  slotsOf,
  type TagSize,
} from './tags.ts';

/** A solid part over the ground, in mm, that a tag must not hide. */
export type Solid =
  | { readonly kind: 'box'; readonly corners: readonly GroundPoint[] }
  | { readonly kind: 'round'; readonly centre: GroundPoint; readonly radiusMm: number };

export interface Scene {
  readonly solids: readonly Solid[];
  readonly dots: readonly GroundPoint[];
  /** At least this much height is kept in view, so that the scale stays as people get on and off. */
  readonly heightMm: number;
}

export interface Fitted {
  readonly frame: Frame;
  readonly slots: readonly Slot[];
}

const MARGIN = 8;
/** Part of the width that the machine fills at most where there are tags, so that it does not grow much when it is unloaded. */
const FILLED_MOST = 0.86;
const STEPS = 28;
const STEP = 0.02;
/** How far the picture is moved aside, as parts of the air at its sides; the middle first, since it wins a draw. */
const SHIFTS = [0, 0.25, -0.25, 0.5, -0.5, 0.75, -0.75, 1, -1] as const;
/** A leader that passes nearer than this to another dot looks as if it were that one's, px; what that is worth in length. */
const DOT_CLEAR = 10;
const TOUCH_COSTS = 150;

/**
 * The largest picture in which the machine is whole, every dot lies between the tags and there is a free place for
 * each of `tags` tags; shifted sideways to where its leaders are shortest and keep off other dots. Where even the
 * smallest has too few places, that one is taken with the places it has.
 * `kept`, where given, is a place that the tags leave free.
 */
export function fit(scene: Scene, width: number, groundY: number, tag: TagSize, kept: Box | null): Fitted {
  const span = extent(scene);
  const filled = width * (kept === null ? 1 : FILLED_MOST) - 2 * MARGIN;
  const largest = Math.min(
    filled / (span.front - span.back),
    (groundY - MARGIN) / Math.max(span.top, scene.heightMm),
  );
  const slots = slotsOf(width, groundY, tag).filter(
    ({ box }) => kept === null || box.x !== kept.x || box.y !== kept.y,
  );
  const middle = (scale: number) => (width - (span.front + span.back) * scale) / 2;
  if (scene.dots.length === 0) {
    return { frame: { pxPerMm: largest, left: middle(largest), groundY }, slots: [] };
  }
  const area = dotArea(width, groundY, tag);
  for (let step = 0; step < STEPS; step += 1) {
    const pxPerMm = largest * (1 - step * STEP);
    const best = SHIFTS.map((part) => {
      const air = width / 2 - MARGIN - ((span.front - span.back) * pxPerMm) / 2;
      const frame = { pxPerMm, left: middle(pxPerMm) + part * air, groundY };
      return seen(scene, frame, slots, area);
    }).reduce((a, b) => (b.cost < a.cost ? b : a));
    if (best.cost < Number.POSITIVE_INFINITY) return best;
  }
  const frame = { pxPerMm: largest * (1 - STEPS * STEP), left: 0, groundY };
  const smallest = { ...frame, left: middle(frame.pxPerMm) };
  return { frame: smallest, slots: freeOf(scene, smallest, slots) };
}

/** A picture with its free places, and how long and crowded its leaders are: infinite where it does not do. */
function seen(
  scene: Scene,
  frame: Frame,
  slots: readonly Slot[],
  area: Box,
): Fitted & { readonly cost: number } {
  const free = freeOf(scene, frame, slots);
  const dots = scene.dots.map((dot) => onDrawing(dot, frame));
  const does = free.length >= dots.length && dots.every((dot) => holds(area, dot));
  if (!does) return { frame, slots: free, cost: Number.POSITIVE_INFINITY };
  const bends = seatTags(dots, free).map((slot) => slot.bend);
  const lengths = bends.map((bend, index) => leaderLength(dots[index]!, bend));
  const touches = bends.flatMap((bend, index) =>
    dots.filter((dot) => isNearLine(dot, bend, dots[index]!, DOT_CLEAR)),
  );
  return {
    frame,
    slots: free,
    cost: lengths.reduce((sum, length) => sum + length, 0) + TOUCH_COSTS * touches.length,
  };
}

function freeOf(scene: Scene, frame: Frame, slots: readonly Slot[]): readonly Slot[] {
  return freeSlots(
    slots,
    scene.solids.map((solid) => obstacle(solid, frame)),
  );
}

/** Whether a dot lies within `reach` px of a leader that ends at another dot. */
function isNearLine(dot: Point, bend: Point, end: Point, reach: number): boolean {
  const [alongX, alongY] = [end.x - bend.x, end.y - bend.y];
  const length = Math.hypot(alongX, alongY);
  if (length === 0 || Math.hypot(dot.x - end.x, dot.y - end.y) < 1) return false;
  const along = ((dot.x - bend.x) * alongX + (dot.y - bend.y) * alongY) / length;
  const aside = Math.abs((dot.x - bend.x) * alongY - (dot.y - bend.y) * alongX) / length;
  return along > 0 && along < length && aside < reach;
}

function extent(scene: Scene) {
  const xs: number[] = [];
  const heights: number[] = [];
  for (const solid of scene.solids) {
    if (solid.kind === 'box') {
      for (const corner of solid.corners) {
        xs.push(corner.xMm);
        heights.push(corner.heightMm);
      }
    } else {
      xs.push(solid.centre.xMm - solid.radiusMm, solid.centre.xMm + solid.radiusMm);
      heights.push(solid.centre.heightMm + solid.radiusMm);
    }
  }
  return { back: Math.min(...xs), front: Math.max(...xs), top: Math.max(...heights) };
}

function obstacle(solid: Solid, frame: Frame): Obstacle {
  if (solid.kind === 'round') {
    return { centre: onDrawing(solid.centre, frame), radius: solid.radiusMm * frame.pxPerMm };
  }
  const corners = solid.corners.map((corner) => onDrawing(corner, frame));
  const x = Math.min(...corners.map((corner) => corner.x));
  const y = Math.min(...corners.map((corner) => corner.y));
  return {
    x,
    y,
    width: Math.max(...corners.map((corner) => corner.x)) - x,
    height: Math.max(...corners.map((corner) => corner.y)) - y,
  };
}
