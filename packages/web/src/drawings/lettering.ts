import type { Box } from './box.ts';

/** Which way a text runs from its anchor. */
export type Align = 'start' | 'middle' | 'end';

/** A line of text on a drawing: `x` its anchor, `y` its baseline, `size` its height in CSS px. */
export interface TextMark {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly align: Align;
  readonly bold: boolean;
}

/** No text on a drawing is smaller than this, in CSS px. */
export const TEXT_MIN = 16;
export const TEXT_FIGURE = 18;
export const TEXT_HEADLINE = 21;

/**
 * Width of a text in B612, CSS px, so that a drawing can be laid out without a screen. Regular and bold share their
 * advance widths. Kerning is left out: it came to less than 2 px over every line of the gallery. Letters that are not in
 * the table count as wide ones.
 */
export function textWidth(text: string, size: number): number {
  let thousandths = 0;
  for (const letter of text) thousandths += ADVANCES.get(letter) ?? WIDE;
  return (thousandths / 1000) * size;
}

/** The area that a text covers, from its ascenders to its descenders. */
export function textBox(mark: TextMark): Box {
  const width = textWidth(mark.text, mark.size);
  const back = mark.align === 'start' ? 0 : mark.align === 'middle' ? width / 2 : width;
  const ascent = ASCENT * mark.size;
  return { x: mark.x - back, y: mark.y - ascent, width, height: ascent + DESCENT * mark.size };
}

/** Baseline of a text whose figures stand centred about `y`. */
export function centredBaseline(y: number, size: number): number {
  return y + (CAPITAL * size) / 2;
}

/**
 * A text in at most two lines of `width` px, broken where the two are most alike. What still does not fit loses whole
 * words from its end, and its last word letters, for a "…".
 */
export function inTwoLines(text: string, size: number, width: number): readonly string[] {
  if (textWidth(text, size) <= width) return [text];
  const words = text.split(' ');
  const breaks = words.slice(1).map((_, index) => {
    const lines = [words.slice(0, index + 1).join(' '), words.slice(index + 1).join(' ')] as const;
    return { lines, widest: Math.max(...lines.map((line) => textWidth(line, size))) };
  });
  const even = breaks.reduce<(typeof breaks)[number] | null>(
    (best, each) => (best === null || each.widest < best.widest ? each : best),
    null,
  );
  if (even === null) return [shortened(text, size, width)];
  if (even.widest <= width) return even.lines;
  const last = breaks.findLast(({ lines }) => textWidth(lines[0], size) <= width) ?? breaks[0]!;
  return last.lines.map((line) => shortened(line, size, width));
}

function shortened(text: string, size: number, width: number): string {
  if (textWidth(text, size) <= width) return text;
  const fits = (kept: string): boolean => textWidth(`${kept}…`, size) <= width;
  const words = text.split(' ');
  while (words.length > 1 && !fits(words.join(' '))) words.pop();
  const letters = [...words.join(' ')];
  while (letters.length > 1 && !fits(letters.join(''))) letters.pop();
  return `${letters.join('').trimEnd()}…`;
}

const ASCENT = 0.78;
const DESCENT = 0.25;
const CAPITAL = 0.766;
const WIDE = 900;

/** Advance widths of B612 in thousandths of an em, read from its font file. */
const ADVANCES = new Map<string, number>(
  (
    [
      [200, "'|"],
      [250, ',;·'],
      [300, '.:Iij'],
      [350, ' !l’'],
      [400, '"frt'],
      [450, '()-J[s'],
      [500, '=]cz'],
      [525, 'a'],
      [550, '$*/?FLS\\_`ekvxy–ä'],
      [600, '+CEKPTYZbdghnopqu}±'],
      [650, '0123456789<>ABDGRVX{'],
      [700, '&HU'],
      [750, 'N^w~…½'],
      [800, 'OQ×'],
      [850, '#'],
      [900, '%Mm'],
      [950, 'W'],
      [1000, '@'],
    ] as const
  ).flatMap(([width, letters]) => [...letters].map((letter) => [letter, width] as const)),
);
