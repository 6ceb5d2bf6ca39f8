import { unlessForbidden } from './unlessForbidden.ts';

/**
 * Small things that this device remembers: the colours, the tab, the job on the table. A page that is loaded again has its
 * own; a new one begins with what was remembered last anywhere. A browser that lets nothing be kept remembers nothing, which loses
 * no work: jobs lie on the shelf.
 */
export function remembered(key: string): string | null {
  return unlessForbidden(() => sessionStorage.getItem(key) ?? localStorage.getItem(key));
}

export function remember(key: string, value: string): void {
  unlessForbidden(() => {
    sessionStorage.setItem(key, value);
    localStorage.setItem(key, value);
  });
}
