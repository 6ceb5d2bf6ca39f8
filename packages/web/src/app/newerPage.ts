import { registerSW } from 'virtual:pwa-register';

/** 'none'; 'ready': it waits behind this one; 'elsewhere': another window took it, and this one is of the page before. */
export type NewerPageState = 'none' | 'ready' | 'elsewhere';

/** A newer page, where there is one. It never comes by itself while somebody works. */
export interface NewerPage {
  readonly state: () => NewerPageState;
  readonly subscribe: (listener: () => void) => () => void;
  /** Puts it in the place of this one. */
  readonly take: () => void;
  /** This window is being loaded again as the newer one: nobody leaves it. */
  readonly isTaking: () => boolean;
}

/** Lets the page work with the network gone, and watches for a newer one. */
export function watchForNewerPage(): NewerPage {
  let state: NewerPageState = 'none';
  let asked = false;
  const listeners = new Set<() => void>();
  const say = (next: NewerPageState): void => {
    state = next;
    for (const listener of listeners) listener();
  };
  let taking = false;
  const reload = (): void => {
    taking = true;
    location.reload();
  };
  const update = registerSW({
    onNeedRefresh: () => say('ready'),
    // The newer one has taken over: all windows hear of it, and only the one that asked is loaded again.
    onNeedReload: () => (asked ? reload() : say('elsewhere')),
  });
  const take = (): void => {
    if (state === 'elsewhere') {
      reload();
      return;
    }
    asked = true;
    void update();
  };
  // What this page had not fetched yet went when the newer one was taken: only that one has it.
  addEventListener('vite:preloadError', () => {
    if (state === 'elsewhere') take();
  });
  return {
    state: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    take,
    isTaking: () => taking,
  };
}
