import type { JobDocument } from '@sagwright/records/schema';
import type { Spring } from '@sagwright/records/schema/springs';
import { freeId } from '@sagwright/records/template/freeId';

type Springs = JobDocument['springs'];

/** Springs of a job and those that come with a template, after them; `ids` tells which is which where an id was taken already. */
export function withSprings(
  there: Springs,
  coming: Springs,
): { readonly springs: Springs; readonly ids: ReadonlyMap<string, string> } {
  const springs = { ...there };
  const ids = new Map<string, string>();
  for (const [id, spring] of Object.entries(coming)) {
    const own = freeId(id, (other) => springs[other] === undefined || isSame(springs[other], spring));
    ids.set(id, own);
    springs[own] ??= {
      ...spring,
      order: 1 + Math.max(0, ...Object.values(springs).map(({ order }) => order)),
    };
  }
  return { springs, ids };
}

/** The same spring, wherever it lies and stands in its list. */
function isSame(a: Spring, b: Spring): boolean {
  const bare = ({ name, end, rate, freeLength, solidLength }: Spring): string =>
    JSON.stringify([name, end, rate, freeLength, solidLength]);
  return bare(a) === bare(b);
}
