import type { JobStore } from '../job/jobStore.ts';
import { askToPersist, type Shelf } from '../storage/shelf.ts';
import type { Saving } from './JobStrip.tsx';
import { newId } from './newId.ts';

/** Keeps the job on the table on the browser's shelf a moment after each change, and says whether it is kept. */
export interface Keeper {
  readonly state: () => Saving;
  readonly subscribe: (listener: () => void) => () => void;
}

const MOMENT = 150;

/**
 * Two tabs with the same job tell each other when they keep it. The one that did not write goes on as a copy of its own from its
 * next change, so that neither writes over what the other did.
 */
export function keepOnShelf(store: JobStore, shelf: Shelf, now: () => string): Keeper {
  let state: Saving = 'kept';
  let promised: 'kept' | 'may be cleared' = 'kept';
  let timer: ReturnType<typeof setTimeout> | undefined;
  let writtenElsewhere = false;
  const tabs = new BroadcastChannel('sagwright-kept');
  const listeners = new Set<() => void>();
  const say = (next: Saving): void => {
    state = next;
    for (const listener of listeners) listener();
  };
  const keep = async (): Promise<void> => {
    const { id, document, changes } = store.state();
    try {
      await shelf.keep({ id, document, changes, kept: now() });
      tabs.postMessage(id);
      say(promised);
    } catch {
      say('not kept');
    }
  };
  tabs.onmessage = ({ data }) => {
    if (data !== store.state().id) return;
    writtenElsewhere = true;
    say('changed elsewhere');
  };
  store.subscribe(() => {
    if (writtenElsewhere) {
      writtenElsewhere = false;
      store.lay({ ...store.state(), id: newId('job') });
      return;
    }
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
