import type { JobStore } from '../job/jobStore.ts';
import { askToPersist, type Shelf } from '../storage/shelf.ts';
import type { Saving } from './JobStrip.tsx';

/** Keeps the job on the table on the browser's shelf a moment after each change, and says whether it is kept. */
export interface Keeper {
  readonly state: () => Saving;
  readonly subscribe: (listener: () => void) => () => void;
}

const MOMENT = 150;

export function keepOnShelf(store: JobStore, shelf: Shelf, now: () => string): Keeper {
  let state: Saving = 'kept';
  let promised: 'kept' | 'may be cleared' = 'kept';
  let timer: ReturnType<typeof setTimeout> | undefined;
  const listeners = new Set<() => void>();
  const say = (next: Saving): void => {
    state = next;
    for (const listener of listeners) listener();
  };
  const keep = async (): Promise<void> => {
    const { id, document, changes } = store.state();
    try {
      await shelf.keep({ id, document, changes, kept: now() });
      say(promised);
    } catch {
      say('not kept');
    }
  };
  store.subscribe(() => {
    say('keeping');
    clearTimeout(timer);
    timer = setTimeout(() => void keep(), MOMENT);
  });
  void askToPersist().then((answer) => {
    promised = answer;
  });
  return {
    state: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
