import type { JobDocument } from '@sagwright/records/schema';
import type { Place } from '@sagwright/records/schema/machine';
import { inOrder } from '@sagwright/workbench/inputs/desk';
import { type Edit, write } from './edits.ts';
import { nextOrder } from './nextOrder.ts';

/** Places in their order. */
export function placesInOrder(job: JobDocument): readonly (readonly [string, Place])[] {
  return inOrder(job.machine.places);
}

/** A place that was not on the machine yet; it comes last. Without `at` it lies where its kind usually does. */
export function newPlace(
  job: JobDocument,
  id: string,
  place: Pick<Place, 'name' | 'kind' | 'at' | 'carriedBy'>,
): readonly Edit[] {
  const order = nextOrder(job.machine.places);
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
