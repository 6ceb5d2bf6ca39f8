import type { bounds } from '@sagwright/records/schema/bounds';
import { type OutOfBounds, type Quantity, quantities } from '@sagwright/records/schema/quantity';
import { sentences } from '@sagwright/records/wording/sentences';
import { sentence } from '../words/fields.ts';

export type BoundName = keyof typeof bounds;

/** What is wrong with a figure, in the words of the job file: found, allowed, what to do; null where it may stand. */
export function outOfBounds(quantity: Quantity, bound: BoundName): string | null {
  const judged = quantities[bound].safeParse(quantity);
  if (judged.success) return null;
  const issue = judged.error.issues.find(({ code }) => code === 'custom');
  if (issue?.code !== 'custom') {
    throw new RangeError(`${quantity.value} ${quantity.unit} is no quantity that ${bound} could judge`);
  }
  const { rule, bound: range, typed } = issue.params as OutOfBounds;
  const { value, unit } = rule === 'plusMinusOutOfBounds' ? typed.plusMinus! : typed;
  return sentence(sentences[rule](value, unit, range));
}
