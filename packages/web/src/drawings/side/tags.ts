import { type Box, boxesMeet, clamp, type Point } from '../box.ts';

/** Where around the picture a tag stands; the corners belong to the columns at the sides. */
export type Side = 'left' | 'top' | 'right';

/** Somewhere a tag may stand: its box, where its leader leaves it and where that leader bends. */
export interface Slot {
  readonly side: Side;
  readonly box: Box;
  readonly port: Point;
  readonly bend: Point;
}

/** A solid part of the drawing that no tag may hide. */
export type Obstacle = Box | { readonly centre: Point; readonly radius: number };

export interface TagSize {
  readonly width: number;
  readonly height: number;
}

const EDGE = 4;
const GAP = 8;
const STUB = 12;
/** How far inside its tag's corner the leader of a corner tag starts, so that it meets the rounded edge. */
const CORNER_INSET = 2;

/**
 * All places for tags in a drawing: a row on top and a column at each side down to the ground. Their bends lie on the
 * edge of the rectangle that holds every dot (`dotArea`); tags and the stubs to their bends lie outside it. So leaders
 * can meet only inside, as straight lines, and never run under a tag.
 */
export function slotsOf(width: number, groundY: number, tag: TagSize): readonly Slot[] {
  return [
    ...row(width, tag),
    ...column('left', width, groundY, tag),
    ...column('right', width, groundY, tag),
  ];
}

/** The area between the tags where dots must lie. */
export function dotArea(width: number, groundY: number, tag: TagSize): Box {
  const x = EDGE + tag.width + STUB;
  const y = EDGE + tag.height + STUB;
  return { x, y, width: width - 2 * x, height: groundY - y };
}

/** The slots that hide nothing of a drawing whose obstacles are all moved `left` px to the right. */
export function freeSlots(
  slots: readonly Slot[],
  obstacles: readonly Obstacle[],
  left: number,
): readonly Slot[] {
  return slots.filter(({ box }) => {
    const moved = { ...box, x: box.x - left };
    return obstacles.every((obstacle) => !hides(moved, obstacle));
  });
}

/**
 * Which slot each dot gets, in the dots' order, so that no two leaders cross. Starts from the nearest free slot and
 * trades places for as long as that makes the leaders shorter together. Two crossing straight leaders always get
 * shorter by trading (triangle inequality), so where no trade helps, none cross.
 * Throws RangeError when there are fewer slots than dots.
 */
export function seatTags(dots: readonly Point[], slots: readonly Slot[]): readonly Slot[] {
  if (slots.length < dots.length) {
    throw new RangeError(
      `seatTags: ${dots.length} tags for ${slots.length} places; there must be a place for each`,
    );
  }
  const length = (dot: number, slot: number) => leaderLength(dots[dot]!, slots[slot]!.bend);
  const seats = nearestFirst(dots, slots, length);
  for (let round = 0; round < ROUNDS_MOST; round += 1) {
    if (!improve(seats, slots.length, length)) break;
  }
  return seats.map((slot) => slots[slot]!);
}

/** Length of a leader with rises counted more than runs: flat leaders read best. Still a norm, so trading still uncrosses. */
export function leaderLength(dot: Point, bend: Point): number {
  return Math.hypot(dot.x - bend.x, RISE_COUNTS * (dot.y - bend.y));
}

const RISE_COUNTS = 1.7;
const ROUNDS_MOST = 200;
/** Trades that gain less than this many px are no gain: keeps rounding from trading for ever. */
const GAIN_LEAST = 1e-9;

function nearestFirst(
  dots: readonly Point[],
  slots: readonly Slot[],
  length: (dot: number, slot: number) => number,
): number[] {
  const free = new Set(slots.keys());
  return dots.map((_, dot) => {
    const nearest = [...free].reduce((best, slot) => (length(dot, slot) < length(dot, best) ? slot : best));
    free.delete(nearest);
    return nearest;
  });
}

/** One round of moves to empty slots and of trades between two tags; tells whether any was worth it. */
function improve(seats: number[], slotCount: number, length: (dot: number, slot: number) => number): boolean {
  let improved = false;
  for (let dot = 0; dot < seats.length; dot += 1) {
    for (let slot = 0; slot < slotCount; slot += 1) {
      const other = seats.indexOf(slot);
      if (other === dot) continue;
      const mine = seats[dot]!;
      const gain =
        length(dot, mine) - length(dot, slot) + (other < 0 ? 0 : length(other, slot) - length(other, mine));
      if (gain <= GAIN_LEAST) continue;
      seats[dot] = slot;
      if (other >= 0) seats[other] = mine;
      improved = true;
    }
  }
  return improved;
}

/** The tags at the two corners are left at 45°, between the row and the column. */
function row(width: number, tag: TagSize): Slot[] {
  const room = Math.floor((width - 2 * EDGE + GAP) / (tag.width + GAP));
  const pitch = room < 2 ? 0 : (width - 2 * EDGE - tag.width) / (room - 1);
  const inner = EDGE + tag.width + STUB;
  const bottom = EDGE + tag.height;
  return Array.from({ length: room }, (_, index) => {
    const box = { x: EDGE + index * pitch, y: EDGE, ...tag };
    const middle = box.x + tag.width / 2;
    const bend = { x: clamp(middle, inner, width - inner), y: bottom + STUB };
    const port =
      bend.x === middle
        ? { x: middle, y: bottom }
        : {
            x: clamp(bend.x, box.x + CORNER_INSET, box.x + tag.width - CORNER_INSET),
            y: bottom - (bend.x < box.x || bend.x > box.x + tag.width ? CORNER_INSET : 0),
          };
    const side = index === 0 ? 'left' : index === room - 1 ? 'right' : 'top';
    return { side, box, port, bend };
  });
}

function column(side: 'left' | 'right', width: number, groundY: number, tag: TagSize): Slot[] {
  const top = EDGE + tag.height + GAP;
  const room = Math.max(0, Math.floor((groundY - EDGE - top + GAP) / (tag.height + GAP)));
  const isLeft = side === 'left';
  const x = isLeft ? EDGE : width - EDGE - tag.width;
  const portX = isLeft ? x + tag.width : x;
  return Array.from({ length: room }, (_, index) => {
    const box = { x, y: top + index * (tag.height + GAP), ...tag };
    const middle = box.y + tag.height / 2;
    return {
      side,
      box,
      port: { x: portX, y: middle },
      bend: { x: portX + (isLeft ? STUB : -STUB), y: middle },
    };
  });
}

function hides(box: Box, obstacle: Obstacle): boolean {
  if ('radius' in obstacle) {
    const { centre, radius } = obstacle;
    const nearestX = Math.min(box.x + box.width, Math.max(box.x, centre.x));
    const nearestY = Math.min(box.y + box.height, Math.max(box.y, centre.y));
    return Math.hypot(centre.x - nearestX, centre.y - nearestY) < radius + EDGE;
  }
  return boxesMeet(box, obstacle, EDGE);
}
