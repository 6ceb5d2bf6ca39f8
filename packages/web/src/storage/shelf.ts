import Dexie, { type Table } from 'dexie';
import type { Change } from '../job/edits.ts';

/** A whole document as it is kept in the browser, with what was done to it. */
export interface Kept {
  readonly id: string;
  readonly document: unknown;
  readonly changes: readonly Change[];
  /** When it was kept last, ISO 8601. */
  readonly kept: string;
}

/** The browser's shelf of jobs: one table of whole documents. */
export interface Shelf {
  readonly keep: (kept: Kept) => Promise<void>;
  /** The document kept last; null on an empty shelf. */
  readonly latest: () => Promise<Kept | null>;
  readonly all: () => Promise<readonly Kept[]>;
  readonly remove: (id: string) => Promise<void>;
}

export function openShelf(): Shelf {
  const database = new Dexie('sagwright');
  database.version(1).stores({ documents: 'id, kept' });
  const documents = database.table('documents') as Table<Kept, string>;
  return {
    keep: async (kept) => {
      await documents.put(kept);
    },
    latest: async () => (await documents.orderBy('kept').last()) ?? null,
    all: () => documents.orderBy('kept').reverse().toArray(),
    remove: (id) => documents.delete(id),
  };
}

/**
 * Whether the browser promises to keep what is on the shelf: 'kept', or 'may be cleared' where it would not promise.
 * Asked once, after the first job was kept.
 */
export async function askToPersist(): Promise<'kept' | 'may be cleared'> {
  if (navigator.storage?.persist === undefined) return 'may be cleared';
  return (await navigator.storage.persist()) ? 'kept' : 'may be cleared';
}
