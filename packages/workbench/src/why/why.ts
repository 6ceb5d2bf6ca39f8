import type { Figure } from '@sagwright/model/plan/answer';
import type { Contribution } from '@sagwright/model/uncertainty/spread';
import type { JobPlan } from '../path.ts';
import type { End } from '../result/inView.ts';
import type { notToBeHad } from '../words/english/why.ts';
import { cellFigure } from './cellFigures.ts';
import { type FigureName, figures } from './figures.ts';
import { axleLoad } from './loadFigures.ts';
import { placeOf } from './place.ts';

/** Which figure of the plan is asked about; what is left out is the spring in view and the load that is ridden most. */
export interface WhyQuestion {
  readonly figure: FigureName;
  readonly end: End;
  readonly spring: string | null;
  readonly loadCase: string | null;
}

/** A figure opened up, or why it cannot be. */
export type Why =
  | {
      readonly kind: 'opened';
      readonly figure: FigureName;
      readonly end: End;
      readonly spring: string | null;
      readonly loadCase: string | null;
      /** SI. */
      readonly value: Figure;
      /** What its ± is made of, the greatest first; inputs by their path in the job. */
      readonly contributions: readonly Contribution[];
    }
  | { readonly kind: 'not to be had'; readonly because: keyof typeof notToBeHad; readonly found: string };

/** Opens a figure of the plan up: what it is made of is worked out now, when it is asked for. */
export function why(planned: JobPlan, question: WhyQuestion): Why {
  const { figure, end } = question;
  const place = placeOf(planned, question);
  if (place.kind === 'nowhere') return { kind: 'not to be had', because: place.because, found: place.found };
  const { loadCase, spring } = place;
  const opened =
    figures[figure].of === 'load'
      ? axleLoad(planned, end, loadCase)
      : cellFigure(planned, figure, end, spring!, loadCase);
  if (typeof opened === 'string') return { kind: 'not to be had', because: opened, found: '' };
  return {
    kind: 'opened',
    figure,
    end,
    spring: spring?.spring ?? null,
    loadCase: loadCase.id,
    ...opened,
  };
}

/** A figure's value and what its ± is made of; or why it cannot be had. */
export type Opened =
  | { readonly value: Figure; readonly contributions: readonly Contribution[] }
  | keyof typeof notToBeHad;
