import type { JobDocument } from '@sagwright/records/schema';
import type { LoadCase } from '@sagwright/records/schema/loads';
import { type Change, type Edit, write } from './edits.ts';

/** What two scales read with all of a load aboard, and how high that lies. */
export type Scales = Extract<LoadCase, { readonly scales: unknown }>['scales'];

/** Lets two scales stand for what is listed aboard a load; the list is in the job's history from then on. */
export function goByScales(job: JobDocument, load: string, scales: Scales): readonly Edit[] {
  return [write(job, pathTo(load, 'scales'), scales), write(job, pathTo(load, 'aboard'), undefined)];
}

/** Lists again what was aboard before the scales stood for it; nothing where the load was never listed. */
export function goByThings(job: JobDocument, done: readonly Change[], load: string): readonly Edit[] {
  return [
    write(job, pathTo(load, 'aboard'), lastTakenAway(done, load, 'aboard') ?? {}),
    write(job, pathTo(load, 'scales'), undefined),
  ];
}

/** What the scales read when they last stood for this load, so that nobody has to type it twice. */
export function formerScales(done: readonly Change[], load: string): Scales | undefined {
  return lastTakenAway(done, load, 'scales') as Scales | undefined;
}

function lastTakenAway(done: readonly Change[], load: string, part: 'aboard' | 'scales'): unknown {
  const path = pathTo(load, part).join('.');
  return done
    .flatMap(({ edits }) => edits)
    .findLast((edit) => edit.path.join('.') === path && edit.before !== undefined && edit.after === undefined)
    ?.before;
}

function pathTo(load: string, part: 'aboard' | 'scales'): readonly string[] {
  return ['loadCases', load, part];
}
