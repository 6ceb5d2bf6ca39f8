import type { TemplateKind } from '@sagwright/records/schema/template';
import type { Unit } from '@sagwright/records/units';

/** What is compared of two jobs or templates. */
export type ComparedPart = TemplateKind;

/**
 * `same`: as it was typed. `equal`: typed in two units, and the same once they are off, within the digits that were typed. `within`
 * and `beyond`: they differ by less, or by more, than both ± together. `differs`: so do they, and a ± is not told of both, or there can be none.
 */
export type CompareVerdict = 'same' | 'equal' | 'within' | 'beyond' | 'differs' | 'only in a' | 'only in b';

/** Two units of one figure are no difference. */
export function isDifference(verdict: CompareVerdict): boolean {
  return verdict !== 'same' && verdict !== 'equal';
}

/** A figure as it stands in one of the two. */
export interface ComparedFigure {
  /** As typed: 160, "lbf/in". */
  readonly typed: number;
  readonly unit: Unit;
  /** SI; a motion ratio as leverage. */
  readonly value: number;
  /** SI; as typed, else the usual one of such a reading; null where neither is known. */
  readonly plusMinus: number | null;
}

/** A word, a count or a yes; a whole part is told as `part`, by its name where it has one. */
export type ComparedValue =
  | { readonly kind: 'figure'; readonly figure: ComparedFigure }
  | { readonly kind: 'word'; readonly word: string | number | boolean }
  | { readonly kind: 'part'; readonly name: string | null };

export interface ComparedRow {
  /** In the first; in the second too, but for the ids of lists. */
  readonly path: string;
  readonly pathInB: string;
  readonly verdict: CompareVerdict;
  readonly a: ComparedValue | null;
  readonly b: ComparedValue | null;
  /** Second less first, SI; null but for two figures that differ. */
  readonly difference: number | null;
  /** Of the difference, SI: √(±a² + ±b²), since each was read by itself. */
  readonly plusMinus: number | null;
}

export const comparisonFormat = 'sagwright-comparison';
export const comparisonVersion = 1;

/** Two machines, shocks or forks, field by field: SI, with what was typed beside it. Documented in docs/template-file.md. */
export interface Comparison {
  readonly format: typeof comparisonFormat;
  readonly version: typeof comparisonVersion;
  readonly part: ComparedPart;
  readonly a: ComparedSide;
  readonly b: ComparedSide;
  /** Those that differ first, in the order of the file. */
  readonly rows: readonly ComparedRow[];
}

export interface ComparedSide {
  readonly name: string;
  readonly from: 'job' | 'template';
}
