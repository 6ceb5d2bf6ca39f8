import type { Box } from '../box.ts';
import { at, hatch } from '../hatch.ts';
import { type TextMark, textWidth } from '../lettering.ts';
import type { DrawingTable } from '../table.ts';
import { axisOf } from './axis.ts';
import type { LadderInput, LadderLane } from './ladderInput.ts';
import { type LaneMark, laneMark } from './laneMark.ts';
import { lanesInRoom } from './laneTargets.ts';
import { laneWindow } from './laneWindow.ts';
import { levelsOf } from './levels.ts';

/**
 * Room for one ladder in CSS px. Both ends of a machine get the same `pxPerMm`, from `ladderScale`, and the same number of `lanes`
 * at once, from `ladderLanes`.
 */
export interface LadderSize {
  readonly width: number;
  readonly pxPerMm: number;
  readonly lanes: number;
}

/** One end's ladder, ready to paint: CSS px, origin top left. */
export interface LadderMarks {
  readonly width: number;
  readonly height: number;
  /** y of the hard extension stop, and px for each mm below it. */
  readonly top: number;
  readonly pxPerMm: number;
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly hangsY: number;
  readonly ticks: readonly { readonly y: number; readonly length: number }[];
  readonly tickTexts: readonly TextMark[];
  readonly levels: readonly TextMark[];
  /** Quarters of all travel, rubber included, where there was room to name them. */
  readonly quarterYs: readonly number[];
  readonly rubber: { readonly box: Box; readonly hatch: string } | null;
  readonly lanes: readonly LaneMark[];
  /** Loads out of sight on either side: the page offers steps towards them. */
  readonly before: number;
  readonly after: number;
}

/** Room over the stop for the lane heads, and under the metal for half a line of text. */
const HEAD = 48;
const FOOT = 14;
/** Over five loads beside the machine alone they are stepped through. */
const LANES_MOST = 6;

/**
 * px per mm that lets every one of these ladders stand in `height` px, so that a millimetre looks the same at both ends.
 * Throws RangeError when there is no travel to draw.
 */
export function ladderScale(inputs: readonly LadderInput[], height: number): number {
  const travel = Math.max(...inputs.map((input) => input.travelMaxMm));
  if (!(travel > 0 && Number.isFinite(travel))) {
    throw new RangeError(`ladderScale: the longest travel is ${travel} mm; it must be more than 0`);
  }
  return Math.max(1, height - HEAD - FOOT) / travel;
}

/** How many lanes each of these ladders has room for at `width` px, where a lane answers over `target` px. */
export function ladderLanes(inputs: readonly LadderInput[], width: number, target: number): number {
  return Math.min(
    ...inputs.map((input) => {
      const across = lanesEnd(levelsOf(input, (mm) => mm).names, width) - AXIS - LANES_INSET;
      return lanesInRoom(across, width, target, LANES_MOST);
    }),
  );
}

/**
 * The travel ladder of one end: the stop on top, the metal at the bottom, one lane for each load. A machine sinks, so
 * a wheel that has moved further up stands lower here.
 */
export function travelLadder(input: LadderInput, size: LadderSize): LadderMarks {
  const { pxPerMm, width } = size;
  const yOf = (mm: number) => HEAD + mm * pxPerMm;
  const bottom = yOf(input.travelMaxMm);
  const { names, quarterYs } = levelsOf(input, yOf);
  const left = AXIS;
  const right = lanesEnd(names, width);
  const shown = laneWindow(input.lanes, input.chosenId, input.firstLoad, size.lanes);
  const laneWidth = (right - left - LANES_INSET) / Math.max(1, shown.lanes.length);
  const frame = {
    top: HEAD,
    bottom,
    rubberY: input.rubberFromMm === null ? bottom : yOf(input.rubberFromMm),
    yOf,
  };
  return {
    width,
    height: bottom + FOOT,
    top: HEAD,
    pxPerMm,
    left,
    right,
    bottom,
    hangsY: yOf(input.hangsAtMm),
    ...axisOf(input.axis, input.travelMaxMm, pxPerMm, left, yOf),
    levels: names.map((name) => ({ ...name, x: right + GAP })),
    quarterYs,
    rubber: rubberOf(input, left, right, yOf),
    lanes: shown.lanes.map((lane, index) =>
      laneMark(lane, lane.id === input.chosenId, left + LANES_INSET + index * laneWidth, laneWidth, frame),
    ),
    before: shown.before,
    after: shown.after,
  };
}

/** The ladder as a table, one row for each lane. */
export function travelLadderTable(input: LadderInput): DrawingTable {
  return {
    caption: `${input.title}; ${input.travelMaxWords} in all, counted from fully out; ${input.hangsWords}; quarters are of all travel, rubber included`,
    headings: ['Load', 'Rests at', '±', 'Measured', 'Wanted', 'Note'],
    rows: input.lanes.map((lane) => [
      lane.name,
      lane.rest?.words ?? 'not worked out',
      lane.rest?.plusMinusWords || 'not known',
      lane.measured?.words ?? '–',
      lane.wanted?.words ?? '–',
      lane.note ?? '–',
    ]),
  };
}

/** A lane as it is read out: "Load C, rear: rests at 59 of 86 millimetres, plus or minus 2; wanted 29 to 33; on the rubber." */
export function travelLadderSentence(input: LadderInput, lane: LadderLane): string {
  const said = [restSaid(input, lane)];
  if (lane.measured !== null) said.push(`read ${lane.measured.words}`);
  if (lane.wanted !== null) said.push(`wanted ${lane.wanted.words}`);
  if (lane.note !== null) said.push(lane.note);
  return `${lane.name}, ${input.end}: ${said.join('; ')}.`;
}

function restSaid(input: LadderInput, lane: LadderLane): string {
  if (lane.rest === null) return 'not worked out';
  const { words, plusMinusWords } = lane.rest;
  const doubt = plusMinusWords === '' ? '' : `, plus or minus ${plusMinusWords}`;
  return `rests at ${words} of ${input.travelMaxWords} ${input.axis.spoken}${doubt}`;
}

/** Numbers, ticks and the axis line stand left of this; lanes begin a little right of it, levels end the drawing. */
const AXIS = 54;
const LANES_INSET = 6;
const GAP = 6;

function lanesEnd(names: readonly TextMark[], width: number): number {
  return width - GAP - Math.max(...names.map((name) => textWidth(name.text, name.size)));
}

function rubberOf(input: LadderInput, left: number, right: number, yOf: (mm: number) => number) {
  if (input.rubberFromMm === null) return null;
  const y = yOf(input.rubberFromMm);
  const box = { x: left, y, width: right - left, height: yOf(input.travelMaxMm) - y };
  return { box, hatch: hatch(box, 12) };
}

/** The sign of a machine with nothing on it, centred on a point: two wheels and a line between. */
export function aloneSign(x: number, y: number): string {
  const wheel = (centre: number) => `M${at(centre - 5)} ${at(y + 3)}a5 5 0 1 0 10 0a5 5 0 1 0 -10 0`;
  return `${wheel(x - 11)}${wheel(x + 11)}M${at(x - 11)} ${at(y + 3)}L${at(x - 4)} ${at(y - 4)}H${at(x + 5)}L${at(x + 11)} ${at(y + 3)}M${at(x + 5)} ${at(y - 4)}L${at(x + 3)} ${at(y - 8)}`;
}
