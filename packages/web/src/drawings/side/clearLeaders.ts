import { clamp, type Point } from '../box.ts';
import type { Slot } from './tags.ts';

/** A leader stays this far from another thing's dot, px: past a selected dot and its own edge. */
const CLEAR_OF_DOT = 10;
/** Of two dots that are nearer than that to each other, each leader passes the other by this part of what is between them. */
const PART_BETWEEN = 0.7;
/** How far from its middle a leader may leave its tag, as parts of what lies between its middle and its corner. */
const ALONG_EDGE = [0, -0.4, 0.4, -0.8, 0.8] as const;
/** Each round clears at least one dot; in more rounds than this there is nothing left to gain. */
const ROUNDS_MOST = 40;

/**
 * The same tags with leaders that pass over no other thing's dot, where one step after another leads there: another point
 * of the tag's edge for the leader to leave from, an empty slot, or a trade with another tag. No step lets leaders cross.
 * `seats` is where each dot has its tag (`seatTags`); `others` are dots without a tag.
 */
export function clearLeaders(
  dots: readonly Point[],
  others: readonly Point[],
  seats: readonly Slot[],
  slots: readonly Slot[],
): readonly Slot[] {
  const all = [...dots, ...others];
  let best = { seats, passed: passedOver(dots, all, seats), length: lengthOf(dots, seats) };
  for (let round = 0; round < ROUNDS_MOST && best.passed > 0; round += 1) {
    let better = best;
    for (const next of steps(best.seats, slots)) {
      const passed = passedOver(dots, all, next);
      if (passed > better.passed || passed === best.passed) continue;
      const length = lengthOf(dots, next);
      if (passed === better.passed && length >= better.length) continue;
      if (!anyCross(dots, next)) better = { seats: next, passed, length };
    }
    if (better === best) break;
    best = better;
  }
  return best.seats;
}

/** Whether the straight part of a leader passes over a dot that is not its own. */
export function passesOver(own: Point, bend: Point, other: Point): boolean {
  const between = Math.hypot(other.x - own.x, other.y - own.y);
  return distance(own, bend, other) < Math.min(CLEAR_OF_DOT, PART_BETWEEN * between);
}

function passedOver(dots: readonly Point[], all: readonly Point[], seats: readonly Slot[]): number {
  return dots.reduce(
    (count, own, index) =>
      count + all.filter((other, at) => at !== index && passesOver(own, seats[index]!.bend, other)).length,
    0,
  );
}

/** Every seating that is one step away. */
function* steps(seats: readonly Slot[], slots: readonly Slot[]): Generator<readonly Slot[]> {
  for (const [index, seat] of seats.entries()) {
    for (const slot of slots) {
      const other = seats.findIndex(({ box }) => box === slot.box);
      for (const mine of alongEdge(slot)) {
        if (other < 0 || other === index) {
          yield seats.with(index, mine);
        } else if (other > index) {
          const home = slots.find(({ box }) => box === seat.box)!;
          for (const theirs of alongEdge(home)) yield seats.with(index, mine).with(other, theirs);
        }
      }
    }
  }
}

/** A slot with its leader from other points of the edge that it leaves; a corner's stays. */
function alongEdge(slot: Slot): readonly Slot[] {
  const { box, port, bend } = slot;
  const moved = (part: number): Slot => {
    if (port.y === bend.y) {
      const y = port.y + (part * box.height) / 2;
      return { ...slot, port: { x: port.x, y }, bend: { x: bend.x, y } };
    }
    const x = port.x + (part * box.width) / 2;
    return { ...slot, port: { x, y: port.y }, bend: { x, y: bend.y } };
  };
  return port.y === bend.y || port.x === bend.x ? ALONG_EDGE.map(moved) : [slot];
}

function anyCross(dots: readonly Point[], seats: readonly Slot[]): boolean {
  return dots.some((a, one) =>
    dots.some((b, other) => other > one && cross(a, seats[one]!.bend, b, seats[other]!.bend)),
  );
}

/** Whether two lines cross between their ends; touching at an end is no crossing. */
function cross(a: Point, b: Point, c: Point, d: Point): boolean {
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

/** Twice the area of a triangle; its sign tells on which side of ab the point c lies. */
function side(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

function lengthOf(dots: readonly Point[], seats: readonly Slot[]): number {
  return dots.reduce((sum, { x, y }, index) => {
    const { bend } = seats[index]!;
    return sum + Math.hypot(x - bend.x, y - bend.y);
  }, 0);
}

/** Of a point from a line between two points. */
function distance(from: Point, to: Point, point: Point): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const squared = dx * dx + dy * dy;
  const along =
    squared === 0 ? 0 : clamp(((point.x - from.x) * dx + (point.y - from.y) * dy) / squared, 0, 1);
  return Math.hypot(from.x + along * dx - point.x, from.y + along * dy - point.y);
}
