import { at, write } from '../job/edits.ts';
import type { JobState, JobStore } from '../job/jobStore.ts';
import type { Kept } from '../storage/kept.ts';
import type { Shelf } from '../storage/shelf.ts';
import { keeping as words } from '../words/files.ts';
import { createKeepLine } from './keepLine.ts';
import type { Saving } from './saving.ts';

/** Keeps the job on the table on the browser's shelf at each change. */
export interface Keeper {
  readonly state: () => Saving;
  readonly subscribe: (listener: () => void) => () => void;
  /** Puts a job on the table as it lies on the shelf. */
  readonly layKept: (kept: Kept) => void;
  /** Keeps the job on the table as it stands. */
  readonly keepNow: () => void;
}

/** What the keeper needs around it. */
export interface KeeperDesk {
  readonly store: JobStore;
  readonly shelf: Pick<Shelf, 'keep' | 'askToPersist'>;
  /** Where the pages of this browser tell each other the id of a job that they kept. */
  readonly pages: Pick<BroadcastChannel, 'postMessage' | 'onmessage'>;
  readonly now: () => string;
  readonly newId: () => string;
}

/**
 * `begin` is the job on the table as it was kept; null where it was not yet. No two pages write over each other: the one that
 * comes second goes on as a copy, so that nothing is lost and nothing is mixed.
 */
export function createKeeper(desk: KeeperDesk, begin: Kept | null, beginsAs: Saving): Keeper {
  const { store, shelf, pages, now, newId } = desk;
  let state = beginsAs;
  let promised: boolean | null = beginsAs === 'kept' || null;
  let copied = false;
  let asItLies: JobState | null = null;
  const seen = new Map(begin === null ? [] : [[begin.id, begin.kept] as const]);
  const listeners = new Set<() => void>();
  const say = (next: Saving): void => {
    state = next;
    for (const listener of listeners) listener();
  };
  const line = createKeepLine({
    keep: async (job) => {
      const kept = now();
      const outcome = await shelf.keep({ ...job, kept }, seen.get(job.id) ?? null);
      if (outcome !== 'kept') return outcome;
      seen.set(job.id, kept);
      pages.postMessage(job.id);
      promised ??= await shelf.askToPersist();
      return outcome;
    },
    onChangedElsewhere: (job) => {
      copied = true;
      const id = newId();
      if (store.state().id === job.id) goOnAsCopy(store, id);
      else line.add({ ...job, id });
    },
    onRest: (outcome) => {
      if (outcome !== 'kept') return say(outcome);
      say(copied ? 'went on as a copy' : promised ? 'kept' : 'may be cleared');
      copied = false;
    },
  });
  const keepTable = (): void => {
    line.add(store.state());
    say('keeping');
  };
  store.subscribe(() => {
    if (store.state() !== asItLies) keepTable();
    else if (line.isIdle()) say(promised ? 'kept' : 'may be cleared');
  });
  pages.onmessage = ({ data }) => {
    if (data === store.state().id && line.isIdle()) say('changed elsewhere');
  };
  return {
    state: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    layKept: ({ id, document, changes, kept }) => {
      seen.set(id, kept);
      asItLies = { id, document, changes };
      store.lay(asItLies);
    },
    keepNow: keepTable,
  };
}

/** The job on the table under an id and a name of its own; the name is a change like any other. */
function goOnAsCopy(store: JobStore, id: string): void {
  store.lay({ ...store.state(), id });
  store.act(words.copyNamed, (document) => {
    const name = at(document, ['name']);
    return typeof name === 'string' ? [write(document, ['name'], words.copyName(name))] : [];
  });
}
