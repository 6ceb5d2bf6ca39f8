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
}

const STORE = 'jobs';

export function openShelf(): Shelf {
  const database = openOnce();
  const begin = async (mode: IDBTransactionMode): Promise<IDBTransaction> =>
    (await database()).transaction(STORE, mode);
  const all = async (): Promise<readonly Kept[]> => {
    const kept: Kept[] = await answerOf((await begin('readonly')).objectStore(STORE).getAll());
    return kept.sort((a, b) => (a.kept < b.kept ? 1 : -1));
  };
  return {
    keep: async (kept, seen) => {
      try {
        return await keepUnlessChanged(await begin('readwrite'), kept, seen);
      } catch (error) {
        if (!(error instanceof DOMException)) throw error;
        return error.name === 'QuotaExceededError' ? 'no room' : 'refused';
      }
    },
    one: async (id) => (await answerOf((await begin('readonly')).objectStore(STORE).get(id))) ?? null,
    latest: async () => (await all())[0] ?? null,
    all,
    remove: async (id) => {
      const transaction = await begin('readwrite');
      transaction.objectStore(STORE).delete(id);
      await endOf(transaction);
    },
  };
}

/** Looking and writing are one transaction, so that no other window comes between. */
async function keepUnlessChanged(
  transaction: IDBTransaction,
  kept: Kept,
  seen: string | null,
): Promise<Keeping> {
  const jobs = transaction.objectStore(STORE);
  const there: Kept | undefined = await answerOf(jobs.get(kept.id));
  if (there !== undefined && there.kept !== seen) return 'changed elsewhere';
  jobs.put(kept);
  await endOf(transaction);
  return 'kept';
}

/** The database, opened when it is first needed, and anew where the browser closed it or would not open it. */
function openOnce(): () => Promise<IDBDatabase> {
  let opened: Promise<IDBDatabase> | null = null;
  const forget = (): void => {
    opened = null;
  };
  const open = async (): Promise<IDBDatabase> => {
    const request = indexedDB.open('sagwright-jobs', 1);
    request.onupgradeneeded = () => request.result.createObjectStore(STORE, { keyPath: 'id' });
    const database = await answerOf(request);
    database.onclose = forget;
    database.onversionchange = () => {
      database.close();
      forget();
    };
    return database;
  };
  return () => {
    if (opened === null) {
      opened = open();
      opened.catch(forget);
    }
    return opened;
  };
}

function answerOf<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

/** Resolves once everything in it is written; a write for which there was no room ends it with its fault. */
function endOf(transaction: IDBTransaction): Promise<void> {
  return new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? new DOMException('given up', 'AbortError'));
  });
}

/** Whether the browser promises already to keep what is on the shelf; asks nobody. */
export async function isPromised(): Promise<boolean> {
  return (await navigator.storage?.persisted?.()) ?? false;
}

/** Asks the browser to promise it. Some ask the person in turn, so it is done once there is something to keep. */
export async function askToPersist(): Promise<boolean> {
  return (await navigator.storage?.persist?.()) ?? false;
}
