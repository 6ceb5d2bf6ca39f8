import { type Box, boxesMeet, clamp } from '../box.ts';
import { centredBaseline, inTwoLines, TEXT_MIN, type TextMark, textBox, textWidth } from '../lettering.ts';
import type { PlannedLane, ReachLane, ReachVerdict, UnplannedLane } from './reachInput.ts';

/** One load's lane on a reach line, ready to paint. */
export interface ReachLaneMark {
  readonly id: string;
  readonly kind: ReachLane['kind'];
  readonly verdict: ReachVerdict | null;
  /** The whole lane: taller where its label had to go below the bar. */
  readonly y: number;
  readonly height: number;
  /** The interval; null in a lane without one. */
  readonly bar: Box | null;
  /** The part of a bar that the adjuster does reach, where that is not all of it or none. */
  readonly reached: Box | null;
  /** Serif line of the ±, from left to right; hidden where the bar is. */
  readonly doubt: { readonly from: number; readonly to: number; readonly y: number } | null;
  /** The load's letter, in the bar where it fits; `onFilled` where the bar is filled behind it. */
  readonly letter: (TextMark & { readonly onFilled: boolean }) | null;
  readonly labels: readonly TextMark[];
  /** Ground for the words of a lane without an interval, over whatever lies behind them. */
  readonly ground: Box | null;
}

const LANE = 26;
const LINE = 20;
const BAR_HEIGHT = 20;
const LABEL_GAP = 8;
const EDGE = 2;
const GROUND = 5;
/** Room a letter needs about itself in a bar. */
const LETTER_ROOM = 6;

export function reachLaneMark(
  lane: ReachLane,
  y: number,
  width: number,
  stopXs: readonly [number, number],
  xOf: (mm: number) => number,
): ReachLaneMark {
  if (lane.kind !== 'planned') return unplannedMark(lane, y, width, stopXs);
  const middle = y + LANE / 2;
  const from = xOf(lane.fromMm);
  const bar = { x: from, y: middle - BAR_HEIGHT / 2, width: xOf(lane.toMm) - from, height: BAR_HEIGHT };
  const doubt = {
    from: xOf(lane.fromMm - lane.fromPlusMinusMm),
    to: xOf(lane.toMm + lane.toPlusMinusMm),
    y: middle,
  };
  const reached = reachedPart(lane, bar, stopXs);
  const letter = letterIn(lane, bar, reached, middle);
  const words = letter === null ? `${lane.letter}: ${lane.label}` : lane.label;
  const beside = labelBeside(words, doubt, width, stopXs);
  const labels = beside === null ? labelsBelow(words, doubt, width, stopXs) : [beside];
  return {
    id: lane.id,
    kind: lane.kind,
    verdict: lane.verdict,
    y,
    height: beside === null ? LANE + LINE * labels.length : LANE,
    bar,
    reached,
    doubt,
    letter,
    labels,
    ground: null,
  };
}

/** A lane without an interval says why, in words, from the collar's first stop onward. */
function unplannedMark(
  lane: UnplannedLane,
  y: number,
  width: number,
  stopXs: readonly [number, number],
): ReachLaneMark {
  const letterWidth = textWidth(lane.letter, TEXT_MIN) + LABEL_GAP;
  const lines = inTwoLines(
    `${lane.kind}: ${lane.label}`,
    TEXT_MIN,
    width - 2 * (EDGE + GROUND) - letterWidth,
  );
  const widest = Math.max(...lines.map((line) => textWidth(line, TEXT_MIN))) + letterWidth;
  const x = clamp(
    stopXs[0] + LABEL_GAP,
    EDGE + GROUND,
    Math.max(EDGE + GROUND, width - EDGE - GROUND - widest),
  );
  return {
    id: lane.id,
    kind: lane.kind,
    verdict: null,
    y,
    height: LANE + LINE * (lines.length - 1),
    ground: {
      x: x - GROUND,
      y: y + 2,
      width: widest + 2 * GROUND,
      height: LANE - 4 + LINE * (lines.length - 1),
    },
    bar: null,
    reached: null,
    doubt: null,
    letter: { ...textMark(lane.letter, x, y + LANE / 2, 'start', true), onFilled: false },
    labels: lines.map((line, index) =>
      textMark(line, x + letterWidth, y + LANE / 2 + index * LINE, 'start', false),
    ),
  };
}

