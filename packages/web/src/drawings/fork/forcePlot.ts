import { TEXT_MIN, type TextMark, textWidth } from '../lettering.ts';
import { ticksWithin } from '../ticks.ts';

/** Forces over wheel travel, in the units shown; `doubt` is the ± at each place, null where it has none. */
export interface ForceInput {
  readonly lengthUnit: string;
  readonly forceUnit: string;
  readonly travel: readonly number[];
  readonly lines: readonly ForceLine[];
}

export interface ForceLine {
  readonly id: string;
  readonly name: string;
  /** Null: there is none at that travel. */
  readonly force: readonly (number | null)[];
  readonly doubt: readonly number[] | null;
}

/** The plot ready to paint: CSS px, origin top left. */
export interface ForceMarks {
  readonly width: number;
  readonly height: number;
  /** Ends of the two axes, and where a tick crosses them. */
  readonly axes: string;
  readonly grid: string;
  readonly letters: readonly TextMark[];
  readonly lines: readonly { readonly id: string; readonly path: string; readonly band: string | null }[];
}

const TOP = 30;
const FOOT = 32;
const RIGHT = 14;
const GAP = 8;
/** Ticks stand no nearer to each other than this [px]. */
const TICK_ROOM = 56;

/** Forces as lines over the travel, with a band for the ±. Throws RangeError where a line has not a value for each travel. */
export function forcePlot(input: ForceInput, width: number): ForceMarks {
  const { travel, lines } = input;
  for (const { id, force } of lines) {
    if (force.length !== travel.length) {
      throw new RangeError(
        `forcePlot: ${force.length} forces of ${id} at ${travel.length} travels; one for each`,
      );
    }
  }
  const height = Math.round(Math.max(240, Math.min(380, 0.62 * width)));
  const [least, most] = spanOf(lines);
  const ticksY = ticksWithin(least, most, Math.max(2, Math.floor((height - TOP - FOOT) / TICK_ROOM)));
  const left = Math.max(...ticksY.map((tick) => textWidth(String(tick), TEXT_MIN))) + GAP;
  const right = Math.max(left + 40, width - RIGHT);
  const ticksX = ticksWithin(travel[0]!, travel.at(-1)!, Math.max(2, Math.floor((right - left) / TICK_ROOM)));
  const x = (at: number): number =>
    round(left + ((right - left) * (at - travel[0]!)) / (travel.at(-1)! - travel[0]!));
  const y = (force: number): number =>
    round(height - FOOT - ((height - FOOT - TOP) * (force - least)) / (most - least));
  return {
    width,
    height,
    axes: `M${left} ${TOP}V${height - FOOT}H${right}`,
    grid: ticksY.map((tick) => `M${left} ${y(tick)}H${right}`).join(''),
    letters: lettersOf(input, { ticksX, ticksY, left, right, height, x, y }),
    lines: lines.map(({ id, force, doubt }) => ({
      id,
      path: pathOf(travel, force, x, y),
      band: doubt === null ? null : bandOf(travel, force, doubt, x, y),
    })),
  };
}

/** Least and most that is drawn, with 0 and every ± in it. */
function spanOf(lines: readonly ForceLine[]): readonly [number, number] {
  const edges = lines.flatMap(({ force, doubt }) =>
    force.flatMap((value, i) =>
      value === null ? [] : [value - (doubt?.[i] ?? 0), value + (doubt?.[i] ?? 0)],
    ),
  );
  const [least, most] = [Math.min(0, ...edges), Math.max(0, ...edges)];
  return most > least ? [least, most] : [0, 1];
}

interface Frame {
  readonly ticksX: readonly number[];
  readonly ticksY: readonly number[];
  readonly left: number;
  readonly right: number;
  readonly height: number;
  readonly x: (at: number) => number;
  readonly y: (force: number) => number;
}

function lettersOf({ lengthUnit, forceUnit }: ForceInput, frame: Frame): readonly TextMark[] {
  const { ticksX, ticksY, left, right, height, x, y } = frame;
  const mark = (text: string, at: number, base: number, align: TextMark['align']): TextMark => ({
    text,
    x: at,
    y: base,
    size: TEXT_MIN,
    align,
    bold: false,
  });
  const unit = `travel, ${lengthUnit}`;
  const room = right - textWidth(unit, TEXT_MIN) - 2 * GAP;
  return [
    mark(forceUnit, 0, TOP - 14, 'start'),
    ...ticksY.map((tick) => mark(String(tick), left - GAP / 2, y(tick) + 6, 'end')),
    ...ticksX
      .filter((tick) => x(tick) < room)
      .map((tick) => mark(String(tick), x(tick), height - GAP, 'middle')),
    mark(unit, right, height - GAP, 'end'),
  ];
}

type Scale = (value: number) => number;

function pathOf(travel: readonly number[], force: readonly (number | null)[], x: Scale, y: Scale): string {
  let pen = 'M';
  return travel
    .map((at, i) => {
      const value = force[i]!;
      if (value === null) {
        pen = 'M';
        return '';
      }
      const step = `${pen}${x(at)} ${y(value)}`;
      pen = 'L';
      return step;
    })
    .join('');
}

function bandOf(
  travel: readonly number[],
  force: readonly (number | null)[],
  doubt: readonly number[],
  x: Scale,
  y: Scale,
): string {
  const there = travel.flatMap((at, i) => {
    const value = force[i]!;
    return value === null ? [] : [{ at, value, by: doubt[i]! }];
  });
  const upper = there.map(({ at, value, by }) => `${x(at)} ${y(value + by)}`);
  const lower = there.map(({ at, value, by }) => `${x(at)} ${y(value - by)}`).reverse();
  return `M${[...upper, ...lower].join('L')}Z`;
}

function round(px: number): number {
  return Math.round(px * 10) / 10;
}
