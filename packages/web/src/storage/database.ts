import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Kept, KeptTemplate } from './kept.ts';

/** What the browser keeps: whole jobs and templates, each by its id. */
export interface Stores extends DBSchema {
  jobs: { key: string; value: Kept };
  templates: { key: string; value: KeptTemplate };
}

/** The database, opened when it is first needed, and anew where the browser closed it or would not open it. */
export function openOnce(): () => Promise<IDBPDatabase<Stores>> {
  let opened: Promise<IDBPDatabase<Stores>> | null = null;
  const forget = (): void => {
    opened = null;
  };
  const open = async (): Promise<IDBPDatabase<Stores>> => {
    if (!('indexedDB' in globalThis))
      throw new DOMException('This browser has no IndexedDB', 'NotFoundError');
    return openDB<Stores>('sagwright-jobs', 2, {
      // Each version adds to what is there, so that a browser of any of them keeps all that it has.
      upgrade: (database, from) => {
        if (from < 1) database.createObjectStore('jobs', { keyPath: 'id' });
        if (from < 2) database.createObjectStore('templates', { keyPath: 'id' });
      },
      blocking: (_now, _newer, { target }) => {
        (target as IDBDatabase).close();
        forget();
      },
      terminated: forget,
    });
  };
  return () => {
    if (opened === null) {
      opened = open();
      opened.catch(forget);
    }
    return opened;
  };
}
