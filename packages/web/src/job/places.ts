import type { JobDocument } from '@sagwright/records/schema';
import type { Place } from '@sagwright/records/schema/machine';
import { type Edit, write } from './edits.ts';

/** Places in their order. */
export function placesInOrder(job: JobDocument): readonly (readonly [string, Place])[] {
  return Object.entries(job.machine.places).sort(([a, x], [b, y]) => x.order - y.order || (a < b ? -1 : 1));
}

/** A place that was not on the machine yet; it comes last. Without `at` it lies where its kind usually does. */
export function newPlace(
  job: JobDocument,
  id: string,
  place: Pick<Place, 'name' | 'kind' | 'at' | 'carriedBy'>,
): readonly Edit[] {
  const order = Math.max(0, ...Object.values(job.machine.places).map((each) => each.order)) + 1;
  return [write(job, ['machine', 'places', id], { ...place, order })];
}

/** Everything that lies at a place, and the loads in which it does: what moves when the place is moved. */
export function atPlace(
  job: JobDocument,
  place: string,
): { readonly things: readonly string[]; readonly loads: number } {
  const things = new Set<string>();
  let loads = 0;
  for (const load of Object.values(job.loadCases)) {
    if (!('aboard' in load)) continue;
    const here = Object.values(load.aboard).filter((each) => each.place === place);
    if (here.length > 0) loads += 1;
    for (const { thing } of here) things.add(thing);
  }
  return { things: [...things], loads };
}
