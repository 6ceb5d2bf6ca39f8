import type { JobDocument } from '@sagwright/records/schema';
import type { Place } from '@sagwright/records/schema/machine';
import { loadsInOrder } from '../job/loads.ts';
import { placesInOrder } from '../job/places.ts';

/** Things of the job that are not on a load, in their order. */
export function thingsAshore(job: JobDocument, load: string | null): readonly string[] {
  const aboard = new Set(aboardOf(job, load).map(({ thing }) => thing));
  return Object.entries(job.things)
    .filter(([id]) => !aboard.has(id))
    .sort(([a, x], [b, y]) => x.order - y.order || (a < b ? -1 : 1))
    .map(([id]) => id);
}

/**
 * The place that is offered for a thing: where it lies in another load; else, for a person, the first seat that nobody sits
 * on, for anything else the first place that is no seat. '' where there is none.
 */
export function placeFor(
  job: JobDocument,
  load: string | null,
  thing: string,
  kind: 'person' | 'item',
): string {
  const before = loadsInOrder(job)
    .flatMap(([id]) => aboardOf(job, id))
    .find((each) => each.thing === thing);
  if (before !== undefined) return before.place;
  const taken = new Set(aboardOf(job, load).map(({ place }) => place));
  const fits = ([id, place]: readonly [string, Place]): boolean =>
    kind === 'person' ? isSeat(place) && !taken.has(id) : !isSeat(place);
  return placesInOrder(job).find(fits)?.[0] ?? '';
}

function isSeat({ kind }: Place): boolean {
  return kind === 'rider seat' || kind === 'passenger seat';
}

function aboardOf(
  job: JobDocument,
  load: string | null,
): readonly { readonly thing: string; readonly place: string }[] {
  const loadCase = load === null ? undefined : job.loadCases[load];
  return loadCase !== undefined && 'aboard' in loadCase ? Object.values(loadCase.aboard) : [];
}
