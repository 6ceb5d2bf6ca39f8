import { parseJob } from '@sagwright/records/read';
import type { Template } from '@sagwright/records/schema/template';
import { compare } from '../compare/compare.ts';
import type { ComparedPart } from '../compare/comparison.ts';
import { type Compared, partsToCompare } from '../compare/side.ts';
import { type ComparedLine, comparedLines, countWords } from '../words/compare.ts';

/** One of the two, as the page has it: the job on its table may be none yet. */
export type CompareSide =
  | { readonly from: 'job'; readonly document: unknown }
  | { readonly from: 'template'; readonly template: Template };

export interface CompareQuestion {
  readonly a: CompareSide;
  readonly b: CompareSide;
  /** Null: the largest that both have. */
  readonly part: ComparedPart | null;
}

export interface CompareView {
  /** What both have. */
  readonly parts: readonly ComparedPart[];
  readonly part: ComparedPart;
  readonly count: string;
  /** Those that differ first. */
  readonly lines: readonly ComparedLine[];
}

/** Two jobs or templates field by field, in words; or why they cannot be laid beside each other. */
export function compareView({
  a,
  b,
  part: asked,
}: CompareQuestion): CompareView | 'no job' | 'nothing in common' {
  const [one, other] = [comparedOf(a), comparedOf(b)];
  if (one === null || other === null) return 'no job';
  const parts = partsToCompare(one, other);
  const part = parts.find((each) => each === asked) ?? parts[0];
  if (part === undefined) return 'nothing in common';
  const comparison = compare(one, other, part);
  return { parts, part, count: countWords(comparison), lines: comparedLines(one, other, comparison, '.') };
}

function comparedOf(side: CompareSide): Compared | null {
  if (side.from === 'template') return side;
  const read = parseJob(side.document);
  return read.ok ? { from: 'job', job: read.job } : null;
}
