import { lengthsToTape, type ToTape } from '@sagwright/model/rear/tape';
import type { Points } from '@sagwright/records/schema/machine';
import type { PointLength } from '@sagwright/records/schema/pointTape';
import { inOrder } from '../inputs/desk.ts';

/** The lengths that give hard points, and which of them a job has. */
export interface TapeList {
  readonly listed: readonly ListedLength[];
  /** Ids of lengths that are not on the list. */
  readonly beside: readonly string[];
}

export interface ListedLength {
  readonly wanted: ToTape;
  /** Ids in the job, in their order; more than one where it was taken again. */
  readonly taken: readonly string[];
}

export function tapeList({ kind, tape = {} }: Pick<Points, 'kind' | 'tape'>): TapeList {
  const taped = inOrder<PointLength>(tape);
  const listed = lengthsToTape[kind].map((wanted) => ({
    wanted,
    taken: taped.filter(([, length]) => isSame(length, wanted)).map(([id]) => id),
  }));
  const known = new Set(listed.flatMap(({ taken }) => taken));
  return { listed, beside: taped.map(([id]) => id).filter((id) => !known.has(id)) };
}

function isSame(length: PointLength, wanted: ToTape): boolean {
  if (wanted.kind === 'above axle') return length.kind === 'above axle' && length.of === wanted.of;
  if (length.kind !== 'between') return false;
  const ends = [length.from, length.to];
  return ends.includes(wanted.from) && ends.includes(wanted.to);
}
