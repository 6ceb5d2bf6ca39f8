import type { Figure } from '@sagwright/model/plan/answer';
import type { Contribution } from '@sagwright/model/uncertainty/spread';
import type { End } from '../result/inView.ts';
import type { notToBeHad } from '../words/english/why.ts';
import type { FigureName } from './figures.ts';

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

/** A figure's value and what its ± is made of; or why it cannot be had. */
export type Opened =
  | { readonly value: Figure; readonly contributions: readonly Contribution[] }
  | keyof typeof notToBeHad;
