import { at, type Change, type Edit, write } from './edits.ts';

/**
 * Brings something back as it was when it was of a kind before, with all that was changed along with it, so that a slip from one kind to
 * another and back loses no figure. Null where it was never of that kind.
 */
export function formerKind(
  document: unknown,
  done: readonly Change[],
  path: readonly string[],
  /** Left out of the job, it had none. */
  kind: string | undefined,
): readonly Edit[] | null {
  return formerValue(document, done, path, (before) => at(before, ['kind']) === kind);
}

/** The same of anything by which it is known what it was. */
export function formerValue(
  document: unknown,
  done: readonly Change[],
  path: readonly string[],
  wasIt: (before: unknown) => boolean,
): readonly Edit[] | null {
  const isIt = (edit: Edit): boolean => edit.path.join('.') === path.join('.') && wasIt(edit.before);
  const change = done.findLast(({ edits }) => edits.some(isIt));
  if (change === undefined) return null;
  return change.edits
    .filter((edit) => at(document, edit.path.slice(0, -1)) !== undefined)
    .map((edit) => write(document, edit.path, edit.before));
}
