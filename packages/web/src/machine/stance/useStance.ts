import type { StanceView } from '@sagwright/workbench/page/stanceView';
import { useEffect, useState } from 'react';
import { useTable } from '../../app/useJob.ts';

/** How a load stands and steers, asked again for each new plan; null while it is worked out first. */
export function useStance(load: string | null): StanceView | string | null {
  const { view, behind, stance } = useTable();
  const [told, setTold] = useState<StanceView | string | null>(null);
  useEffect(() => {
    // While a plan is under way, the worker would tell of the one before it.
    if (view === null || behind !== 'nothing') return;
    let stale = false;
    void stance(load).then((answer) => {
      if (!stale) setTold(answer);
    });
    return () => {
      stale = true;
    };
  }, [load, behind, stance, view]);
  return told;
}
