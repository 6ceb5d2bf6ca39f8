import { type FieldPath, type Problem, problem } from '../problem.ts';
import { type Quantity, siOf } from '../schema/quantity.ts';
import { asTyped, isBelow } from './compare.ts';

/** Force against compression: both columns go up from 0. */
export function* forceTableProblems(
  rows: readonly { readonly compression: Quantity; readonly force: Quantity }[],
  path: FieldPath,
): Generator<Problem> {
  for (const column of ['compression', 'force'] as const) {
    const first = rows[0]![column];
    if (siOf(first) !== 0) yield problem([...path, 0, column], 'notFromZero', asTyped(first));
    yield* notRising(rows, column, path);
  }
}

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
