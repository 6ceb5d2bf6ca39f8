import type { Problem, ProblemCode } from '@sagwright/records/problem';
import type { JobDocument } from '@sagwright/records/schema';
import type { Figure } from '../machine/figures/figure.ts';
import { figureGroups } from '../machine/figures/groups.ts';

/**
 * Whether a document with these problems can be laid on the table and mended there without loss: all of it is of the kinds that the
 * page shows, and each problem has its field. What is not keeps its text and its list, for a text editor.
 */
export function isMendable(document: unknown, problems: readonly Problem[]): boolean {
  if (problems.some(({ code }) => unshowable.has(code))) return false;
  const fields = fieldsOf(document as JobDocument);
  return problems.every((problem) => fields.some((field) => isMendedIn(field, problem)));
}

/** A field that the page does not show, or a name of which one would be lost. */
const unshowable: ReadonlySet<ProblemCode> = new Set<ProblemCode>([
  'badId',
  'fileTooLong',
  'forbiddenName',
  'moreProblems',
  'nameTwice',
  'newerVersion',
  'notAJob',
  'notFinite',
  'notJson',
  'tooDeep',
  'unknownField',
  'wrongVersion',
  'wrongWord',
]);

/** What a field shows as it was typed only where it is the field of a quantity, which says itself what it cannot read. */
const unreadable: ReadonlySet<ProblemCode> = new Set<ProblemCode>(['wrongKind', 'wrongUnit']);

/** The fields that the page has for a document; none where a part is missing that they are found by. */
function fieldsOf(job: JobDocument): readonly Figure[] {
  try {
    return figureGroups(job).flatMap(({ parts }) => parts.flatMap(({ figures }) => figures));
  } catch (error) {
    if (error instanceof TypeError) return [];
    throw error;
  }
}

/**
 * A problem speaks of a field, of a part of it, or of what holds it. What is missing must be the field itself, or belong to a quantity;
 * and no choice, since other fields hang on it.
 */
function isMendedIn({ kind, path: field }: Figure, { code, path }: Problem): boolean {
  const isWithin = path === field || path.startsWith(`${field}.`);
  if (unreadable.has(code)) return isWithin && kind === 'quantity';
  if (code === 'missing') return kind === 'quantity' ? isWithin : path === field && kind !== 'choice';
  return isWithin || field.startsWith(`${path}.`);
}
