import type { IDBPDatabase } from 'idb';
import { openOnce, type Stores } from './database.ts';
import type { Kept } from './kept.ts';
import { refusalOf } from './refusal.ts';

/** What became of keeping a job; 'changed elsewhere': somebody kept it since, and nothing was written. */
export type Keeping = 'kept' | 'changed elsewhere' | 'no room' | 'refused';

/**
 * The browser's shelf of jobs: one store of whole documents, in IndexedDB. Where the browser lets nothing be read, the readers
 * reject with a DOMException.
 */
export interface Shelf {
  /** Keeps a job; `seen` is when it was kept last as far as the writer knows, null where it never was. */
  readonly keep: (kept: Kept, seen: string | null) => Promise<Keeping>;
  readonly one: (id: string) => Promise<Kept | null>;
  /** The document kept last; null on an empty shelf. */
  readonly latest: () => Promise<Kept | null>;
  /** All of them, the one kept last first. */
  readonly all: () => Promise<readonly Kept[]>;
  readonly remove: (id: string) => Promise<void>;
  /** Whether the browser promises already to keep what is on the shelf; asks nobody. */
  readonly isPromised: () => Promise<boolean>;
  /** Asks the browser to promise it. Some ask the person in turn, so it is done once there is something to keep. */
  readonly askToPersist: () => Promise<boolean>;
}

export function openShelf(): Shelf {
  const database = openOnce();
  const all = async (): Promise<readonly Kept[]> => {
    const kept = await (await database()).getAll('jobs');
    return kept.sort((a, b) => (a.kept < b.kept ? 1 : -1));
  };
  return {
    keep: async (kept, seen) => {
      // Copying a long job into the store takes a while: what was pressed is painted first.
      await new Promise((painted) => setTimeout(painted));
      try {
        return await keepUnlessChanged(await database(), kept, seen);
      } catch (error) {
        return refusalOf(error);
      }
    },
    one: async (id) => (await (await database()).get('jobs', id)) ?? null,
    latest: async () => (await all())[0] ?? null,
    all,
    remove: async (id) => (await database()).delete('jobs', id),
    isPromised: async () => (await navigator.storage?.persisted?.()) ?? false,
    askToPersist: async () => (await navigator.storage?.persist?.()) ?? false,
  };
}

/** Looking and writing are one transaction, so that no other window comes between. It is kept once that is done, not before. */
async function keepUnlessChanged(
  database: IDBPDatabase<Stores>,
  kept: Kept,
  seen: string | null,
): Promise<Keeping> {
  const { store, done } = database.transaction('jobs', 'readwrite');
  const look = async (): Promise<Keeping> => {
    const there = await store.get(kept.id);
    if (there !== undefined && there.kept !== seen) return 'changed elsewhere';
    await store.put(kept);
    return 'kept';
  };
  const [keeping] = await Promise.all([look(), done]);
  return keeping;
}
