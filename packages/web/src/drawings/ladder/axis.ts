import { centredBaseline, TEXT_MIN, type TextMark } from '../lettering.ts';

/** How a ladder is graduated: ten ticks from number to number, the fifth and tenth longer. */
export interface LadderAxis {
  /** The unit as it is spoken: "millimetres". */
  readonly spoken: string;
  readonly unitMm: number;
  /** From tick to tick, in that unit. */
  readonly tick: number;
}

/** Ticks each 2, 10 and 20 mm. */
export const axisInMm: LadderAxis = { spoken: 'millimetres', unitMm: 1, tick: 2 };

/** Ticks each tenth, half and whole inch. */
export const axisInInches: LadderAxis = { spoken: 'inches', unitMm: 25.4, tick: 0.1 };

export interface AxisMarks {
  readonly ticks: readonly { readonly y: number; readonly length: number }[];
  readonly tickTexts: readonly TextMark[];
}

const LENGTHS = [
  { each: 1, length: 6 },
  { each: 5, length: 10 },
  { each: 10, length: 16 },
] as const;
const TICKS_APART = 3.5;
const NUMBER_LEFT = 22;

/** Ticks down to the end of the travel, without those that would run into each other; numbers at the longest. */
export function axisOf(
  axis: LadderAxis,
  travelMaxMm: number,
  pxPerMm: number,
  x: number,
  yOf: (mm: number) => number,
): AxisMarks {
  const tickMm = axis.tick * axis.unitMm;
  const lengths = LENGTHS.filter(({ each }) => each * tickMm * pxPerMm >= TICKS_APART);
  const numbered = 10 * Math.ceil((TEXT_MIN * 1.25) / (10 * tickMm * pxPerMm));
  const ticks: { y: number; length: number }[] = [];
  const tickTexts: TextMark[] = [];
  for (let count = 0; count * tickMm <= travelMaxMm; count += 1) {
    const y = yOf(count * tickMm);
    const longest = lengths.filter(({ each }) => count % each === 0).at(-1);
    if (longest !== undefined) ticks.push({ y, length: longest.length });
    if (count % numbered === 0) tickTexts.push(number(Math.round(count * axis.tick), x - NUMBER_LEFT, y));
  }
  return { ticks, tickTexts };
}

function number(value: number, x: number, y: number): TextMark {
  return {
    text: String(value),
    x,
    y: centredBaseline(y, TEXT_MIN),
    size: TEXT_MIN,
    align: 'end',
    bold: false,
  };
}
