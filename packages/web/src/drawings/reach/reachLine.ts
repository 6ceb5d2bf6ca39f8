import type { Box } from '../box.ts';
import type { DrawingTable } from '../table.ts';
import type { ReachInput, ReachLane, ReachSpan } from './reachInput.ts';
import { type ReachLaneMark, reachLaneMark } from './reachLaneMark.ts';

/** One spring's reach line, ready to paint: CSS px, origin top left. */
export interface ReachMarks {
  readonly width: number;
  readonly height: number;
  readonly pxPerMm: number;
  /** x of 0 mm. */
  readonly zeroX: number;
  /** What the adjuster reaches, and the bars that stand centred on its two ends. */
  readonly column: Box;
  readonly stops: readonly Box[];
  readonly ticks: readonly { readonly x: number; readonly y: number; readonly length: number }[];
  /** x of each step where alone the adjuster can stand, without its two ends. */
  readonly steps: readonly number[];
  readonly lanes: readonly ReachLaneMark[];
}

const TOP = 8;
const FOOT = 10;
const STOP_WIDTH = 3;
const TICK_MM = 5;

/** Keeps the bars and the numbers of the first and last tick inside the drawing. */
const SIDE = 12;

/** Where each millimetre of a common domain stands in a drawing `width` px wide. Throws RangeError for an empty domain. */
export function reachScale(
  domain: ReachSpan,
  width: number,
): { readonly pxPerMm: number; readonly zeroX: number } {
  const stretch = domain.toMm - domain.fromMm;
  if (!(stretch > 0 && Number.isFinite(stretch))) {
    throw new RangeError(
      `reachScale: the domain runs from ${domain.fromMm} to ${domain.toMm} mm; it must have a length`,
    );
  }
  const pxPerMm = Math.max(1, width - 2 * SIDE) / stretch;
  return { pxPerMm, zeroX: SIDE - domain.fromMm * pxPerMm };
}

/** The reach line of one spring: a lane for each load over the column that the adjuster reaches. */
export function reachLine(input: ReachInput, size: { readonly width: number }): ReachMarks {
  const { width } = size;
  const { pxPerMm, zeroX } = reachScale(input.domain, width);
  const xOf = (mm: number) => zeroX + mm * pxPerMm;
  const stopXs = [xOf(input.collar.fromMm), xOf(input.collar.toMm)] as const;
  const lanes: ReachLaneMark[] = [];
  let y = TOP;
  for (const lane of input.lanes) {
    const mark = reachLaneMark(lane, y, width, stopXs, xOf);
    lanes.push(mark);
    y += mark.height;
  }
  const height = y + FOOT;
  return {
    width,
    height,
    pxPerMm,
    zeroX,
    column: { x: stopXs[0], y: 0, width: stopXs[1] - stopXs[0], height: height - 4 },
    stops: stopXs.map((x) => ({ x: x - STOP_WIDTH / 2, y: 0, width: STOP_WIDTH, height: height - 4 })),
    ticks: ticksOf(input.domain).map((mm) => ({ x: xOf(mm), y: height - 4, length: 6 })),
    steps: input.stepsMm.slice(1, -1).map(xOf),
    lanes,
  };
}

/** The row as a table, one line for each load. */
export function reachLineTable(input: ReachInput): DrawingTable {
  return {
    caption: `${input.spring}. ${capital(input.reaches)}`,
    headings: ['Load', capital(input.counts), '± of each end', 'Verdict', 'Note'],
    rows: input.lanes.map((lane) =>
      lane.kind === 'planned'
        ? [lane.name, lane.words, lane.plusMinusWords, lane.verdict, lane.label]
        : [lane.name, '–', '–', lane.kind, lane.label],
    ),
  };
}

/** A lane as it is read out: "Load B: 25 to 28.5 mm of preload, plus or minus 2.2 mm; past the end: past by 1.2 mm." */
export function reachLineSentence(lane: ReachLane, counts: string): string {
  if (lane.kind !== 'planned') return `${lane.name}: ${lane.kind}: ${lane.label}.`;
  return `${lane.name}: ${lane.words} of ${counts}, plus or minus ${lane.plusMinusWords}; ${
    lane.label === lane.verdict ? lane.verdict : `${lane.verdict}: ${lane.label}`
  }.`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function ticksOf(domain: ReachSpan): readonly number[] {
  const ticks: number[] = [];
  for (let mm = TICK_MM * Math.ceil(domain.fromMm / TICK_MM); mm <= domain.toMm; mm += TICK_MM)
    ticks.push(mm);
  return ticks;
}
