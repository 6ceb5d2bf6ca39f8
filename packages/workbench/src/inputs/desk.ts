import type { JobDocument } from '@sagwright/records/schema';
import type { Take } from './take.ts';
import type { TapedPlaces } from './tapedRows.ts';
import type { FittedTape } from './tapeFitted.ts';

/** What cannot be computed with, and why, with the path of the field that caused it. */
export interface InputProblem {
  readonly path: string;
  readonly code: 'impossible' | 'out of scope';
  readonly message: string;
}

/** Something said about the sum that is no figure: a part not known, a caution. Worded by the catalogue. */
export interface Note {
  readonly code: NoteCode;
  readonly path: string;
}

export type NoteCode =
  | 'rubber not known'
  | 'rubber carried on'
  | 'top-out not known'
  | 'axle path straight'
  | 'front path straight'
  | 'travel carried on'
  | 'taped point left out'
  | 'points beyond shock'
  | 'sideways not known'
  | 'places only looked for'
  | 'place found elsewhere'
  | 'drive without pivot'
  | 'one diameter for bore and seal'
  | 'spring volume not known'
  | 'stack read relaxed'
  | 'bushes and pivot friction zero'
  | 'target set shipped'
  | 'no target'
  | 'fuel not known'
  | 'riding height control'
  | 'sides differ'
  | 'locked as measured'
  | 'position not known'
  | 'places not checked';

/** What lies on the desk while a job is taken apart. */
export interface Desk {
  readonly job: JobDocument;
  readonly take: Take;
  /** The curve through taped points, fitted once; null where the rear was not taped. */
  readonly tape: FittedTape | null;
  /** Hard points from a tape, found once; null where none was laid. */
  readonly places: TapedPlaces | null;
  readonly problems: InputProblem[];
  readonly notes: Note[];
}

/** A desk with a job on it of which no curve was fitted and no place found from a tape, and nothing is told yet. */
export function deskOf(job: JobDocument, take: Take): Desk {
  return { job, take, tape: null, places: null, problems: [], notes: [] };
}

export function impossible(desk: Desk, path: string, message: string): void {
  desk.problems.push({ path, code: 'impossible', message });
}

export function note(desk: Desk, code: NoteCode, path: string): void {
  if (!desk.notes.some((each) => each.code === code && each.path === path)) desk.notes.push({ code, path });
}

/** Members of a list in their order, with their ids. */
export function inOrder<T extends { readonly order: number }>(
  members: Readonly<Record<string, T>>,
): readonly (readonly [string, T])[] {
  return Object.entries(members).sort(([a, x], [b, y]) => x.order - y.order || (a < b ? -1 : 1));
}
