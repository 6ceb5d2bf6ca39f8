import { type Box, boxAround, clamp } from '../box.ts';
import { type Frame, type GroundPoint, onDrawing } from './standing.ts';
import { dotArea, freeSlots, type Obstacle, type Side, type Slot, slotsOf, type TagSize } from './tags.ts';

/** A solid part over the ground, in mm, that a tag must not hide. */
export type Solid =
  | { readonly kind: 'box'; readonly corners: readonly GroundPoint[] }
  | { readonly kind: 'round'; readonly centre: GroundPoint; readonly radiusMm: number };

export interface Scene {
  readonly solids: readonly Solid[];
  /** Mass centres, which stay in the drawing too. */
  readonly points: readonly GroundPoint[];
  /** Half way between the axles, along the ground [mm]. */
  readonly middleMm: number;
  /** Where the things with tags have their dots, and from which side their leaders should come. */
  readonly dots: readonly (GroundPoint & { readonly side: Side })[];
  /** At least this much height is kept in view, so that the scale stays as people get on and off [mm]. */
  readonly heightMm: number;
}

export interface Fitted {
  readonly frame: Frame;
  readonly slots: readonly Slot[];
}

const MARGIN = 8;
/** Part of the width that the machine fills at most where there are tags, so that it does not grow much when it is unloaded. */
const FILLED_MOST = 0.86;
const STEPS_MOST = 14;
const STEP = 0.04;
/** Scales go by this much [px per mm], so that the picture does not grow and shrink with every kilogram. */
const SCALE_STEP = 0.001;
/** How far the picture may be moved aside, as parts of the air at that side; not at all comes first. */
const SHIFTS = [0, 0.25, -0.25, 0.5, -0.5, 0.75, -0.75, 1, -1] as const;

/**
 * The largest picture in which the machine is whole, every dot lies between the tags and each side has a free place for
 * the tag of each thing on that side. The middle of the wheels stands in the middle of the drawing and is moved aside only
 * as far as what sticks out, or the tags of one side, need. Where that goes at no size, a place for each tag on any side
 * will do; where even the smallest picture has too few, that one is taken with the places it has.
 * `kept`, where given, is a place that the tags leave free.
 */
export function fit(scene: Scene, width: number, groundY: number, tag: TagSize, kept: Box | null): Fitted {
  const bounds = boundsOf(scene, width, groundY, tag, kept !== null);
  const slots = slotsOf(width, groundY, tag).filter(
    ({ box }) => kept === null || box.x !== kept.x || box.y !== kept.y,
  );
  const needed = neededOf(scene, slots);
  const enough = ({ slots: free }: Fitted) => free.length >= scene.dots.length;
  let fallback: Fitted | null = null;
  for (let step = 0; step < STEPS_MOST; step += 1) {
    const pxPerMm = Math.floor((bounds.largest * (1 - step * STEP)) / SCALE_STEP) * SCALE_STEP;
    const [least, most] = bounds.leftOf(pxPerMm);
    const middle = clamp(width / 2 - scene.middleMm * pxPerMm, least, most);
    const obstacles = scene.solids.map((solid) => obstacle(solid, { pxPerMm, left: 0, groundY }));
    for (const part of SHIFTS) {
      const left = middle + part * (part < 0 ? middle - least : most - middle);
      const frame = { pxPerMm, left, groundY };
      const fitted = { frame, slots: scene.dots.length === 0 ? [] : freeSlots(slots, obstacles, left) };
      if (enough(fitted) && SIDES.every((side) => countOf(fitted.slots, side) >= needed[side])) return fitted;
      if (fallback === null || (!enough(fallback) && fitted.slots.length > fallback.slots.length))
        fallback = fitted;
    }
  }
  return fallback!;
}

const SIDES = ['left', 'top', 'right'] as const;

/** How many places each side must have: one for each of its things, at most as many as it has at all. */
function neededOf({ dots }: Scene, slots: readonly Slot[]): Readonly<Record<Side, number>> {
  const needed = (side: Side) =>
    Math.min(countOf(slots, side), dots.filter((dot) => dot.side === side).length);
  return { left: needed('left'), top: needed('top'), right: needed('right') };
}

function countOf(slots: readonly Slot[], side: Side): number {
  return slots.reduce((count, slot) => count + (slot.side === side ? 1 : 0), 0);
}

interface Bounds {
  /** The largest scale, px per mm. */
  readonly largest: number;
  /** Between which px x = 0 may stand at a scale. */
  readonly leftOf: (pxPerMm: number) => readonly [least: number, most: number];
}

/**
 * Everything solid stays in the drawing and every dot between the tags: two ranges [from, to] in mm, each in a range of
 * px. For a scale s both hold where max(px from − s · from) ≤ left ≤ min(px to − s · to); solved for the largest s.
 */
function boundsOf(scene: Scene, width: number, groundY: number, tag: TagSize, hasTags: boolean): Bounds {
  const span = extent(scene);
  const area = dotArea(width, groundY, tag);
  const held = [{ from: span.back, to: span.front, pxFrom: MARGIN, pxTo: width - MARGIN }];
  const xs = scene.dots.map((dot) => dot.xMm);
  if (xs.length > 0) {
    held.push({
      from: Math.min(...xs),
      to: Math.max(...xs),
      pxFrom: area.x,
      pxTo: area.x + area.width,
    });
  }
  const scales = held.flatMap(({ from, pxFrom }) =>
    held.map(({ to, pxTo }) => (to > from ? (pxTo - pxFrom) / (to - from) : Number.POSITIVE_INFINITY)),
  );
  const filled = width * (hasTags ? FILLED_MOST : 1) - 2 * MARGIN;
  const dotTop = Math.max(0, ...scene.dots.map((dot) => dot.heightMm));
  const largest = Math.min(
    ...scales,
    filled / (span.front - span.back),
    (groundY - MARGIN) / Math.max(span.top, scene.heightMm),
    dotTop === 0 ? Number.POSITIVE_INFINITY : (groundY - area.y) / dotTop,
  );
  return {
    largest,
    leftOf: (pxPerMm) => [
      Math.max(...held.map(({ from, pxFrom }) => pxFrom - from * pxPerMm)),
      Math.min(...held.map(({ to, pxTo }) => pxTo - to * pxPerMm)),
    ],
  };
}

/** How far everything reaches over the ground [mm]. */
function extent({ solids, points }: Scene) {
  let [back, front, top] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0];
  const reach = ({ xMm, heightMm }: GroundPoint, around: number): void => {
    back = Math.min(back, xMm - around);
    front = Math.max(front, xMm + around);
    top = Math.max(top, heightMm + around);
  };
  for (const point of points) reach(point, 0);
  for (const solid of solids) {
    if (solid.kind === 'round') reach(solid.centre, solid.radiusMm);
    else for (const corner of solid.corners) reach(corner, 0);
  }
  return { back, front, top };
}

function obstacle(solid: Solid, frame: Frame): Obstacle {
  return solid.kind === 'round'
    ? { centre: onDrawing(solid.centre, frame), radius: solid.radiusMm * frame.pxPerMm }
    : boxAround(solid.corners.map((corner) => onDrawing(corner, frame)));
}
