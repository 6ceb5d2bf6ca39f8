import type { PageView } from '@sagwright/workbench/page/shapes';
import { lazy, memo, Suspense } from 'react';
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
  const goToField = (path: string): void => {
    if (!wide) onLook({ tab: 'machine' });
    onSheet({ kind: 'figures', path });
  };
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
      onChoose={(next) => onLook({ load: next })}
      shown={shown}
      onShow={(next) => onLook({ shown: next })}
      sheet={sheet}
      onSheet={onSheet}
      beside={choose === false ? null : choose}
    />
  );
});
