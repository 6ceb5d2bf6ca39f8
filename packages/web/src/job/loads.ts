import type { JobDocument } from '@sagwright/records/schema';
import type { LoadCase } from '@sagwright/records/schema/loads';
import { inOrder } from '@sagwright/workbench/inputs/desk';
import { type Edit, write } from './edits.ts';
import { nextOrder } from './nextOrder.ts';

/**
 * What hands do with loads: each makes the edits of one act. Ids come in from the page. The document is a job that was read,
 * so its lists are there.
 */
type Job = JobDocument;

/** Loads in their order. */
export function loadsInOrder(job: Job): readonly (readonly [string, LoadCase])[] {
  return inOrder(job.loadCases);
}

/** A new load: a copy of another, or the bare machine where `from` is null. It comes last and is not ridden yet. */
export function newLoad(job: Job, id: string, name: string, from: string | null): readonly Edit[] {
  const order = nextOrder(job.loadCases);
  const copied = from === null ? null : job.loadCases[from]!;
  const load = copied === null ? { name, order, share: 0, aboard: {} } : { ...copied, name, order, share: 0 };
  return [write(job, ['loadCases', id], load)];
}

export function removeLoad(job: Job, id: string): readonly Edit[] {
  const ofBeam = job.machine.beam?.load === id ? [write(job, ['machine', 'beam', 'load'], undefined)] : [];
  return [write(job, ['loadCases', id], undefined), ...ofBeam];
}

/** Moves a load one place up or down among its neighbours: the two change their order. */
export function moveLoad(job: Job, id: string, by: -1 | 1): readonly Edit[] {
  const loads = loadsInOrder(job);
  const here = loads.findIndex(([each]) => each === id);
  const beside = loads[here + by];
  if (here < 0 || beside === undefined) return [];
  return loads.flatMap(([each], i) => {
    const order = i === here ? here + by : i === here + by ? here : i;
    return [write(job, ['loadCases', each, 'order'], order + 1)];
  });
}

/** Puts a thing on a load at a place. */
export function putOn(
  job: Job,
  load: string,
  aboardId: string,
  thing: string,
  place: string,
): readonly Edit[] {
  return [write(job, ['loadCases', load, 'aboard', aboardId], { thing, place })];
}

export function takeOff(job: Job, load: string, aboardId: string): readonly Edit[] {
  return [write(job, ['loadCases', load, 'aboard', aboardId], undefined)];
}

/** Moves what lies on a load to another place. */
export function moveTo(job: Job, load: string, aboardId: string, place: string): readonly Edit[] {
  return [write(job, ['loadCases', load, 'aboard', aboardId, 'place'], place)];
}

/** A thing that was not in the job yet. */
export function newThing(
  job: Job,
  id: string,
  name: string,
  kind: 'person' | 'item',
  mass: unknown,
): readonly Edit[] {
  const order = nextOrder(job.things);
  return [write(job, ['things', id], { name, order, kind, mass })];
}
