import type { JobDocument } from '@sagwright/records/schema';
import type { LoadCase } from '@sagwright/records/schema/loads';
import type { TargetSet } from '@sagwright/records/schema/targets';
import { inOrder } from '../inputs/desk.ts';

/** The first row of a set, for one end, that matches who and what is aboard a load; a load that was weighed whole matches none. */
export function rowOfLoad(
  job: JobDocument,
  end: 'rear' | 'front',
  loadCase: LoadCase,
  set: TargetSet,
): { readonly id: string; readonly row: TargetSet['rows'][string] } | undefined {
  if ('scales' in loadCase) return undefined;
  const things = Object.values(loadCase.aboard).map(({ thing }) => job.things[thing]!);
  const people = things.filter((thing) => thing.kind === 'person').length;
  const luggage = things.some((thing) => thing.kind === 'item') ? 'with' : 'without';
  const found = inOrder(set.rows).find(
    ([, row]) =>
      row.end === end &&
      people >= row.people.least &&
      people <= row.people.most &&
      (row.luggage === undefined || row.luggage === luggage),
  );
  return found === undefined ? undefined : { id: found[0], row: found[1] };
}
