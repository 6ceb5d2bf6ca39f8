import { type Box, boxAround, clamp } from '../box.ts';
import {
  inTwoLines,
  TEXT_FIGURE,
  TEXT_HEADLINE,
  TEXT_MIN,
  type TextMark,
  textBox,
  textWidth,
} from '../lettering.ts';
import type { AxleWords, LoadWords } from './sideViewInput.ts';

export interface LoadMark {
  /** The mass, then its ±. */
  readonly texts: readonly TextMark[];
  /** One line, or two where one would be too long. */
  readonly limit: readonly TextMark[];
  readonly verdict: LoadWords['verdict'];
}

export interface AxleMarks {
  /** Arrows up to the contact points, from below. */
  readonly arrows: readonly { readonly x: number; readonly from: number; readonly to: number }[];
  readonly rear: LoadMark;
  readonly whole: LoadMark;
  readonly front: LoadMark;
  readonly limitsAt: TextMark | null;
}

/** Where the words may stand, in CSS px: the two arrows, the ground line, the width. */
export interface AxleRoom {
  readonly rearX: number;
  readonly frontX: number;
  readonly groundY: number;
  readonly width: number;
}

const ARROW_FROM = 34;
const ARROW_TO = 3;
const EDGE = 6;
const APART = 10;
/** Baselines under the ground line: the masses, then up to three lines of limits. */
const MASS_AT = 54;
const LIMITS_AT = [75, 94, 113] as const;
/** Below this width a limit that is longer than a third of it is broken in two, and the drawing needs one more line. */
const NARROW = 560;

/** How much room the words of the axle loads need under the ground line, px. */
export function belowGround(words: AxleWords | null, width: number): number {
  const isLong = ({ limit }: LoadWords) => textWidth(limit, TEXT_MIN) > limitLongest(width);
  const isBroken = words !== null && width < NARROW && [words.rear, words.whole, words.front].some(isLong);
  return (isBroken ? LIMITS_AT[2] : LIMITS_AT[1]) + 6;
}

/** Three of them stand side by side. */
function limitLongest(width: number): number {
  return (width - 2 * EDGE - 2 * APART) / 3;
}

/**
 * The axle loads under the ground line: each under its arrow, everything in the middle, limits below. The first of these
 * letterings in which that goes: large, less large, with long limits broken in two, as small as may be. Where it goes in
 * none, the ends move aside, in the first one in which all have room between the edges.
 */
export function axleMarks(words: AxleWords, room: AxleRoom): AxleMarks {
  const letterings = [
    columns(words, room, TEXT_HEADLINE, null),
    columns(words, room, TEXT_FIGURE, null),
    columns(words, room, TEXT_FIGURE, limitLongest(room.width)),
    columns(words, room, TEXT_MIN, limitLongest(room.width)),
  ];
  const chosen =
    letterings.find(({ isInPlace }) => isInPlace) ??
    letterings.find(({ fits }) => fits) ??
    letterings.at(-1)!;
  return {
    ...chosen.marks,
    arrows: [room.rearX, room.frontX].map((x) => ({
      x,
      from: room.groundY + ARROW_FROM,
      to: room.groundY + ARROW_TO,
    })),
  };
}

/** The area that some words cover together. */
export function wordsBox(texts: readonly TextMark[]): Box {
  return boxAround(
    texts.map(textBox).flatMap(({ x, y, width, height }) => [
      { x, y },
      { x: x + width, y: y + height },
    ]),
  );
}

interface Lettering {
  readonly marks: Omit<AxleMarks, 'arrows'>;
  /** Whether both ends stand under their arrows. */
  readonly isInPlace: boolean;
  /** Whether all have room between the edges. */
  readonly fits: boolean;
}

function columns(words: AxleWords, room: AxleRoom, size: number, longest: number | null): Lettering {
  const rear = linesOf(words.rear, size, longest);
  const own = linesOf(words.whole, size, longest);
  const whole = { ...own, width: Math.max(own.width, textWidth(words.limitsAt, TEXT_MIN)) };
  const front = linesOf(words.front, size, longest);
  const last = room.width - EDGE;
  const rearX = clamp(room.rearX - rear.width / 2, EDGE, last - rear.width);
  const frontX = clamp(room.frontX - front.width / 2, EDGE, last - front.width);
  const lack = Math.max(0, whole.width + 2 * APART - (frontX - rearX - rear.width));
  const [rearAir, frontAir] = [rearX - EDGE, last - front.width - frontX];
  const air = rearAir + frontAir;
  const moved = air === 0 ? 0 : Math.min(1, lack / air);
  const from = rearX - moved * rearAir;
  const to = frontX + moved * frontAir;
  const inner = [from + rear.width + APART, to - APART - whole.width] as const;
  const wholeX = lack > 0 ? inner[0] : clamp((room.rearX + room.frontX - whole.width) / 2, ...inner);
  const middle = wholeX + whole.width / 2;
  return {
    isInPlace: lack === 0,
    fits: lack <= air,
    marks: {
      rear: marksOf(words.rear, rear, from + rear.width / 2, room, size),
      whole: marksOf(words.whole, whole, middle, room, size),
      front: marksOf(words.front, front, to + front.width / 2, room, size),
      limitsAt:
        words.limitsAt === ''
          ? null
          : textMark(words.limitsAt, middle, room.groundY + LIMITS_AT[whole.limit.length === 2 ? 2 : 1]),
    },
  };
}

interface LoadLines {
  readonly limit: readonly string[];
  readonly massWidth: number;
  readonly doubtWidth: number;
  readonly width: number;
}

function linesOf({ mass, plusMinus, limit }: LoadWords, size: number, longest: number | null): LoadLines {
  const lines = limit === '' ? [] : longest !== null ? inTwoLines(limit, TEXT_MIN, longest) : [limit];
  const massWidth = textWidth(mass, size);
  const doubtWidth = plusMinus === '' ? 0 : textWidth(` ${plusMinus}`, TEXT_MIN);
  const widths = [massWidth + doubtWidth, ...lines.map((line) => textWidth(line, TEXT_MIN))];
  return { limit: lines, massWidth, doubtWidth, width: Math.max(...widths) };
}

function marksOf(words: LoadWords, lines: LoadLines, x: number, room: AxleRoom, size: number): LoadMark {
  const { massWidth, doubtWidth } = lines;
  const left = x - (massWidth + doubtWidth) / 2;
  const y = room.groundY + MASS_AT;
  const mass: TextMark = { ...textMark(words.mass, left, y), size, align: 'start', bold: true };
  const doubt: TextMark = { ...textMark(words.plusMinus, left + massWidth + doubtWidth, y), align: 'end' };
  return {
    texts: doubtWidth === 0 ? [mass] : [mass, doubt],
    limit: lines.limit.map((text, row) => ({
      ...textMark(text, x, room.groundY + LIMITS_AT[row]!),
      bold: words.verdict === 'over',
    })),
    verdict: words.verdict,
  };
}

function textMark(text: string, x: number, y: number): TextMark {
  return { text, x, y, size: TEXT_MIN, align: 'middle', bold: false };
}
