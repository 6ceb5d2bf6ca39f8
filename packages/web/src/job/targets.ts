import type { JobDocument } from '@sagwright/records/schema';
import type { TargetSet } from '@sagwright/records/schema/targets';
import { type Edit, write } from './edits.ts';

export type TargetRow = TargetSet['rows'][string];

/** Uses a set that the job has. */
export function takeOwnSet(job: JobDocument, id: string): readonly Edit[] {
  return [write(job, ['targetSet'], id)];
}

/** Copies a set that comes with the program into the job, where it can be changed, and uses it. */
export function takeShippedSet(job: JobDocument, id: string, shipped: TargetSet): readonly Edit[] {
  const order = Math.max(0, ...Object.values(job.targetSets).map((set) => set.order)) + 1;
  return [write(job, ['targetSets', id], { ...shipped, order }), write(job, ['targetSet'], id)];
}

/** Rows of a set in their order: the first that matches a load is taken. */
export function rowsInOrder(set: TargetSet): readonly (readonly [string, TargetRow])[] {
  return Object.entries(set.rows).sort(([a, x], [b, y]) => x.order - y.order || (a < b ? -1 : 1));
}

/** Changes one thing of a row; `undefined` takes it away. */
export function changeRow<K extends keyof TargetRow>(
  job: JobDocument,
  set: string,
  row: string,
  name: K,
  value: TargetRow[K] | undefined,
): readonly Edit[] {
  return [write(job, ['targetSets', set, 'rows', row, name], value)];
}

/** Changes the wanted sag of a row, as a whole: its three figures are all shares or all lengths. */
export function changeWanted(
  job: JobDocument,
  set: string,
  row: string,
  wanted: TargetRow['wanted'],
): readonly Edit[] {
  return [write(job, ['targetSets', set, 'rows', row, 'wanted'], wanted)];
}

/** A row like another one, right behind it. */
export function copyRow(job: JobDocument, set: string, row: string, id: string): readonly Edit[] {
  const rows = job.targetSets[set]!.rows;
  const behind = Object.values(rows).filter((each) => each.order > rows[row]!.order);
  const next = Math.min(...behind.map((each) => each.order), rows[row]!.order + 2);
  return [
    write(job, ['targetSets', set, 'rows', id], { ...rows[row]!, order: (rows[row]!.order + next) / 2 }),
  ];
}

export function removeRow(job: JobDocument, set: string, row: string): readonly Edit[] {
  return [write(job, ['targetSets', set, 'rows', row], undefined)];
}

export function renameSet(
  job: JobDocument,
  set: string,
  name: 'name' | 'origin',
  value: string,
): readonly Edit[] {
  return [write(job, ['targetSets', set, name], value)];
}
