import Dexie, { type Table } from 'dexie';
import type { Change } from '../job/edits.ts';

/** A whole document as it is kept in the browser, with what was done to it. */
export interface Kept {
  readonly id: string;
  readonly document: unknown;
  readonly changes: readonly Change[];
  /** When it was kept last, ISO 8601. Whoever writes next must have seen this moment. */
  readonly kept: string;
}

/** What became of keeping a job; 'changed elsewhere': somebody kept it since, and nothing was written. */
export type Keeping = 'kept' | 'changed elsewhere' | 'no room' | 'refused';

/** The browser's shelf of jobs: one table of whole documents. Its readers reject with a `shelfFault` where nothing can be read. */
export interface Shelf {
  /** Keeps a job; `seen` is when it was kept last as far as the writer knows, null where it never was. */
  readonly keep: (kept: Kept, seen: string | null) => Promise<Keeping>;
  readonly one: (id: string) => Promise<Kept | null>;
  /** The document kept last; null on an empty shelf. */
  readonly latest: () => Promise<Kept | null>;
  /** All of them, the one kept last first. */
  readonly all: () => Promise<readonly Kept[]>;
  readonly remove: (id: string) => Promise<void>;
}

export function openShelf(): Shelf {
  const database = new Dexie('sagwright');
  database.version(1).stores({ documents: 'id, kept' });
  const documents = database.table('documents') as Table<Kept, string>;
  const keepUnlessChanged = (kept: Kept, seen: string | null): Promise<Keeping> =>
    database.transaction('rw', documents, async () => {
      const there = await documents.get(kept.id);
      if (there !== undefined && there.kept !== seen) return 'changed elsewhere';
      await documents.put(kept);
      return 'kept';
    });
  return {
    keep: async (kept, seen) => {
      try {
        return await keepUnlessChanged(kept, seen);
      } catch (error) {
        if (!isShelfFault(error)) throw error;
        return isForWantOfRoom(error) ? 'no room' : 'refused';
      }
    },
    one: async (id) => (await documents.get(id)) ?? null,
    latest: async () => (await documents.orderBy('kept').last()) ?? null,
    all: () => documents.orderBy('kept').reverse().toArray(),
    remove: (id) => documents.delete(id),
  };
}

/** A fault of the browser's storage, as in a private window that lets nothing be kept; not one of this page. */
export function isShelfFault(error: unknown): error is InstanceType<typeof Dexie.DexieError> {
  return error instanceof Dexie.DexieError;
}

/** A write that fails for want of room often shows as its transaction given up, with the cause inside. */
function isForWantOfRoom(error: InstanceType<typeof Dexie.DexieError>): boolean {
  const name = 'QuotaExceededError';
  return error.name === name || (error.inner instanceof Error && error.inner.name === name);
}

/** Whether the browser promises already to keep what is on the shelf; asks nobody. */
export async function isPromised(): Promise<boolean> {
  return (await navigator.storage?.persisted?.()) ?? false;
}

/** Asks the browser to promise it. Some ask the person in turn, so it is done once there is something to keep. */
export async function askToPersist(): Promise<boolean> {
  return (await navigator.storage?.persist?.()) ?? false;
}
