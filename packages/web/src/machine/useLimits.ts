import type { LimitListView } from '@sagwright/workbench/page/limitListView';
import { useEffect, useState } from 'react';
import { useTable } from '../app/useJob.ts';

/** Every limit of the job and the room a load leaves, asked again for each new plan; null while they are worked out first. */
export function useLimits(load: string | null): LimitListView | null {
  const { view, behind, limits } = useTable();
  const [told, setTold] = useState<LimitListView | null>(null);
  useEffect(() => {
    // While a plan is under way, the worker would tell of the one before it.
    if (view === null || behind !== 'nothing') return;
    let stale = false;
    void limits(load).then((answer) => {
      if (!stale) setTold(answer);
    });
    return () => {
      stale = true;
    };
  }, [load, behind, limits, view]);
  return told;
}
