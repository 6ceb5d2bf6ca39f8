import type { PartView } from '@sagwright/workbench/page/rearView';
import { type Box, boxesMeet, clamp, type Point } from '../box.ts';
import { centredBaseline, TEXT_MIN, type TextMark, textBox, textWidth } from '../lettering.ts';

/** Where the rear's parts stand, forward of the rear axle and above the ground, any one unit. */
export interface PartsInput {
  /** The one with numbers first: it is drawn full, the others as ghosts. */
  readonly stands: readonly PartsStand[];
}

export interface PartsStand {
  readonly id: string;
  readonly parts: readonly PartPlace[];
}

export type PartPlace = Omit<PartView, 'words'>;
type PartName = PartView['part'];

/** The picture ready to paint: CSS px, origin top left. */
export interface PartsMarks {
  readonly width: number;
  readonly height: number;
  readonly stands: readonly StandMarks[];
  /** Points of the first stand with their numbers, counted as its parts are. */
  readonly points: readonly PointMark[];
}

export interface StandMarks {
  readonly id: string;
  /** Rigid parts as outlines: a bar, or a three-cornered part that holds three points. */
  readonly bars: readonly { readonly bar: BarName; readonly path: string }[];
}

export type BarName = 'arm' | 'rocker' | 'link' | 'shock';

export interface PointMark extends Point {
  readonly part: PartName;
  /** Bolted to the frame: the same at every height of the wheel. */
  readonly still: boolean;
  readonly number: TextMark;
  /** From the number to its point, where it had to stand off. */
  readonly leader: string | null;
}

const EDGE = 30;
const MOST = 420;
/** Half of a point's mark, and how far its number stands from it at least. */
const DOT = 6;

/** Draws all stands to one scale. Throws RangeError without a stand, and for a stand whose parts are all in one place. */
export function partsPlot({ stands }: PartsInput, width: number): PartsMarks {
  const [first] = stands;
  if (first === undefined) throw new RangeError('partsPlot: 0 stands; 1 or more are drawn');
  const all = stands.flatMap(({ parts }) => parts);
  const [xs, heights] = [all.map(({ x }) => x), all.map(({ height }) => height)];
  const [left, foot] = [Math.min(...xs), Math.min(...heights)];
  const [wide, high] = [Math.max(...xs) - left, Math.max(...heights) - foot];
  if (!(Math.max(wide, high) > 0))
    throw new RangeError(`partsPlot: parts span ${wide} by ${high}; more than 0`);
  const room = Math.max(80, width - 2 * EDGE);
  const scale = Math.min(room / Math.max(wide, 1e-9), (MOST - 2 * EDGE) / Math.max(high, 1e-9));
  const height = Math.round(Math.max(120, scale * high + 2 * EDGE));
  const inset = (width - scale * wide) / 2;
  const place = (part: PartPlace): Point => ({
    x: round(inset + scale * (part.x - left)),
    y: round(height - EDGE - scale * (part.height - foot)),
  });
  return {
    width,
    height,
    stands: stands.map(({ id, parts }) => ({ id, bars: barsOf(parts, carriedOf(stands), place) })),
    points: pointsOf(first, stands, place, { width, height }),
  };
}

type Place = (part: PartPlace) => Point;

/** What may be bolted to the swingarm. */
const ON_ARM: readonly PartName[] = ['arm eye', 'rocker pivot', 'link end', 'far eye'];

/** Of those, what really is: it moves. */
function carriedOf(stands: readonly PartsStand[]): readonly PartName[] {
  const [first] = stands;
  return ON_ARM.filter((name) => {
    const i = first!.parts.findIndex(({ part }) => part === name);
    return i >= 0 && !isStill(stands, i);
  });
}

function isStill(stands: readonly PartsStand[], i: number): boolean {
  const own = stands[0]!.parts[i]!;
  return stands.every(({ parts }) => isSame(parts[i]!, own));
}

function barsOf(parts: readonly PartPlace[], carried: readonly PartName[], place: Place): StandMarks['bars'] {
  const at = (names: readonly PartName[]): string =>
    `M${names.map((name) => spot(place(parts.find(({ part }) => part === name)!))).join('L')}`;
  const has = (name: PartName): boolean => parts.some(({ part }) => part === name);
  const arm = {
    bar: 'arm',
    path: at(['pivot', 'axle']) + carried.map((name) => `${at(['pivot', 'axle', name])}Z`).join(''),
  } as const;
  if (has('arm eye')) return [arm, { bar: 'shock', path: at(['arm eye', 'frame eye']) }];
  return [
    arm,
    { bar: 'rocker', path: `${at(['rocker pivot', 'link pin', 'rocker eye'])}Z` },
    { bar: 'link', path: at(['link pin', 'link end']) },
    { bar: 'shock', path: at(['rocker eye', 'far eye']) },
  ];
}

function pointsOf(
  { parts }: PartsStand,
  stands: readonly PartsStand[],
  place: Place,
  size: { readonly width: number; readonly height: number },
): readonly PointMark[] {
  const spots = parts.map(place);
  const taken: Box[] = spots.map(({ x, y }) => ({ x: x - DOT, y: y - DOT, width: 2 * DOT, height: 2 * DOT }));
  return parts.map((part, i) => {
    const { number, distance } = numberBeside(spots[i]!, String(i + 1), taken, size);
    taken.push(textBox(number));
    return {
      ...spots[i]!,
      part: part.part,
      still: isStill(stands, i),
      number,
      leader:
        distance > NEAREST
          ? `M${spot(spots[i]!)}L${round(number.x)} ${round(number.y - 0.38 * TEXT_MIN)}`
          : null,
    };
  });
}

const NEAREST = 17;
/** As far as a number is moved off to be clear of the others [px]. */
const FURTHEST = 120;

/** The nearest place round a point at which its number covers nothing; so far off there is always one. */
function numberBeside(
  { x, y }: Point,
  number: string,
  taken: readonly Box[],
  size: { readonly width: number; readonly height: number },
): { readonly number: TextMark; readonly distance: number } {
  const half = textWidth(number, TEXT_MIN) / 2;
  const at = (distance: number, turn: number): TextMark => ({
    text: number,
    x: round(clamp(x + distance * Math.cos(turn), half, size.width - half)),
    y: centredBaseline(clamp(y - distance * Math.sin(turn), 12, size.height - 12), TEXT_MIN),
    size: TEXT_MIN,
    align: 'middle',
    bold: true,
  });
  for (let distance = NEAREST; distance <= FURTHEST; distance += 4) {
    for (let eighth = 0; eighth < 16; eighth += 1) {
      const mark = at(distance, (Math.PI * (2 * eighth + 4)) / 16);
      if (!taken.some((box) => boxesMeet(box, textBox(mark), 1))) return { number: mark, distance };
    }
  }
  return { number: at(NEAREST, Math.PI / 4), distance: NEAREST };
}

function isSame(a: PartPlace, b: PartPlace): boolean {
  return Math.abs(a.x - b.x) < 1e-9 && Math.abs(a.height - b.height) < 1e-9;
}

function spot({ x, y }: Point): string {
  return `${x} ${y}`;
}

function round(px: number): number {
  return Math.round(px * 10) / 10;
}
