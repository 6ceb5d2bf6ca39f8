import { centredBaseline, TEXT_MIN, type TextMark } from '../lettering.ts';

/** Length of a tick in px, by the millimetres that it marks. */
const STEPS = [
  { mm: 2, length: 6 },
  { mm: 10, length: 10 },
  { mm: 20, length: 16 },
] as const;
const TICKS_APART = 3.5;
const NUMBER_LEFT = 22;

export interface AxisMarks {
  readonly ticks: readonly { readonly y: number; readonly length: number }[];
  readonly tickTexts: readonly TextMark[];
}

/** A tick each 2, 10 and 20 mm, without those that would run into each other; numbers at the longest. */
export function axisOf(
  travelMaxMm: number,
  pxPerMm: number,
  x: number,
  yOf: (mm: number) => number,
): AxisMarks {
  const steps = STEPS.filter((step) => step.mm * pxPerMm >= TICKS_APART);
  const ticks: { y: number; length: number }[] = [];
  for (let mm = 0; mm <= travelMaxMm; mm += STEPS[0].mm) {
    const longest = steps.filter((step) => mm % step.mm === 0).at(-1);
    if (longest !== undefined) ticks.push({ y: yOf(mm), length: longest.length });
  }
  const numberStep = 20 * Math.ceil((TEXT_MIN * 1.25) / (20 * pxPerMm));
  const tickTexts: TextMark[] = [];
  for (let mm = 0; mm <= travelMaxMm; mm += numberStep) {
    tickTexts.push({
      text: String(mm),
      x: x - NUMBER_LEFT,
      y: centredBaseline(yOf(mm), TEXT_MIN),
      size: TEXT_MIN,
      align: 'end',
      bold: false,
    });
  }
  return { ticks, tickTexts };
}
