import { useCallback, useMemo, useSyncExternalStore } from 'react';

/** Whether a media query holds, followed. */
export function useMedia(query: string): boolean {
  const list = useMemo(() => matchMedia(query), [query]);
  const follow = useCallback(
    (changed: () => void) => {
      list.addEventListener('change', changed);
      return () => list.removeEventListener('change', changed);
    },
    [list],
  );
  return useSyncExternalStore(follow, () => list.matches);
}
