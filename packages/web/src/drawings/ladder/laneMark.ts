import { type Box, boxesMeet, clamp } from '../box.ts';
import { TEXT_FIGURE, TEXT_HEADLINE, TEXT_MIN, type TextMark, textBox, textWidth } from '../lettering.ts';
import type { LadderLane } from './ladderInput.ts';

/** One load's lane on a ladder, ready to paint. */
export interface LaneMark {
  readonly id: string;
  readonly letter: string | null;
  readonly chosen: boolean;
  readonly column: Box;
  readonly x: number;
  /** The friction band; at least 4 px high so that it is seen, centred on the true band. */
  readonly block: Box | null;
  /** y of a light line through the middle of a high block. */
  readonly midLine: number | null;
  /** Serif line of the ±, from its upper to its lower end. */
  readonly doubt: { readonly from: number; readonly to: number } | null;
  readonly rails: { readonly from: number; readonly to: number; readonly box: Box } | null;
  /** y and corners of the open triangle of a reading. */
  readonly measured: { readonly y: number; readonly box: Box } | null;
  readonly ghost: Box | null;
  readonly texts: readonly TextMark[];
  /** A lane without a result is a dashed box with a question mark. */
  readonly unknown: Box | null;
}

/** What a lane needs to know of its ladder. */
export interface LaneFrame {
  readonly top: number;
  readonly bottom: number;
  readonly rubberY: number;
  readonly yOf: (mm: number) => number;
}

const BLOCK_WIDTH = 24;
const BLOCK_LEAST = 4;
const MID_LINE_FROM = 12;
/** Between a number and what stands over or under it. */
const APART = 5;
const TRIANGLE_LEAST = 11;
const TRIANGLE_MOST = 15;

export function laneMark(
  lane: LadderLane,
  chosen: boolean,
  left: number,
  width: number,
  frame: LaneFrame,
): LaneMark {
  const x = left + width / 2;
  const { yOf } = frame;
  const block = lane.rest === null ? null : bandBox(lane.rest, x, yOf);
  const doubt =
    lane.rest === null
      ? null
      : {
          from: Math.max(frame.top, yOf(lane.rest.fromMm - lane.rest.plusMinusMm)),
          to: Math.min(frame.bottom, yOf(lane.rest.toMm + lane.rest.plusMinusMm)),
        };
  const measured =
    lane.measured === null
      ? null
      : triangleAt(x, width, clamp(yOf(lane.measured.atMm), frame.top, frame.bottom));
  const rails = lane.wanted === null ? null : railsOf(lane.wanted, x, width, yOf);
  const taken = [measured?.box, rails?.box].filter((box) => box !== undefined);
  return {
    id: lane.id,
    letter: lane.letter,
    chosen,
    column: { x: left, y: 0, width, height: frame.bottom },
    x,
    block,
    midLine: block !== null && block.height >= MID_LINE_FROM ? block.y + block.height / 2 : null,
    doubt,
    rails,
    measured,
    ghost: lane.ghost === null ? null : bandBox(lane.ghost, x, yOf),
    texts:
      block === null || doubt === null
        ? []
        : restTexts(lane, chosen, x, width, doubt, [block, ...taken], frame),
    unknown: lane.rest === null ? { x: x - 16, y: frame.top + 12, width: 32, height: 32 } : null,
  };
}

function bandBox(band: { fromMm: number; toMm: number }, x: number, yOf: (mm: number) => number): Box {
  const from = yOf(band.fromMm);
  const to = yOf(band.toMm);
  const height = Math.max(BLOCK_LEAST, to - from);
  return { x: x - BLOCK_WIDTH / 2, y: (from + to - height) / 2, width: BLOCK_WIDTH, height };
}

function railsOf(
  wanted: { fromMm: number; toMm: number },
  x: number,
  width: number,
  yOf: (mm: number) => number,
) {
  const from = yOf(wanted.fromMm);
  const to = yOf(wanted.toMm);
  const across = Math.min(width - 6, 52);
  return { from, to, box: { x: x - across / 2, y: from - 1.5, width: across, height: to - from + 3 } };
}

/** The triangle of a reading, left of the block; smaller in a narrow lane, to keep off the lane before it. */
function triangleAt(x: number, laneWidth: number, y: number) {
  const height = TRIANGLE_MOST + 1;
  const width = clamp((laneWidth - BLOCK_WIDTH) / 2 + 2, TRIANGLE_LEAST, TRIANGLE_MOST);
  return { y, box: { x: x - BLOCK_WIDTH / 2 - width - 1, y: y - height / 2, width, height } };
}

/**
 * The number of a lane and, where it is the chosen one, its ±: below the band; above it near the rubber, or where
 * something else stands below. The nearest place that touches nothing is taken.
 */
function restTexts(
  lane: LadderLane,
  chosen: boolean,
  x: number,
  width: number,
  doubt: { from: number; to: number },
  taken: readonly Box[],
  frame: LaneFrame,
): readonly TextMark[] {
  const number = lane.rest!.words;
  const doubtWords = chosen && lane.rest!.plusMinusWords !== '' ? `±${lane.rest!.plusMinusWords}` : null;
  const lines = linesOf(number, doubtWords, x, width);
  const height = Math.max(...lines.map((line) => textBox(line).y + textBox(line).height));
  const doubtBox = { x: x - 8, y: doubt.from, width: 16, height: doubt.to - doubt.from };
  const obstacles = [...taken, doubtBox];
  const tops = obstacles.flatMap((box) => [box.y + box.height + APART, box.y - APART - height]);
  const moved = (top: number) => lines.map((line) => ({ ...line, y: line.y + top }));
  const free = tops.filter(
    (top) =>
      top >= frame.top &&
      top + height <= frame.bottom - 2 &&
      moved(top).every((line) => obstacles.every((box) => !boxesMeet(textBox(line), box, APART - 1))),
  );
  const middle = (doubt.from + doubt.to) / 2;
  const cost = (top: number) =>
    Math.abs(top + height / 2 - middle) +
    (top + height > frame.rubberY ? 1000 : 0) +
    (top + height / 2 < middle ? 6 : 0);
  const best = free.sort((a, b) => cost(a) - cost(b))[0];
  return moved(best ?? clamp(doubt.to + APART, frame.top, frame.bottom - 2 - height));
}

/** The number, with its ± beside it where the lane is wide enough, else below; as if they began at y = 0. */
function linesOf(number: string, doubt: string | null, x: number, width: number): readonly TextMark[] {
  const size = doubt !== null && textWidth(number, TEXT_HEADLINE) < width * 0.6 ? TEXT_HEADLINE : TEXT_FIGURE;
  const numberWidth = textWidth(number, size);
  const line = (
    text: string,
    at: number,
    baseline: number,
    height: number,
    align: TextMark['align'],
    bold: boolean,
  ) => ({
    text,
    x: at,
    y: baseline,
    size: height,
    align,
    bold,
  });
  const baseline = size * 0.78;
  if (doubt === null) return [line(number, x, baseline, size, 'middle', true)];
  const doubtWidth = textWidth(doubt, TEXT_MIN);
  const both = numberWidth + 3 + doubtWidth;
  if (both > width) {
    return [
      line(number, x, baseline, size, 'middle', true),
      line(doubt, x, baseline + TEXT_MIN * 1.1, TEXT_MIN, 'middle', false),
    ];
  }
  return [
    line(number, x - both / 2, baseline, size, 'start', true),
    line(doubt, x + both / 2, baseline, TEXT_MIN, 'end', false),
  ];
}
