import type { Units } from '../format/units.ts';
import type { UsedFigure } from '../inputs/take.ts';
import type { JobPlan } from '../path.ts';
import { assumptionsOf } from '../result/assumptions.ts';
import { assumptionWords, effectWords } from '../words/assumed.ts';
import { noteWords } from '../words/notes.ts';
import type { AssumedView } from './shapes.ts';

/** What is said about the sum, in words. */
export function noteViews(planned: JobPlan, units: Units): readonly string[] {
  return planned.inputs.notes.map((note) => noteWords(planned, note, units));
}

/** Figures that nobody gave, those that matter most for the collars first. */
export function assumedViews(planned: JobPlan, units: Units): readonly AssumedView[] {
  return assumptionsOf(planned)
    .filter(({ assumed }) => assumed === 'value')
    .map((assumption) => ({
      path: assumption.path,
      value: assumptionWords(planned, assumption, units),
      figure: figureOf(planned.inputs.figures.get(assumption.path)!),
      effect: {
        rear: effectWords(planned, assumption, 'rear', units),
        front: effectWords(planned, assumption, 'front', units),
      },
    }));
}

function figureOf({ value, halfWidth, assumed }: UsedFigure): AssumedView['figure'] {
  const { unit, why } = assumed!;
  return { value, halfWidth, unit, why };
}
