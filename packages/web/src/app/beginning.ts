import type { OpenedFile } from '../files/openFile.ts';
import type { JobState } from '../job/jobStore.ts';
import { isPromised, type Kept, type Shelf } from '../storage/shelf.ts';
import type { Saving } from './saving.ts';

/** What the page begins with: a job on the table, how it is kept, and the file that could not be read as one. */
export interface Beginning {
  readonly job: JobState;
  /** The job as it lies on the shelf; null where it does not. */
  readonly kept: Kept | null;
  readonly saving: Saving;
}

/**
 * The job that was brought along; else the one that lay on this page's table last; else the one kept last; else the demo job. Without
 * a shelf, the last of them.
 */
export async function beginning(
  brought: OpenedFile | null,
  shelf: Pick<Shelf, 'one' | 'latest'> | null,
  onTable: string | null,
  demo: JobState,
): Promise<Beginning> {
  if (brought?.kind === 'job') {
    return { job: { id: demo.id, document: brought.job, changes: [] }, kept: null, saving: 'keeping' };
  }
  if (shelf === null) return { job: demo, kept: null, saving: 'example' };
  try {
    const kept = (onTable === null ? null : await shelf.one(onTable)) ?? (await shelf.latest());
    if (kept === null) return { job: demo, kept, saving: 'example' };
    const { id, document, changes } = kept;
    return { job: { id, document, changes }, kept, saving: (await isPromised()) ? 'kept' : 'may be cleared' };
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
    return { job: demo, kept: null, saving: 'refused' };
  }
}
