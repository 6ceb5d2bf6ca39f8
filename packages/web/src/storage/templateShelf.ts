import { openOnce } from './database.ts';
import type { KeptTemplate } from './kept.ts';
import { refusalOf } from './refusal.ts';

/** Where the browser lets nothing be read, the readers reject with a DOMException. */
export interface TemplateShelf {
  /** All of them, the one kept last first. */
  readonly all: () => Promise<readonly KeptTemplate[]>;
  readonly keep: (kept: KeptTemplate) => Promise<'kept' | 'no room' | 'refused'>;
  readonly remove: (id: string) => Promise<void>;
}

/** The browser's shelf of templates, beside that of the jobs. A template is never changed: another one is another. */
export function openTemplateShelf(): TemplateShelf {
  const database = openOnce();
  return {
    all: async () => {
      const kept = await (await database()).getAll('templates');
      return kept.sort((a, b) => (a.kept < b.kept ? 1 : -1));
    },
    keep: async (kept) => {
      try {
        const { store, done } = (await database()).transaction('templates', 'readwrite');
        // It is kept once the transaction is done, not before: a device without room fails there.
        await Promise.all([store.put(kept), done]);
        return 'kept';
      } catch (error) {
        return refusalOf(error);
      }
    },
    remove: async (id) => (await database()).delete('templates', id),
  };
}
