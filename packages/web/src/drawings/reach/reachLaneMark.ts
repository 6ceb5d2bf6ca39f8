import { type Box, boxesMeet, clamp } from '../box.ts';
import { centredBaseline, TEXT_MIN, type TextMark, textBox, textWidth } from '../lettering.ts';
import type { PlannedLane, ReachLane, ReachVerdict } from './reachInput.ts';

/** One load's lane on a reach line, ready to paint. */
export interface ReachLaneMark {
  readonly id: string;
  readonly kind: ReachLane['kind'];
  readonly verdict: ReachVerdict | null;
  /** The whole lane: taller where the label had to go below its bar. */
  readonly y: number;
  readonly height: number;
  /** The interval; null in a lane without one. */
  readonly bar: Box | null;
  /** The part of a bar "only at the edge" that the collar does reach. */
  readonly reached: Box | null;
  /** Serif line of the ±, from left to right; hidden where the bar is. */
  readonly doubt: { readonly from: number; readonly to: number; readonly y: number } | null;
  readonly letter: TextMark | null;
  readonly label: TextMark;
}

const LANE = 26;
const LANE_WITH_LABEL_BELOW = 46;
const BAR_HEIGHT = 20;
const LABEL_GAP = 8;

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
  const to = xOf(lane.toMm);
  const bar = { x: from, y: middle - BAR_HEIGHT / 2, width: to - from, height: BAR_HEIGHT };
  const doubt = {
    from: xOf(lane.fromMm - lane.fromPlusMinusMm),
    to: xOf(lane.toMm + lane.toPlusMinusMm),
    y: middle,
  };
  const letterFits = textWidth(lane.letter, TEXT_MIN) + 6 <= bar.width;
  const words = letterFits ? lane.label : `${lane.letter} ${lane.label}`;
  const { label, below } = labelBeside(words, lane.verdict, doubt, width, stopXs);
  return {
    id: lane.id,
    kind: lane.kind,
    verdict: lane.verdict,
    y,
    height: below ? LANE_WITH_LABEL_BELOW : LANE,
    bar,
    reached: reachedPart(lane, bar, stopXs),
    doubt,
    letter: letterFits ? textMark(lane.letter, bar.x + bar.width / 2, middle, 'middle', true) : null,
    label,
  };
}

function unplannedMark(
  lane: Exclude<ReachLane, PlannedLane>,
  y: number,
  width: number,
  stopXs: readonly [number, number],
): ReachLaneMark {
  const words = `${lane.letter}  ${lane.label}`;
  const room = width - textWidth(words, TEXT_MIN) - 4;
  const x = clamp(stopXs[0] + LABEL_GAP, 4, Math.max(4, room));
  return {
    id: lane.id,
    kind: lane.kind,
    verdict: null,
    y,
    height: LANE,
    bar: null,
    reached: null,
    doubt: null,
    letter: null,
    label: textMark(words, x, y + LANE / 2, 'start', false),
  };
}

function reachedPart(lane: PlannedLane, bar: Box, stopXs: readonly [number, number]): Box | null {
  if (lane.verdict !== 'only at the edge') return null;
  const from = clamp(stopXs[0], bar.x, bar.x + bar.width);
  const to = clamp(stopXs[1], bar.x, bar.x + bar.width);
  return { ...bar, x: from, width: Math.max(0, to - from) };
}

/**
 * The label at the right of its bar, or flipped to the left, or below it: the first of these that stays in the
 * drawing, better one that also keeps off the two bars of the collar's ends.
 */
function labelBeside(
  words: string,
  verdict: ReachVerdict,
  doubt: { from: number; to: number; y: number },
  width: number,
  stopXs: readonly [number, number],
): { label: TextMark; below: boolean } {
  const bold = true;
  const sides = [
    textMark(words, doubt.to + LABEL_GAP, doubt.y, 'start', bold),
    textMark(words, doubt.from - LABEL_GAP, doubt.y, 'end', bold),
  ].filter((mark) => fits(mark, width));
  const clear = sides.find((mark) => stopXs.every((x) => !crosses(mark, x)));
  const beside = clear ?? sides[0];
  if (beside !== undefined) return { label: beside, below: false };
  const half = textWidth(words, TEXT_MIN) / 2;
  const middle = verdict === 'in reach' ? (doubt.from + doubt.to) / 2 : doubt.from;
  const x = clamp(middle, half + 2, Math.max(half + 2, width - half - 2));
  return { label: textMark(words, x, doubt.y + LANE_WITH_LABEL_BELOW - LANE, 'middle', bold), below: true };
}

function fits(mark: TextMark, width: number): boolean {
  const box = textBox(mark);
  return box.x >= 2 && box.x + box.width <= width - 2;
}

function crosses(mark: TextMark, x: number): boolean {
  return boxesMeet(textBox(mark), { x: x - 3, y: 0, width: 6, height: 1e4 });
}

function textMark(text: string, x: number, y: number, align: TextMark['align'], bold: boolean): TextMark {
  return { text, x, y: centredBaseline(y, TEXT_MIN), size: TEXT_MIN, align, bold };
}
