import { TEXT_MIN, type TextMark, textWidth } from '../lettering.ts';
import { ticksWithin } from '../ticks.ts';

/** Motion ratio over wheel travel, in the units shown, with where loads rest on it. */
export interface RatioInput {
  readonly lengthUnit: string;
  readonly ratioUnit: string;
  readonly leverageUnit: string;
  /** From fully out to full bump, rising. `doubt` is the ± of the ratio, 0 where it has none. */
  readonly steps: readonly { readonly travel: number; readonly ratio: number; readonly doubt: number }[];
  readonly rests: readonly RatioRest[];
}

export interface RatioRest {
  /** Told over the curve: a letter, or a short word. */
  readonly sign: string;
  readonly travel: number;
  readonly ratio: number;
  /** The load that is looked at. */
  readonly chosen: boolean;
}

/** The plot ready to paint: CSS px, origin top left. */
export interface RatioMarks {
  readonly width: number;
  readonly height: number;
  readonly axes: string;
  readonly grid: string;
  /** Small strokes at the leverages on the right. */
  readonly ticks: string;
  readonly letters: readonly TextMark[];
  readonly line: string;
  readonly band: string;
  readonly rests: readonly RestMark[];
}

export interface RestMark {
  readonly chosen: boolean;
  readonly x: number;
  readonly y: number;
  /** From its letter down to its place on the curve. */
  readonly leader: string;
}

/** Room for the units, and below them for the letters of the rests. */
const UNITS = 22;
const TOP = 62;
const FOOT = 32;
const GAP = 8;
const TICK = 5;
/** Ticks stand no nearer to each other than this along the travel, and up the ratio [px]. */
const TICK_ROOM = 56;
const ROW_ROOM = 34;
const LETTER_ROOM = 24;

/**
 * One curve with two scales: shock per wheel at the left, its inverse at the right. Throws RangeError below two steps, and
 * where a ratio less its ± is not above 0: it has no leverage.
 */
export function ratioPlot(input: RatioInput, width: number): RatioMarks {
  const { steps } = input;
  refuse(input);
  const height = Math.round(Math.max(260, Math.min(380, 0.62 * width)));
  const [least, most] = spanOf(input);
  const rows = Math.max(2, Math.floor((height - TOP - FOOT) / ROW_ROOM));
  const ratios = ticksWithin(least, most, rows);
  const left = widest(ratios) + GAP;
  const right = Math.max(left + 40, width - widest(ticksWithin(1 / most, 1 / least, rows)) - GAP - TICK);
  const [first, last] = [steps[0]!.travel, steps.at(-1)!.travel];
  const x = (travel: number): number => round(left + ((right - left) * (travel - first)) / (last - first));
  const y = (ratio: number): number =>
    round(height - FOOT - ((height - FOOT - TOP) * (ratio - least)) / (most - least));
  const leverages = ticksWithin(1 / most, 1 / least, rows);
  const { rests, signs } = restMarks(input.rests, x, y, width);
  const frame = { ratios, leverages, left, right, width, height, x, y };
  return {
    width,
    height,
    axes: `M${left} ${TOP}V${height - FOOT}H${right}V${TOP}`,
    grid: ratios.map((tick) => `M${left} ${y(tick)}H${right}`).join(''),
    ticks: leverages.map((tick) => `M${right} ${y(1 / tick)}h${TICK}`).join(''),
    letters: [...scales(input, frame), ...signs],
    line: `M${steps.map(({ travel, ratio }) => `${x(travel)} ${y(ratio)}`).join('L')}`,
    band: bandOf(input, x, y),
    rests,
  };
}

function refuse({ steps }: RatioInput): void {
  if (steps.length < 2) throw new RangeError(`ratioPlot: ${steps.length} steps; a curve needs two or more`);
  for (const { travel, ratio, doubt } of steps) {
    if (!(ratio > 0)) throw new RangeError(`ratioPlot: a ratio of ${ratio} at ${travel}; it must be above 0`);
    if (!(doubt >= 0)) throw new RangeError(`ratioPlot: a ± of ${doubt} at ${travel}; it must be 0 or more`);
  }
}

/** Least and most that is drawn: every ± in it, and no flat curve blown up to fill the height. */
function spanOf({ steps, rests }: RatioInput): readonly [number, number] {
  const edges = steps.flatMap(({ ratio, doubt }) => [Math.max(ratio - doubt, 0.2 * ratio), ratio + doubt]);
  const all = [...edges, ...rests.map(({ ratio }) => ratio)];
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const room = Math.max(0, 0.2 * most - (most - least)) / 2;
  return [least - room, most + room];
}

