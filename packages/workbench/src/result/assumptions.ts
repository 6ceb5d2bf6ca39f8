import type { UsedFigure } from '../inputs/take.ts';
import type { JobPlan } from '../path.ts';
import type { AssumptionDocument } from './document.ts';
import { type End, riddenCells, springInView } from './inView.ts';

/**
 * Every figure that nobody gave, and every ± that nobody gave, with what it alone adds to the ± of the adjuster of either end
 * (spring in view); the greatest first.
 */
export function assumptionsOf(planned: JobPlan): readonly AssumptionDocument[] {
  const rear = effectsOn(planned, 'rear');
  const front = effectsOn(planned, 'front');
  return [...planned.inputs.figures.values()]
    .filter((figure) => figure.width !== 'typed' || figure.assumed !== null)
    .map((figure) => assumption(figure, rear, front))
    .sort((a, b) => weight(b) - weight(a));
}

function assumption(
  figure: UsedFigure,
  rear: ReadonlyMap<string, number> | null,
  front: ReadonlyMap<string, number> | null,
): AssumptionDocument {
  const { path, dimension, value, halfWidth, typed, assumed } = figure;
  const effect = (of: ReadonlyMap<string, number> | null): number | null =>
    of === null ? null : (of.get(path) ?? 0);
  return {
    path,
    assumed: typed === null || assumed !== null ? 'value' : 'plusMinus',
    dimension,
    value,
    plusMinus: halfWidth,
    why: assumed?.why ?? null,
    effect: { rear: effect(rear), front: effect(front) },
  };
}

function weight({ effect }: AssumptionDocument): number {
  return Math.max(effect.rear ?? 0, effect.front ?? 0);
}

/** Half-width [m] that each input alone gives the aim of an end's adjuster; null where nothing is aimed at. */
function effectsOn(planned: JobPlan, end: End): ReadonlyMap<string, number> | null {
  const spring = springInView(planned, end);
  const cells =
    spring === null ? [] : riddenCells(planned, spring).filter(({ cell }) => cell.positions !== null);
  if (cells.length === 0) return null;
  const effects = new Map<string, number>();
  for (const { cell } of cells) {
    for (const { input, halfWidth } of cell.contributions) {
      effects.set(input, Math.max(effects.get(input) ?? 0, halfWidth));
    }
  }
  return effects;
}
