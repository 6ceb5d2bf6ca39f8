import type { PageView } from '@sagwright/workbench/page/shapes';
import type { SetUpShown } from '@sagwright/workbench/why/standingShown';
import { lazy, memo, Suspense, useCallback, useState } from 'react';
import { MachineTab } from '../machine/MachineTab.tsx';
import type { MachineSheet, OpenSheet } from '../machine/sheets.ts';
import type { Session } from './session.ts';

const ChooseTab = lazy(() => import('../choose/ChooseTab.tsx'));
const SetTab = lazy(() => import('../set/SetTab.tsx'));

export interface OpenTabProps extends Session {
  readonly view: PageView;
  /** The machine stays beside the other tab. */
  readonly wide: boolean;
  readonly sheet: MachineSheet | null;
  /** Field of the Set tab that is gone to. */
  readonly fitField: { readonly path: string } | null;
  readonly onLook: (change: Partial<Session>) => void;
  readonly onSheet: OpenSheet;
}

/** The tab that is open. It is painted anew for a new plan or another look, not for each figure that is typed. */
export const OpenTab = memo(function OpenTab({
  view,
  tab,
  wide,
  load,
  shown,
  sheet,
  fitField,
  onLook,
  onSheet,
}: OpenTabProps) {
  /** Beside the springs, the machine stands as they would have it until told otherwise. */
  const [besides, setBesides] = useState<SetUpShown>('planned');
  const goToField = (path: string): void => {
    if (!wide) onLook({ tab: 'machine' });
    onSheet({ kind: 'figures', path });
  };
  const chooseLoad = useCallback((next: string | null) => onLook({ load: next }), [onLook]);
  const show = useCallback((next: SetUpShown) => onLook({ shown: next }), [onLook]);
  const other = tab !== 'machine' && (
    <Suspense>
      {tab === 'choose' ? (
        <ChooseTab view={view} onField={goToField} />
      ) : (
        <SetTab view={view} asked={fitField} />
      )}
    </Suspense>
  );
  if (other !== false && !wide) return other;
  return (
    <MachineTab
      view={view}
      chosen={load}
      onChoose={chooseLoad}
      shown={other === false ? shown : besides}
      onShow={other === false ? show : setBesides}
      sheet={sheet}
      onSheet={onSheet}
      beside={other === false ? null : other}
    />
  );
});
