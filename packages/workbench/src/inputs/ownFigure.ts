import type { Figure } from '@sagwright/model/plan/answer';
import { halfWidthOf } from '@sagwright/model/uncertainty/spread';
import type { Desk } from './desk.ts';
import { noting, takeAgain } from './take.ts';

/** Share of a figure's deviation by which it is moved. */
const STEP = 1e-3;

/**
 * A figure worked out from figures of the job alone, with no balance between: its value, and √Σ(slope·σ)² as its ±. The answer is
 * null where `work` says so, and then none of its parts has a ±.
 */
export function ownFigure(desk: Desk, work: (desk: Desk) => number | null): Figure | null {
  const taken = new Set<string>();
  const value = work({ ...desk, take: noting(desk.take, taken) });
  if (value === null) return null;
  let variance = 0;
  for (const path of taken) {
    const { deviation } = desk.take.figures.get(path)!;
    const step = STEP * deviation;
    if (!(step > LEAST_STEP)) continue;
    const moved = (by: number): number =>
      work({ ...desk, take: takeAgain(desk.take.figures, path, by) }) ?? value;
    variance += (((moved(step) - moved(-step)) / (2 * step)) * deviation) ** 2;
  }
  return { value, plusMinus: halfWidthOf(Math.sqrt(variance)) };
}

/** Below this a step would run out of digits. */
const LEAST_STEP = 1e-15;
