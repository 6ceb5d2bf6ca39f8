import { lazy, Suspense } from 'react';
import { OpenTab, type OpenTabProps } from './OpenTab.tsx';
import { useTable } from './useJob.ts';

const FiguresSheet = lazy(() => import('../machine/figures/FiguresSheet.tsx'));
const noField = { kind: 'figures', path: null } as const;
const ProblemList = lazy(() => import('./ProblemList.tsx'));

interface OnTableProps extends Omit<OpenTabProps, 'view'> {
  /** To the field of a path, on whichever tab it is. */
  readonly onField: (path: string) => void;
}

/** What is wrong with the job, and the tab that is open; while it has no plan yet, its figures instead. */
export function OnTable({ onField, ...tab }: OnTableProps) {
  const { view, problems } = useTable();
  const { sheet, onSheet } = tab;
  return (
    <>
      {problems.length > 0 && (
        <Suspense>
          <ProblemList problems={problems} hasPlan={view !== null} onGo={onField} />
        </Suspense>
      )}
      {view === null && problems.length > 0 && (
        <Suspense>
          <FiguresSheet
            view={null}
            load={null}
            asked={sheet?.kind === 'figures' ? sheet : noField}
            onSheet={onSheet}
          />
        </Suspense>
      )}
      {view !== null && <OpenTab {...tab} view={view} />}
    </>
  );
}
