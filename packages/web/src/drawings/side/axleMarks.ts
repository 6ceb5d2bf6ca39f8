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

const ARROW = 32;
const BESIDE = 10;

/**
 * The axle loads under the ground line: rear beside its arrow, front beside the other, everything between; limits on
 * the line below. What does not fit at its best size is set smaller, then without the ±, then spread over the width.
 */
export function axleMarks(
  words: AxleWords,
  rearX: number,
  frontX: number,
  topY: number,
  groundY: number,
  width: number,
): AxleMarks {
  const ends = { rear: rearX + BESIDE, whole: (rearX + frontX) / 2, front: frontX - BESIDE };
  const edges = { rear: 8, whole: width / 2, front: width - 8 };
  const line = topY + 28;
  const masses =
    firstClear([
      massLine(words, ends, line, TEXT_HEADLINE, true),
      massLine(words, ends, line, TEXT_FIGURE, true),
      massLine(words, ends, line, TEXT_FIGURE, false),
    ]) ?? massLine(words, edges, line, TEXT_FIGURE, false);
  const limits = firstClear([limitLine(words, ends, line + 24)]) ?? limitLine(words, edges, line + 24);
  const markOf = (end: keyof Anchors, index: number): LoadMark => ({
    texts: masses[index]!,
    limit: limits[index]![0]!,
    verdict: words[end].verdict,
  });
  const front = markOf('front', 2);
  return {
    arrows: [rearX, frontX].map((x) => ({ x, from: topY + ARROW, to: groundY + 3 })),
    rear: markOf('rear', 0),
    whole: markOf('whole', 1),
    front,
    limitsAt: limitsAt(words.limitsAt, front.limit, frontX, line + 24, width),
  };
}

type Anchors = { readonly rear: number; readonly whole: number; readonly front: number };
const SIDES = [
  ['rear', 'start'],
  ['whole', 'middle'],
  ['front', 'end'],
] as const satisfies readonly (readonly [keyof Anchors, Align])[];

function massLine(words: AxleWords, at: Anchors, y: number, size: number, withDoubt: boolean): TextMark[][] {
  return SIDES.map(([end, align]) => {
    const { mass, plusMinus } = words[end];
    const doubt = withDoubt && plusMinus !== '' ? ` ${plusMinus}` : '';
    const massWidth = textWidth(mass, size);
    const whole = massWidth + textWidth(doubt, TEXT_MIN);
    const left = align === 'start' ? at[end] : align === 'middle' ? at[end] - whole / 2 : at[end] - whole;
    const texts: TextMark[] = [{ text: mass, x: left, y, size, align: 'start', bold: true }];
    if (doubt !== '') {
      texts.push({ text: plusMinus, x: left + whole, y, size: TEXT_MIN, align: 'end', bold: false });
    }
    return texts;
  });
}

function limitLine(words: AxleWords, at: Anchors, y: number): TextMark[][] {
  return SIDES.map(([end, align]) => [
    { text: words[end].limit, x: at[end], y, size: TEXT_MIN, align, bold: words[end].verdict === 'over' },
  ]);
}

/** The first of these lines whose three groups keep apart. */
function firstClear(lines: readonly TextMark[][][]): TextMark[][] | null {
  const apart = (a: TextMark[], b: TextMark[]) =>
    a.every((one) => b.every((other) => !boxesMeet(textBox(one), textBox(other), 8)));
  return lines.find(([a, b, c]) => apart(a!, b!) && apart(b!, c!) && apart(a!, c!)) ?? null;
}

/** What the limits count, right of the front arrow where there is room; else the page says it. */
function limitsAt(words: string, front: TextMark, frontX: number, y: number, width: number): TextMark | null {
  const mark: TextMark = { text: words, x: width - 8, y, size: TEXT_MIN, align: 'end', bold: false };
  const box = textBox(mark);
  return words !== '' && box.x > frontX + BESIDE && !boxesMeet(box, textBox(front), 8) ? mark : null;
}
