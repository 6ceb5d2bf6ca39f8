import { centredBaseline, TEXT_MIN, type TextMark } from '../lettering.ts';
import type { LadderInput } from './ladderInput.ts';

export interface LevelMarks {
  /** Names at the right of the ladder; x = 0 is their left edge. */
  readonly names: readonly TextMark[];
  readonly quarterYs: readonly number[];
}

const LINE = TEXT_MIN * 1.2;

/**
 * The levels of a ladder: hangs, rubber and metal always; quarters of all travel where their names have room. A rubber
 * that begins close over the metal has its name moved up clear of it.
 */
export function levelsOf(input: LadderInput, yOf: (mm: number) => number): LevelMarks {
  const metalY = yOf(input.travelMaxMm);
  const named = [
    { words: input.hangsWords, y: yOf(input.hangsAtMm) },
    ...(input.rubberFromMm === null
      ? []
      : [{ words: 'rubber', y: Math.min(yOf(input.rubberFromMm), metalY - LINE) }]),
    { words: 'metal', y: metalY },
  ];
  const quarters = [25, 50, 75]
    .map((percent) => ({ words: `${percent} %`, y: yOf((percent / 100) * input.travelMaxMm) }))
    .filter(({ y }) => named.every((other) => Math.abs(other.y - y) >= LINE));
  return {
    names: [...named, ...quarters].map(({ words, y }) => ({
      text: words,
      x: 0,
      y: centredBaseline(y, TEXT_MIN),
      size: TEXT_MIN,
      align: 'start',
      bold: false,
    })),
    quarterYs: quarters.map(({ y }) => y),
  };
}
