import { useEffect, useState } from 'react';
import { useTable } from './useJob.ts';

/** What `ask` is told of the last plan, asked again for each new one and by each new `ask`; null until it is there first. */
export function useTold<T>(ask: () => Promise<T>): T | null {
  const { view, behind } = useTable();
  const [told, setTold] = useState<T | null>(null);
  useEffect(() => {
    // While a plan is under way, the worker would tell of the one before it.
    if (view === null || behind !== 'nothing') return;
    let stale = false;
    void ask().then((answer) => {
      if (!stale) setTold(answer);
    });
    return () => {
      stale = true;
    };
  }, [ask, behind, view]);
  return told;
}
