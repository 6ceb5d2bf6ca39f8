import type { bounds } from '@sagwright/records/schema/bounds';
import { type OutOfBounds, type Quantity, quantities } from '@sagwright/records/schema/quantity';
import { sentences } from '@sagwright/records/wording/sentences';
import { sentence } from '../words/fields.ts';

export type BoundName = keyof typeof bounds;

/** What is wrong with a figure or with its ±, in the words of the job file. */
export interface Broken {
  readonly about: 'figure' | 'sure';
  /** Found, allowed, what to do. */
  readonly why: string;
}

/** Judges a figure and its ± by a bound of records, in SI whatever unit was typed; null where it may stand. */
export function outOfBounds(quantity: Quantity, bound: BoundName): Broken | null {
  const judged = quantities[bound].safeParse(quantity);
  if (judged.success) return null;
  const issue = judged.error.issues.find(({ code }) => code === 'custom');
  if (issue?.code !== 'custom') {
    throw new RangeError(`${quantity.value} ${quantity.unit} is no quantity that ${bound} could judge`);
  }
  const { rule, bound: range, typed } = issue.params as OutOfBounds;
  const about = rule === 'plusMinusOutOfBounds' ? 'sure' : 'figure';
  const { value, unit } = about === 'sure' ? typed.plusMinus! : typed;
  return { about, why: sentence(sentences[rule](value, unit, range)) };
}