function reachedPart(lane: PlannedLane, bar: Box, stopXs: readonly [number, number]): Box | null {
  if (lane.verdict === 'past the end' || lane.verdict === 'between steps') return null;
  const from = clamp(stopXs[0], bar.x, bar.x + bar.width);
  const to = clamp(stopXs[1], bar.x, bar.x + bar.width);
  if (lane.verdict === 'in reach' && to - from >= bar.width) return null;
  return { ...bar, x: from, width: Math.max(0, to - from) };
}

/** The letter in the middle of its bar; at the edge, in the wider part of it. Null where it does not fit. */
function letterIn(lane: PlannedLane, bar: Box, reached: Box | null, y: number): ReachLaneMark['letter'] {
  const needed = textWidth(lane.letter, TEXT_MIN) + LETTER_ROOM;
  const place = reached === null ? { ...bar, filled: lane.verdict === 'in reach' } : widerPart(bar, reached);
  if (place.width < needed) return null;
  return { ...textMark(lane.letter, place.x + place.width / 2, y, 'middle', true), onFilled: place.filled };
}

function widerPart(bar: Box, reached: Box): { x: number; width: number; filled: boolean } {
  const before = { x: bar.x, width: reached.x - bar.x, filled: false };
  const end = reached.x + reached.width;
  const after = { x: end, width: bar.x + bar.width - end, filled: false };
  return [{ ...reached, filled: true }, before, after].reduce((a, b) => (b.width > a.width ? b : a));
}

/** The label at the right of its bar, or flipped to the left: the first that keeps in the drawing and off the collar's stops. */
function labelBeside(
  words: string,
  doubt: { from: number; to: number; y: number },
  width: number,
  stopXs: readonly [number, number],
): TextMark | null {
  const sides = [
    textMark(words, doubt.to + LABEL_GAP, doubt.y, 'start', true),
    textMark(words, doubt.from - LABEL_GAP, doubt.y, 'end', true),
  ];
  return sides.find((mark) => isClear(mark, width, stopXs)) ?? null;
}

function isClear(mark: TextMark, width: number, stopXs: readonly [number, number]): boolean {
  const box = textBox(mark);
  const crossesStop = stopXs.some((x) => boxesMeet(box, { ...box, x: x - 3, width: 6 }));
  return box.x >= EDGE && box.x + box.width <= width - EDGE && !crossesStop;
}

/** Where neither side is clear: under the bar, whole between two stops or beside them, as near to its middle as that goes. */
function labelsBelow(
  words: string,
  doubt: { from: number; to: number; y: number },
  width: number,
  stopXs: readonly [number, number],
): readonly TextMark[] {
  const middle = (doubt.from + doubt.to) / 2;
  const rooms = [
    [EDGE, stopXs[0] - LABEL_GAP],
    [stopXs[0] + LABEL_GAP, stopXs[1] - LABEL_GAP],
    [stopXs[1] + LABEL_GAP, width - EDGE],
  ] as const;
  const whole = linesIn(words, [EDGE, width - EDGE], middle);
  const clear = rooms
    .map((room) => linesIn(words, room, middle))
    .filter(({ lines }) => lines.join(' ') === words)
    .sort((a, b) => Math.abs(a.x - middle) - Math.abs(b.x - middle));
  const { lines, x } = clear[0] ?? whole;
  return lines.map((line, index) =>
    textMark(line, x, doubt.y + LANE / 2 + LINE * (index + 0.4), 'middle', true),
  );
}

/** A text in the lines that a room has width for, centred as near to `middle` as it stays inside. */
function linesIn(
  words: string,
  [from, to]: readonly [number, number],
  middle: number,
): { readonly lines: readonly string[]; readonly x: number } {
  const lines = inTwoLines(words, TEXT_MIN, to - from);
  const half = Math.max(...lines.map((line) => textWidth(line, TEXT_MIN))) / 2;
  return { lines, x: clamp(middle, from + half, Math.max(from + half, to - half)) };
}

function textMark(text: string, x: number, y: number, align: TextMark['align'], bold: boolean): TextMark {
  return { text, x, y: centredBaseline(y, TEXT_MIN), size: TEXT_MIN, align, bold };
}
