import { longerLeft, shorterLeft } from '@sagwright/model/limits/threadLeft';
import { adjusterSI } from '../inputs/lengthAdjuster.ts';
import { ownParts } from '../inputs/ownFigure.ts';
import { takeAgain } from '../inputs/take.ts';
import { spreadOf } from '../limits/row.ts';
import type { JobPlan } from '../path.ts';
import type { FigureName } from './figures.ts';
import type { Opened } from './question.ts';

/** Figures of the rear shock by itself. */
export type ShockFigure = Extract<FigureName, 'longer-left' | 'shorter-left'>;

export function isShockFigure(figure: FigureName): figure is ShockFigure {
  return figure === 'longer-left' || figure === 'shorter-left';
}

/** How far its length adjuster can still be turned one way. */
export function shockFigure({ job, inputs }: JobPlan, figure: ShockFigure): Opened {
  const typed = job.machine.rear.shock.lengthAdjuster;
  if (typed === undefined) return 'no length adjuster';
  const left = figure === 'longer-left' ? longerLeft : shorterLeft;
  const parts = ownParts(takeAgain(inputs.figures), (take) => left(adjusterSI(take, typed))?.length ?? null);
  if (parts === null) return 'length not checked';
  const { figure: value, contributions } = spreadOf(parts.value, parts.moves);
  return { value, contributions };
}
