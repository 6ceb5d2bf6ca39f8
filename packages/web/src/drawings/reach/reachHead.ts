import { boxesMeet, clamp } from '../box.ts';
import { centredBaseline, TEXT_MIN, type TextMark, textBox, textWidth } from '../lettering.ts';
import type { ReachSpan } from './reachInput.ts';
import { reachScale } from './reachLine.ts';

/** What stands over all reach lines of a page: what is set, and what is read at its ends, or at each of its steps. */
export interface ReachHeadInput {
  readonly domain: ReachSpan;
  readonly collar: ReachSpan;
  /** "collar, mm". */
  readonly title: string;
  /** What is read there; the first and the last are the adjuster's two ends. */
  readonly marks: readonly { readonly atMm: number; readonly words: string }[];
  /** What lies right of it: "past its end". */
  readonly past: string;
}

export interface ReachHeadMarks {
  readonly height: number;
  readonly title: TextMark;
  readonly marks: readonly TextMark[];
  /** Null where it has no room. */
  readonly past: TextMark | null;
  /** x of the adjuster's ends. */
  readonly stops: readonly [number, number];
}

const LINE = 22;
const GAP = 10;
const FOOT = 8;
const EDGE = 2;

/** The head of the reach lines: a title over the column, under it each mark at its place, none upon another. */
export function reachHead(input: ReachHeadInput, width: number): ReachHeadMarks {
  const { pxPerMm, zeroX } = reachScale(input.domain, width);
  const xOf = (mm: number): number => zeroX + mm * pxPerMm;
  const stops = [xOf(input.collar.fromMm), xOf(input.collar.toMm)] as const;
  const title = centred(input.title, (stops[0] + stops[1]) / 2, 0, width, true);
  const all = input.marks.map(({ atMm, words }) => centred(words, xOf(atMm), 1, width, true));
  const ends = [all[0], all.at(-1)].filter((mark) => mark !== undefined);
  const past = textMark(input.past, Math.max(stops[1], right(title)) + GAP, 0, 'start', false);
  return {
    height: 2 * LINE + FOOT,
    title,
    marks: areClear(all) ? all : areClear(ends) ? ends : apart(ends, stops, width),
    past: right(past) <= width - EDGE ? past : null,
    stops,
  };
}

function areClear(marks: readonly TextMark[]): boolean {
  return marks.slice(1).every((mark, i) => !boxesMeet(textBox(mark), textBox(marks[i]!), GAP));
}

/** Both ends beside a column that is too narrow for them: each outside its own stop, pushed in where the drawing ends. */
function apart(
  ends: readonly TextMark[],
  stops: readonly [number, number],
  width: number,
): readonly TextMark[] {
  const [from, to] = ends;
  if (from === undefined || to === undefined) return ends;
  const left = Math.max(stops[0] + GAP, EDGE + textWidth(from.text, TEXT_MIN));
  const start = Math.max(stops[1] - GAP, left + GAP);
  const pushed = Math.min(start, width - EDGE - textWidth(to.text, TEXT_MIN));
  return [
    { ...from, x: Math.min(left, pushed - GAP), align: 'end' },
    { ...to, x: pushed, align: 'start' },
  ];
}

function right(mark: TextMark): number {
  const box = textBox(mark);
  return box.x + box.width;
}

function centred(text: string, x: number, line: number, width: number, bold: boolean): TextMark {
  const half = textWidth(text, TEXT_MIN) / 2 + EDGE;
  return textMark(text, clamp(x, half, Math.max(half, width - half)), line, 'middle', bold);
}

function textMark(text: string, x: number, line: number, align: TextMark['align'], bold: boolean): TextMark {
  const y = centredBaseline(LINE * (line + 0.5), TEXT_MIN);
  return { text, x, y, size: TEXT_MIN, align, bold };
}
