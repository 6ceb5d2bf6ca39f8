import type { Change } from '../job/edits.ts';
import type { JobState } from '../job/jobStore.ts';
import type { Kept } from '../storage/kept.ts';
import type { Shelf } from '../storage/shelf.ts';
import type { Saving } from './saving.ts';

/** What the page begins with: a job on the table, and how it is kept. */
export interface Beginning {
  readonly job: JobState;
  /** The job as it lies on the shelf; null where it does not. */
  readonly kept: Kept | null;
  readonly saving: Saving;
}

/** What a window may begin with. */
export interface Beginnings {
  readonly shelf: Pick<Shelf, 'one' | 'latest' | 'isPromised'>;
  /** The job that this window was left with before it was kept. */
  readonly left: JobState | null;
  /** Id of the job that lay on this window's table last. */
  readonly onTable: string | null;
  readonly demo: JobState;
}

/**
 * The job that the window was left with, to be kept at once; else the one that lay on its table last; else the one kept last; else the
 * demo job.
 */
export async function beginning({ shelf, left, onTable, demo }: Beginnings): Promise<Beginning> {
  try {
    if (left !== null) return await continued(left, shelf);
    const kept = (onTable === null ? null : await shelf.one(onTable)) ?? (await shelf.latest());
    return kept === null ? { job: demo, kept, saving: 'example' } : asKept(kept, shelf);
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
    return { job: left ?? demo, kept: null, saving: 'refused' };
  }
}

async function asKept(kept: Kept, shelf: Beginnings['shelf']): Promise<Beginning> {
  const { id, document, changes } = kept;
  return {
    job: { id, document, changes },
    kept,
    saving: (await shelf.isPromised()) ? 'kept' : 'may be cleared',
  };
}

/**
 * What was on its way to the shelf when the window was left may have arrived there, all of it or the first acts. Where another window
 * did other things meanwhile, the job is as one that was never kept, so that it goes on as a copy.
 */
async function continued(left: JobState, shelf: Beginnings['shelf']): Promise<Beginning> {
  const kept = await shelf.one(left.id);
  if (kept !== null && beginsWith(kept.changes, left.changes)) return asKept(kept, shelf);
  const isOurs = kept !== null && beginsWith(left.changes, kept.changes);
  return { job: left, kept: isOurs ? kept : null, saving: 'keeping' };
}

function beginsWith(changes: readonly Change[], first: readonly Change[]): boolean {
  return JSON.stringify(changes.slice(0, first.length)) === JSON.stringify(first);
}
