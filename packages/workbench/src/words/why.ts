import type { Contribution } from '@sagwright/model/uncertainty/spread';
import { formatFigure, formatUsed, formatWidth, type ShownDimension } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import { type FigureName, figures } from '../why/figures.ts';
import type { Why } from '../why/question.ts';
import { words } from './catalogue.ts';
import { fieldName, loadName, springName } from './names.ts';

/** A figure opened up, in words. */
export interface WhyWords {
  readonly title: string;
  readonly place: string;
  readonly value: string;
  readonly equation: string;
  readonly where: readonly (readonly [symbol: string, meaning: string])[];
  readonly source: string;
  readonly inputs: readonly WhyInputWords[];
}

export interface WhyInputWords {
  /** Of its field in the job. */
  readonly path: string;
  readonly name: string;
  readonly figure: string;
  readonly origin: string;
  /** ± that it alone gives the figure, and its share of the whole. */
  readonly adds: string;
  readonly share: number;
}

export function whyWords(planned: JobPlan, why: Extract<Why, { kind: 'opened' }>, units: Units): WhyWords {
  const { title, equation, where, source } = words.why[why.figure];
  const { dimension } = figures[why.figure];
  return {
    title,
    place: placeWords(planned, why),
    value: formatFigure(why.value, dimension, units),
    equation,
    where,
    source,
    inputs: whyInputWords(planned, why.contributions, dimension, units),
  };
}

/** What the ± of a figure is made of, in words. */
export function whyInputWords(
  planned: JobPlan,
  contributions: readonly Contribution[],
  dimension: ShownDimension,
  units: Units,
): readonly WhyInputWords[] {
  return contributions.map(({ input, halfWidth, share }) => {
    const used = planned.inputs.figures.get(input)!;
    return {
      path: input,
      name: fieldName(planned.job, input),
      figure: formatUsed(used, units),
      origin: words.origins[used.origin],
      adds: formatWidth(halfWidth, dimension, units),
      share,
    };
  });
}

function placeWords(
  { job }: JobPlan,
  { figure, end, spring, loadCase }: Extract<Why, { kind: 'opened' }>,
): string {
  const load = loadCase === null || figures[figure].of === 'spring' ? null : loadName(job, loadCase);
  return words.whyPlace(end, spring === null ? null : springName(job, spring), load);
}

export function notToBeHadWords(figure: FigureName, why: Extract<Why, { kind: 'not to be had' }>): string {
  return words.whyNot(figure, words.notToBeHad[why.because](words.quoted(why.found)));
}
