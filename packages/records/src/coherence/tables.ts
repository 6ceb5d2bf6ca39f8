import { type FieldPath, type Problem, problem } from '../problem.ts';
import type { Quantity } from '../schema/quantity.ts';
import { asTyped, isBelow } from './compare.ts';

/** The rows at which a column does not go up, counted from the row before. */
export function* notRising<K extends string>(
  rows: readonly { readonly [k in K]: Quantity }[],
  column: K,
  path: FieldPath,
): Generator<Problem> {
  for (let i = 1; i < rows.length; i++) {
    const [before, here] = [rows[i - 1]![column], rows[i]![column]];
    if (!isBelow(before, here))
      yield problem([...path, i, column], 'notRising', asTyped(here), asTyped(before));
  }
}

/** The rows at which a column does not go down, counted from the row before. */
export function* notFalling<K extends string>(
  rows: readonly { readonly [k in K]: Quantity }[],
  column: K,
  path: FieldPath,
): Generator<Problem> {
  for (let i = 1; i < rows.length; i++) {
    const [before, here] = [rows[i - 1]![column], rows[i]![column]];
    if (!isBelow(here, before))
      yield problem([...path, i, column], 'notFalling', asTyped(here), asTyped(before));
  }
}
