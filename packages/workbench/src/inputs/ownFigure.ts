import type { Figure } from '@sagwright/model/plan/answer';
import { halfWidthOf } from '@sagwright/model/uncertainty/spread';
import type { Desk } from './desk.ts';
import { noting, type Take, takeAgain } from './take.ts';

/** Share of a figure's deviation by which it is moved. */
const STEP = 1e-3;

/**
 * A figure worked out from figures of the job alone, with no balance between: its value, and √Σ(slope·σ)² as its ±. The answer is
 * null where `work` says so, and then none of its parts has a ±.
 */
export function ownFigure(desk: Desk, work: (desk: Desk) => number | null): Figure | null {
  const parts = ownParts(desk.take, (take) => work({ ...desk, take }));
  if (parts === null) return null;
  return { value: parts.value, plusMinus: halfWidthOf(Math.hypot(...parts.moves.values())) };
}

/** The same with what each of those figures does to it, by path: ∂(figure)/∂(that one) times its standard deviation. */
export function ownParts(
  take: Take,
  work: (take: Take) => number | null,
): { readonly value: number; readonly moves: ReadonlyMap<string, number> } | null {
  const taken = new Set<string>();
  const value = work(noting(take, taken));
  if (value === null) return null;
  const moves = new Map<string, number>();
  for (const path of taken) {
    const { deviation } = take.figures.get(path)!;
    const step = STEP * deviation;
    if (!(step > LEAST_STEP)) continue;
    const moved = (by: number): number => work(takeAgain(take.figures, path, by)) ?? value;
    moves.set(path, ((moved(step) - moved(-step)) / (2 * step)) * deviation);
  }
  return { value, moves };
}

/** Below this a step would run out of digits. */
const LEAST_STEP = 1e-15;
