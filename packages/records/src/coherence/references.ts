import { type FieldPath, type Problem, problem } from '../problem.ts';
import { nearest } from '../wording/nearest.ts';

/** A reference to a member that the list does not have. */
export function noSuch(path: FieldPath, what: string, id: string, list: object): Problem {
  const ids = Object.keys(list);
  return problem(path, 'noSuch', what, id, ids, nearest(id, ids));
}
