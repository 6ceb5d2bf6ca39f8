import { lazy, Suspense, useState, useSyncExternalStore } from 'react';
import { nextUndo } from '../job/edits.ts';
import type { JobStore } from '../job/jobStore.ts';
import type { SetUpShown } from '../machine/drawingInputs.ts';
import { MachineTab } from '../machine/MachineTab.tsx';
import type { MachineSheet } from '../machine/sheets.ts';
import { useMedia } from '../machine/useMedia.ts';
import { setUps } from '../words/machine.ts';
import type { Post } from '../worker/planClient.ts';
import { chooseSays } from './chooseSays.ts';
import { JobStrip, type Saving } from './JobStrip.tsx';
import { ProblemList } from './ProblemList.tsx';
import { TabIndex, type TabName, tabNames } from './TabIndex.tsx';
import { useTheme } from './theme.ts';
import { jobOf, TableProvider, usePlannedJob } from './useJob.ts';
import { usePageKeys } from './usePageKeys.ts';
import './app.css';

const ChooseTab = lazy(() => import('../choose/ChooseTab.tsx'));
const FiguresSheet = lazy(() => import('../machine/figures/FiguresSheet.tsx'));
const noField = { kind: 'figures', path: null } as const;
const KeyList = lazy(() => import('./KeyList.tsx'));

interface AppProps {
  readonly store: JobStore;
  readonly makeWorker: () => Post;
  readonly saving: { readonly state: () => Saving; readonly subscribe: (listener: () => void) => () => void };
}

/** The whole page: the strip on top, the thumb index, and the tab that is open. */
export function App({ store, makeWorker, saving }: AppProps) {
  const [tab, setTab] = useState<TabName>('machine');
  const [chosen, setChosen] = useState<string | null>(null);
  const [shown, setShown] = useState<SetUpShown>('asFound');
  const [sheet, setSheet] = useState<MachineSheet | null>(null);
  const [keys, setKeys] = useState(false);
  const [theme, setTheme] = useTheme();
  const wide = useMedia('(min-width: 1200px)');
  const table = usePlannedJob(store, 'typed', makeWorker);
  const kept = useSyncExternalStore(saving.subscribe, saving.state);
  const job = jobOf(table.state);
  const undo = nextUndo(table.state.changes);
  usePageKeys({
    tabs: tabNames.length,
    onTab: (index) => setTab(tabNames[index]!),
    onUndo: store.undo,
    onList: () => setKeys(true),
  });
  const goToField = (path: string): void => {
    setTab('machine');
    setSheet({ kind: 'figures', path });
  };
  return (
    <TableProvider value={table}>
      <div className="app">
        <JobStrip
          name={job.name}
          machine={job.machine.name}
          saving={kept}
          undoes={undo?.words ?? null}
          theme={theme}
          onJobs={() => undefined}
          onUndo={store.undo}
          onTheme={() => setTheme(theme === 'sun' ? 'truck' : 'sun')}
        />
        <main className="app-main" aria-busy={table.behind}>
          <ProblemList problems={table.problems} onGo={goToField} />
          {table.view === null && table.problems.length > 0 && (
            <Suspense>
              <FiguresSheet
                view={null}
                asked={sheet?.kind === 'figures' ? sheet : noField}
                onSheet={setSheet}
              />
            </Suspense>
          )}
          {table.view !== null && tab === 'choose' && !wide && (
            <Suspense>
              <ChooseTab view={table.view} />
            </Suspense>
          )}
          {table.view !== null && (tab === 'machine' || wide) && (
            <MachineTab
              view={table.view}
              chosen={chosen}
              onChoose={setChosen}
              shown={shown}
              onShow={setShown}
              sheet={sheet}
              onSheet={setSheet}
              beside={
                tab === 'choose' ? (
                  <Suspense>
                    <ChooseTab view={table.view} />
                  </Suspense>
                ) : null
              }
            />
          )}
        </main>
        {keys && (
          <Suspense>
            <KeyList onClose={() => setKeys(false)} />
          </Suspense>
        )}
        <TabIndex
          tab={tab}
          says={{ machine: setUps[shown], choose: chooseSays(table.view) }}
          onTab={setTab}
        />
      </div>
    </TableProvider>
  );
}
