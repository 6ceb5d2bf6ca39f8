import { type Box, clamp, type Point } from '../box.ts';
import { inTwoLines, TEXT_FIGURE, TEXT_MIN, type TextMark, textWidth } from '../lettering.ts';
import { clearLeaders } from './clearLeaders.ts';
import type { Carried } from './sideViewInput.ts';
import { type Slot, seatTags, type TagSize } from './tags.ts';

/** A thing's tag: its words, its box and the leader to its dot with one bend. */
export interface TagMark {
  readonly id: string;
  readonly box: Box;
  readonly texts: readonly TextMark[];
  readonly leader: readonly [port: Point, bend: Point, dot: Point];
  readonly selected: boolean;
  readonly overLimit: boolean;
}

const PADDING = 8;
/** A label's lines may be this part of the drawing's width, within these px. */
const TEXT_PART = 0.165;
const TEXT_WIDEST = [95, 140] as const;
const TEXT_LEAST = 76;
const LINE = 1.22;
/** The thick left edge of a tag whose limit is passed. */
const EDGE_OVER = 6;

/** One size for all tags of a drawing: wide enough for every label, high enough for a finger (64 px). */
export function tagSizeOf(carried: readonly Carried[], width: number): TagSize {
  const widest = clamp(width * TEXT_PART, ...TEXT_WIDEST);
  const labels = carried.map((thing) => inTwoLines(thing.label, TEXT_MIN, widest));
  const widths = [
    ...labels.flat().map((line) => textWidth(line, TEXT_MIN)),
    ...carried.map((thing) => textWidth(thing.mass, TEXT_FIGURE)),
  ];
  return {
    width: Math.ceil(Math.max(TEXT_LEAST, ...widths) + 2 * PADDING),
    height: labels.some((lines) => lines.length > 1) ? 76 : 64,
  };
}

/**
 * Seats the tags of these things, in their order, so that no leaders cross and none passes over another's dot, where that
 * goes; `others` are dots without a tag.
 */
export function tagMarks(
  things: readonly { readonly thing: Carried; readonly dot: Point }[],
  others: readonly Point[],
  slots: readonly Slot[],
): readonly TagMark[] {
  const dots = things.map(({ dot }) => dot);
  const seats = seatsOf(dots.map(toPixel), others.map(toPixel), slots);
  return things.map(({ thing, dot }, index) => {
    const { box, port, bend } = seats[index]!;
    return {
      id: thing.id,
      box,
      texts: tagTexts(thing, box),
      leader: [port, bend, dot],
      selected: thing.selected,
      overLimit: thing.overLimit,
    };
  });
}

let lastSeated: { readonly key: string; readonly seats: readonly Slot[] } | null = null;

/**
 * Where each tag is seated, by dots to the pixel. The last answer is remembered, since a figure that is stepped moves dots by less
 * than that, and seating is most of the work of a drawing.
 */
function seatsOf(dots: readonly Point[], others: readonly Point[], slots: readonly Slot[]): readonly Slot[] {
  const key = JSON.stringify([dots, others, slots]);
  if (lastSeated?.key !== key) {
    lastSeated = { key, seats: clearLeaders(dots, others, seatTags(dots, slots), slots) };
  }
  return lastSeated.seats;
}

function toPixel({ x, y }: Point): Point {
  return { x: Math.round(x), y: Math.round(y) };
}

function tagTexts(thing: Carried, box: Box): readonly TextMark[] {
  const label = inTwoLines(thing.label, TEXT_MIN, box.width - 2 * PADDING);
  const lines = [
    ...label.map((text) => ({ text, size: TEXT_MIN, bold: false })),
    { text: thing.mass, size: TEXT_FIGURE, bold: true },
  ];
  const height = lines.reduce((sum, line) => sum + line.size * LINE, 0);
  let y = box.y + (box.height - height) / 2;
  return lines.map((line) => {
    const baseline = y + line.size * 0.95;
    y += line.size * LINE;
    return {
      ...line,
      x: box.x + (box.width + (thing.overLimit ? EDGE_OVER : 0)) / 2,
      y: baseline,
      align: 'middle' as const,
    };
  });
}
