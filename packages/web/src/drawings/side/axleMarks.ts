import { boxesMeet } from '../box.ts';
import {
  type Align,
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
  readonly limit: TextMark;
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

/** Where the words may stand, in CSS px: the two arrows, the ground line, the first free y under it, the width. */
export interface AxleRoom {
  readonly rearX: number;
  readonly frontX: number;
  readonly groundY: number;
  readonly topY: number;
  readonly width: number;
}

const ARROW = 32;
const BESIDE = 14;
const EDGE = 10;
const APART = 8;
const LINES = [28, 52, 74] as const;

/**
 * The axle loads under the ground line, each beside its arrow, everything between them, limits below. The first of
 * these arrangements in which no words touch: between the arrows, large or less large; outside them; the whole one
 * line lower, with the limits beside their arrows or at the edges, and then as small as may be. The last one is taken
 * where none is free.
 */
export function axleMarks(words: AxleWords, room: AxleRoom): AxleMarks {
  const arrangements = [
    between(words, room, TEXT_HEADLINE),
    between(words, room, TEXT_FIGURE),
    outside(words, room),
    stacked(words, room, room.rearX + BESIDE, room.frontX - BESIDE),
    stacked(words, room, EDGE, room.width - EDGE),
    stacked(words, room, EDGE, room.width - EDGE, TEXT_MIN),
  ];
  const chosen = arrangements.find((marks) => isClear(marks, room.width)) ?? arrangements.at(-1)!;
  return {
    ...chosen,
    arrows: [room.rearX, room.frontX].map((x) => ({ x, from: room.topY + ARROW, to: room.groundY + 3 })),
  };
}

type Words = Omit<AxleMarks, 'arrows'>;

function between(words: AxleWords, room: AxleRoom, size: number): Words {
  const [massY, limitY, lastY] = linesOf(room);
  const place = { size, massY, limitY };
  const middle = (room.rearX + room.frontX) / 2;
  const beside = textMark(words.limitsAt, room.width - EDGE, limitY, 'end');
  const isBeside = textBox(beside).x > room.frontX + BESIDE;
  return {
    rear: load(words.rear, { ...place, x: room.rearX + BESIDE, align: 'start' }),
    whole: load(words.whole, { ...place, x: middle, align: 'middle' }),
    front: load(words.front, { ...place, x: room.frontX - BESIDE, align: 'end' }),
    limitsAt: said(isBeside ? beside : textMark(words.limitsAt, middle, lastY, 'middle')),
  };
}

function outside(words: AxleWords, room: AxleRoom): Words {
  const [massY, limitY, lastY] = linesOf(room);
  const place = { size: TEXT_FIGURE, massY, limitY };
  const middle = (room.rearX + room.frontX) / 2;
  return {
    rear: load(words.rear, { ...place, x: room.rearX - BESIDE, align: 'end' }),
    whole: load(words.whole, { ...place, x: middle, align: 'middle' }),
    front: load(words.front, { ...place, x: room.frontX + BESIDE, align: 'start' }),
    limitsAt: said(textMark(words.limitsAt, middle, lastY, 'middle')),
  };
}

function stacked(
  words: AxleWords,
  room: AxleRoom,
  rearLimitX: number,
  frontLimitX: number,
  size = TEXT_FIGURE,
): Words {
  const [massY, limitY, lastY] = linesOf(room);
  const place = { size, massY, limitY };
  const rear = load(words.rear, { ...place, x: room.rearX + BESIDE, align: 'start' });
  const front = load(words.front, { ...place, x: room.frontX - BESIDE, align: 'end' });
  return {
    rear: { ...rear, limit: { ...rear.limit, x: rearLimitX } },
    whole: load(words.whole, {
      size,
      massY: limitY,
      limitY: lastY,
      x: (rearLimitX + frontLimitX) / 2,
      align: 'middle',
    }),
    front: { ...front, limit: { ...front.limit, x: frontLimitX } },
    limitsAt: said(textMark(words.limitsAt, room.width - EDGE, lastY, 'end')),
  };
}

function linesOf(room: AxleRoom): readonly [number, number, number] {
  const [mass, limit, last] = LINES;
  return [room.topY + mass, room.topY + limit, room.topY + last];
}

interface Place {
  readonly x: number;
  readonly massY: number;
  readonly limitY: number;
  readonly size: number;
  readonly align: Align;
}

function load(words: LoadWords, { x, massY, limitY, size, align }: Place): LoadMark {
  const doubt = words.plusMinus === '' ? 0 : textWidth(` ${words.plusMinus}`, TEXT_MIN);
  const whole = textWidth(words.mass, size) + doubt;
  const left = align === 'start' ? x : align === 'middle' ? x - whole / 2 : x - whole;
  const mass: TextMark = { ...textMark(words.mass, left, massY, 'start'), size, bold: true };
  return {
    texts: doubt === 0 ? [mass] : [mass, textMark(words.plusMinus, left + whole, massY, 'end')],
    limit: { ...textMark(words.limit, x, limitY, align), bold: words.verdict === 'over' },
    verdict: words.verdict,
  };
}

function textMark(text: string, x: number, y: number, align: Align): TextMark {
  return { text, x, y, size: TEXT_MIN, align, bold: false };
}

function said(mark: TextMark): TextMark | null {
  return mark.text === '' ? null : mark;
}

/** Whether all words of an arrangement keep apart and inside the drawing. */
function isClear({ rear, whole, front, limitsAt }: Words, width: number): boolean {
  const groups = [rear, whole, front].flatMap(({ texts, limit }) => [texts, [limit]]);
  const all = limitsAt === null ? groups : [...groups, [limitsAt]];
  const boxes = all.map((texts) => texts.map(textBox));
  const inside = boxes.flat().every((box) => box.x >= 4 && box.x + box.width <= width - 4);
  const apart = boxes.every((group, index) =>
    boxes.slice(index + 1).every((other) => group.every((a) => other.every((b) => !touch(a, b)))),
  );
  return inside && apart;
}

/** Words side by side need air between them; words over each other only must not overlap. */
function touch(a: ReturnType<typeof textBox>, b: ReturnType<typeof textBox>): boolean {
  return boxesMeet({ ...a, x: a.x - APART, width: a.width + 2 * APART }, b);
}
