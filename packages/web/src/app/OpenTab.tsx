import type { PageView } from '@sagwright/workbench/page/shapes';
import type { SetUpShown } from '@sagwright/workbench/why/standingShown';
import { lazy, memo, Suspense, useCallback, useState } from 'react';

import { MachineTab } from '../machine/MachineTab.tsx';
import type { MachineSheet, OpenSheet } from '../machine/sheets.ts';
import type { Session } from './session.ts';

const ChooseTab = lazy(() => import('../choose/ChooseTab.tsx'));

interface OpenTabProps extends Session {
  readonly view: PageView;
  /** The machine stays beside the other tab. */
  readonly wide: boolean;
  readonly sheet: MachineSheet | null;
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
  const choose = tab === 'choose' && (
    <Suspense>
      <ChooseTab view={view} onField={goToField} />
    </Suspense>
  );
  if (choose !== false && !wide) return choose;
  return (
    <MachineTab
      view={view}
      chosen={load}
      onChoose={chooseLoad}
      shown={choose === false ? shown : besides}
      onShow={choose === false ? show : setBesides}
      sheet={sheet}
      onSheet={onSheet}
      beside={choose === false ? null : choose}
    />
  );
});
