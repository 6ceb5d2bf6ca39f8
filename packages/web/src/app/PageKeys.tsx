import { lazy, Suspense, useState } from 'react';
import { useStore } from './useJob.ts';
import { usePageKeys } from './usePageKeys.ts';

const KeyList = lazy(() => import('./KeyList.tsx'));

interface PageKeysProps {
  readonly tabs: number;
  readonly onTab: (index: number) => void;
}

/** The keys of the whole page, with the list of them while it is asked for. */
export function PageKeys({ tabs, onTab }: PageKeysProps) {
  const store = useStore();
  const [listed, setListed] = useState(false);
  usePageKeys({ tabs, onTab, onUndo: store.undo, onList: () => setListed(true) });
  if (!listed) return null;
  return (
    <Suspense>
      <KeyList onClose={() => setListed(false)} />
    </Suspense>
  );
}
