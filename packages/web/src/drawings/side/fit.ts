import type { Box, Point } from '../box.ts';
import { type Frame, type GroundPoint, onDrawing } from './standing.ts';
import { dotArea, freeSlots, type Obstacle, type Slot, slotsOf, type TagSize } from './tags.ts';

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
const STEPS = 28;
const STEP = 0.02;

/**
 * The largest picture in which the machine is whole, every dot lies between the tags and there is a free place for
 * each of `tags` tags. Where even the smallest has too few places, that one is taken with the places it has.
 * `kept`, where given, is a box that the tags leave free.
 */
export function fit(
  scene: Scene,
  width: number,
  groundY: number,
  tags: number,
  tag: TagSize,
  kept: Box | null,
): Fitted {
  const span = extent(scene);
  const largest = Math.min(
    (width - 2 * MARGIN) / (span.front - span.back),
    (groundY - MARGIN) / Math.max(span.top, scene.heightMm),
  );
  const slots = slotsOf(width, groundY, tag).filter(
    ({ box }) => kept === null || box.x !== kept.x || box.y !== kept.y,
  );
  let last: Fitted | null = null;
  for (let step = 0; step < STEPS; step += 1) {
    const pxPerMm = largest * (1 - step * STEP);
    const frame = { pxPerMm, left: leftOf(scene, span, pxPerMm, width, groundY, tags, tag), groundY };
    const solids = scene.solids.map((solid) => obstacle(solid, frame));
    const free = freeSlots(slots, solids);
    last = { frame, slots: free };
    if (tags === 0) return { frame, slots: [] };
    const dots = scene.dots.map((dot) => onDrawing(dot, frame));
    if (free.length >= tags && dots.every((dot) => within(dot, dotArea(width, groundY, tag)))) return last;
  }
  return last!;
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

/** px of x = 0: the machine in the middle, moved aside just far enough that the dots clear the tags' columns. */
function leftOf(
  scene: Scene,
  span: { back: number; front: number },
  pxPerMm: number,
  width: number,
  groundY: number,
  tags: number,
  tag: TagSize,
): number {
  const middle = (width - (span.front + span.back) * pxPerMm) / 2;
  const least = MARGIN - span.back * pxPerMm;
  const most = width - MARGIN - span.front * pxPerMm;
  if (tags === 0 || scene.dots.length === 0) return middle;
  const area = dotArea(width, groundY, tag);
  const xs = scene.dots.map((dot) => dot.xMm * pxPerMm);
  const wantedLeast = area.x + MARGIN - Math.min(...xs);
  const wantedMost = area.x + area.width - MARGIN - Math.max(...xs);
  const left = Math.min(Math.max(middle, wantedLeast), Math.max(wantedMost, wantedLeast));
  return Math.min(Math.max(left, least), most);
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

function within(dot: Point, area: Box): boolean {
  return dot.x >= area.x && dot.x <= area.x + area.width && dot.y >= area.y && dot.y <= area.y + area.height;
}