function widest(ticks: readonly number[]): number {
  return Math.max(0, ...ticks.map((tick) => textWidth(String(tick), TEXT_MIN)));
}

interface Frame {
  readonly ratios: readonly number[];
  readonly leverages: readonly number[];
  readonly left: number;
  readonly right: number;
  readonly width: number;
  readonly height: number;
  readonly x: Scale;
  readonly y: Scale;
}

type Scale = (value: number) => number;

function scales({ steps, lengthUnit, ratioUnit, leverageUnit }: RatioInput, frame: Frame): TextMark[] {
  const { ratios, leverages, left, right, width, height, x, y } = frame;
  const unit = `travel, ${lengthUnit}`;
  const room = right - textWidth(unit, TEXT_MIN) - 2 * GAP;
  const count = Math.max(2, Math.floor((right - left) / TICK_ROOM));
  return [
    text(ratioUnit, 0, UNITS - 6, 'start'),
    text(leverageUnit, width, UNITS - 6, 'end'),
    ...ratios.map((tick) => text(String(tick), left - GAP / 2, y(tick) + 6, 'end')),
    ...apart(leverages, (tick) => y(1 / tick)).map((tick) =>
      text(String(tick), right + TICK + GAP / 2, y(1 / tick) + 6, 'start'),
    ),
    ...ticksWithin(steps[0]!.travel, steps.at(-1)!.travel, count)
      .filter((tick) => x(tick) + textWidth(String(tick), TEXT_MIN) / 2 < room)
      .map((tick) => text(String(tick), x(tick), height - GAP, 'middle')),
    text(unit, right, height - GAP, 'end'),
  ];
}

/** Those that stand clear of the one before: an inverse scale is closer at one end. */
function apart(ticks: readonly number[], at: Scale): readonly number[] {
  const kept: number[] = [];
  for (const tick of ticks) {
    const before = kept.at(-1);
    if (before === undefined || Math.abs(at(before) - at(tick)) >= LETTER_ROOM) kept.push(tick);
  }
  return kept;
}

/** A dot on the curve for each rest and its sign above, signs moved aside so that none covers another. */
function restMarks(
  rests: readonly RatioRest[],
  x: Scale,
  y: Scale,
  width: number,
): { readonly rests: readonly RestMark[]; readonly signs: readonly TextMark[] } {
  const inOrder = rests.toSorted((a, b) => a.travel - b.travel);
  const places = spread(
    inOrder.map(({ travel, sign }) => ({ at: x(travel), width: textWidth(sign, TEXT_MIN) + GAP })),
    width,
  );
  const base = TOP - 18;
  return {
    rests: inOrder.map(({ travel, ratio, chosen }, i) => ({
      chosen,
      x: x(travel),
      y: y(ratio),
      leader: `M${places[i]} ${base + 5}L${x(travel)} ${TOP}V${y(ratio)}`,
    })),
    signs: inOrder.map(({ sign, chosen }, i) => ({
      ...text(sign, places[i]!, base, 'middle'),
      bold: chosen,
    })),
  };
}

/** Centres of things in order, each as near to its place as its neighbours and the edges let it. */
function spread(
  things: readonly { readonly at: number; readonly width: number }[],
  width: number,
): readonly number[] {
  const centres: number[] = [];
  let edge = 0;
  for (const { at, width: own } of things) {
    const centre = Math.max(at, edge + own / 2);
    centres.push(centre);
    edge = centre + own / 2;
  }
  edge = width;
  for (let i = things.length - 1; i >= 0; i -= 1) {
    const own = things[i]!.width;
    centres[i] = round(Math.min(centres[i]!, edge - own / 2));
    edge = centres[i]! - own / 2;
  }
  return centres;
}

function bandOf({ steps }: RatioInput, x: Scale, y: Scale): string {
  const edge = (sign: 1 | -1) =>
    steps.map(({ travel, ratio, doubt }) => `${x(travel)} ${y(Math.max(ratio + sign * doubt, 0.2 * ratio))}`);
  return `M${[...edge(1), ...edge(-1).reverse()].join('L')}Z`;
}

function text(content: string, x: number, y: number, align: TextMark['align']): TextMark {
  return { text: content, x, y, size: TEXT_MIN, align, bold: false };
}

function round(px: number): number {
  return Math.round(px * 10) / 10;
}
