import { type Box, clamp, type Point } from '../box.ts';
import { inTwoLines, TEXT_FIGURE, TEXT_MIN, type TextMark, textWidth } from '../lettering.ts';
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
const TEXT_WIDEST = 95;
const LINE = 1.22;
/** The thick left edge of a tag whose limit is passed. */
const EDGE_OVER = 6;

/** One size for all tags of a drawing: wide enough for every label, high enough for a finger (64 px). */
export function tagSizeOf(carried: readonly Carried[]): TagSize {
  const lines = carried.map((thing) => inTwoLines(thing.label, TEXT_MIN, TEXT_WIDEST));
  const widths = [
    ...lines.flat().map((line) => textWidth(line, TEXT_MIN)),
    ...carried.map((thing) => textWidth(thing.mass, TEXT_FIGURE)),
  ];
  const most = Math.max(1, ...lines.map((label) => label.length));
  return {
    width: Math.ceil(clamp(Math.max(0, ...widths), 76, TEXT_WIDEST) + 2 * PADDING),
    height: most > 1 ? 76 : 64,
  };
}

/** Seats the tags of these things, in their order, so that no leaders cross. */
export function tagMarks(
  things: readonly { readonly thing: Carried; readonly dot: Point }[],
  slots: readonly Slot[],
): readonly TagMark[] {
  const seats = seatTags(
    things.map(({ dot }) => dot),
    slots,
  );
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
