import { registerSW } from 'virtual:pwa-register';

/** A newer page waits behind this one: `take` puts it in its place. It never comes by itself while somebody works. */
export interface NewerPage {
  readonly isReady: () => boolean;
  readonly subscribe: (listener: () => void) => () => void;
  readonly take: () => void;
}

/** Lets the page work with the network gone, and watches for a newer one. */
export function watchForNewerPage(): NewerPage {
  let ready = false;
  const listeners = new Set<() => void>();
  const update = registerSW({
    onNeedRefresh: () => {
      ready = true;
      for (const listener of listeners) listener();
    },
  });
  return {
    isReady: () => ready,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    take: () => void update(true),
  };
}
