import type { JobDocument } from '@sagwright/records/schema';
import type { TargetSet } from '@sagwright/records/schema/targets';
import { inOrder } from '@sagwright/workbench/inputs/desk';
import { type Edit, write } from './edits.ts';
import { nextOrder } from './nextOrder.ts';

export type TargetRow = TargetSet['rows'][string];

/** Uses a set that the job has. */
export function takeOwnSet(job: JobDocument, id: string): readonly Edit[] {
  return [write(job, ['targetSet'], id)];
}

/** Copies a set that comes with the program into the job under a name, where it can be changed, and uses it. */
export function takeShippedSet(
  job: JobDocument,
  id: string,
  shipped: TargetSet,
  name: string,
): readonly Edit[] {
  const order = nextOrder(job.targetSets);
  return [write(job, ['targetSets', id], { ...shipped, name, order }), write(job, ['targetSet'], id)];
}

/** The sets of the job in their order. */
export function setsInOrder(job: JobDocument): readonly (readonly [string, TargetSet])[] {
  return inOrder(job.targetSets);
}

/** Rows of a set in their order: the first that matches a load is taken. */
export function rowsInOrder(set: TargetSet): readonly (readonly [string, TargetRow])[] {
  return inOrder(set.rows);
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

/** A row for an end, the last of its set: it holds for everybody, and wants what is given. */
export function newRow(
  job: JobDocument,
  set: string,
  id: string,
  end: TargetRow['end'],
  wanted: TargetRow['wanted'],
): readonly Edit[] {
  const order = nextOrder(job.targetSets[set]!.rows);
  const row: TargetRow = { order, end, people: { least: 0, most: 10 }, wanted };
  return [write(job, ['targetSets', set, 'rows', id], row)];
}

/** Moves a row one place up or down among those of its end: where several match a load, the upper one is taken. */
export function moveRow(job: JobDocument, set: string, row: string, by: -1 | 1): readonly Edit[] {
  const rows = rowsInOrder(job.targetSets[set]!);
  const here = rows.findIndex(([id]) => id === row);
  const ofEnd = rows.flatMap(([, each], i) => (each.end === rows[here]?.[1].end ? [i] : []));
  const beside = ofEnd[ofEnd.indexOf(here) + by];
  if (here < 0 || beside === undefined) return [];
  return rows.map(([id], i) => {
    const place = i === here ? beside : i === beside ? here : i;
    return write(job, ['targetSets', set, 'rows', id, 'order'], place + 1);
  });
}

/** Takes a set out of the job; where it was in use, another is. */
export function removeSet(job: JobDocument, set: string): readonly Edit[] {
  return [
    write(job, ['targetSets', set], undefined),
    ...(job.targetSet === set ? [write(job, ['targetSet'], undefined)] : []),
  ];
}

/** What one load wants of an end before any set; `undefined` leaves it to the set again. */
export function wantOfLoad(
  job: JobDocument,
  load: string,
  end: TargetRow['end'],
  wanted: TargetRow['wanted'] | undefined,
): readonly Edit[] {
  const other = job.loadCases[load]?.wanted?.[end === 'rear' ? 'front' : 'rear'];
  const path = ['loadCases', load, 'wanted'];
  if (wanted === undefined && other === undefined) return [write(job, path, undefined)];
  return [write(job, [...path, end], wanted)];
}

export function renameSet(
  job: JobDocument,
  set: string,
  name: 'name' | 'origin',
  value: string,
): readonly Edit[] {
  return [write(job, ['targetSets', set, name], value)];
}
