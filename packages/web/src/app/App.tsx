import { lazy, Suspense, useState, useSyncExternalStore } from 'react';
import type { BrokenFileOpened } from '../files/readFile.ts';
import { useDrop } from '../files/useDrop.ts';
import { nextUndo } from '../job/edits.ts';
import type { JobState, JobStore } from '../job/jobStore.ts';
import type { MachineSheet } from '../machine/sheets.ts';
import { useMedia } from '../machine/useMedia.ts';
import type { Shelf } from '../storage/shelf.ts';
import { setUps } from '../words/machine.ts';
import type { Post } from '../worker/planClient.ts';
import { chooseSays } from './chooseSays.ts';
import { JobStrip, type Saving } from './JobStrip.tsx';
import { NewerNotice } from './NewerNotice.tsx';
import type { NewerPage } from './newerPage.ts';
import { newId } from './newId.ts';
import { OpenTab } from './OpenTab.tsx';
import { ProblemList } from './ProblemList.tsx';
import { useSession } from './session.ts';
import { TabIndex, tabNames } from './TabIndex.tsx';
import { useTheme } from './theme.ts';
import { jobOf, TableProvider, usePlannedJob } from './useJob.ts';
import { usePageKeys } from './usePageKeys.ts';
import './app.css';

const FiguresSheet = lazy(() => import('../machine/figures/FiguresSheet.tsx'));
const BrokenFile = lazy(() => import('../files/BrokenFile.tsx'));
const FirstPlan = lazy(() => import('../machine/FirstPlan.tsx'));
const JobsSheet = lazy(() => import('../files/JobsSheet.tsx'));
const noField = { kind: 'figures', path: null } as const;
const KeyList = lazy(() => import('./KeyList.tsx'));

interface AppProps {
  readonly store: JobStore;
  readonly shelf: Shelf;
  readonly newer: NewerPage;
  /** A file that was brought along and could not be read as a job. */
  readonly broken: BrokenFileOpened | null;
  readonly makeWorker: () => Post;
  readonly saving: { readonly state: () => Saving; readonly subscribe: (listener: () => void) => () => void };
}

/** The whole page: the strip on top, the thumb index, and the tab that is open. */
export function App({ store, shelf, newer, broken, makeWorker, saving }: AppProps) {
  const [{ tab, load, shown }, look] = useSession();
  const [sheet, setSheet] = useState<MachineSheet | null>(null);
  const [keys, setKeys] = useState(false);
  const [jobs, setJobs] = useState(false);
  const [first, setFirst] = useState(false);
  const [opened, setOpened] = useState(broken);
  const [theme, setTheme] = useTheme();
  const wide = useMedia('(min-width: 1200px)');
  const table = usePlannedJob(store, 'typed', makeWorker);
  const kept = useSyncExternalStore(saving.subscribe, saving.state);
  const job = jobOf(table.state);
  const undo = nextUndo(table.state.changes);
  usePageKeys({
    tabs: tabNames.length,
    onTab: (index) => look({ tab: tabNames[index]! }),
    onUndo: store.undo,
    onList: () => setKeys(true),
  });
  const lay = (document: unknown, id = newId('job'), changes: JobState['changes'] = []): void => {
    store.lay({ id, document, changes });
    look({ load: null, shown: 'asFound' });
    setSheet(null);
    setOpened(null);
    setJobs(false);
    setFirst(false);
  };
  const openFile = (name: string, text: string): void => {
    void import('../files/readFile.ts').then(({ readFile }) => {
      const file = readFile(name, text);
      if (file.kind === 'job') lay(file.job);
      else setOpened(file);
    });
  };
  useDrop(openFile);
  const goToField = (path: string): void => {
    look({ tab: 'machine' });
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
          onJobs={() => setJobs(!jobs)}
          onUndo={store.undo}
          onTheme={() => setTheme(theme === 'sun' ? 'truck' : 'sun')}
        />
        <main className="app-main" aria-busy={table.behind}>
          <NewerNotice newer={newer} />
          <Suspense>
            {opened !== null && <BrokenFile file={opened} onMend={lay} onClose={() => setOpened(null)} />}
            {first && <FirstPlan onMade={lay} onClose={() => setFirst(false)} />}
            {jobs && (
              <JobsSheet
                shelf={shelf}
                onFile={openFile}
                onKept={({ id, document, changes }) => lay(document, id, changes)}
                onEmpty={() => void import('../files/emptyJob.ts').then(({ emptyJob }) => lay(emptyJob()))}
                onFirst={() => {
                  setJobs(false);
                  setFirst(true);
                }}
                onClose={() => setJobs(false)}
              />
            )}
          </Suspense>
          <ProblemList problems={table.problems} hasPlan={table.view !== null} onGo={goToField} />
          {table.view === null && table.problems.length > 0 && (
            <Suspense>
              <FiguresSheet
                view={null}
                asked={sheet?.kind === 'figures' ? sheet : noField}
                onSheet={setSheet}
              />
            </Suspense>
          )}
          {table.view !== null && (
            <OpenTab
              view={table.view}
              tab={tab}
              wide={wide}
              load={load}
              shown={shown}
              sheet={sheet}
              onLook={look}
              onSheet={setSheet}
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
          onTab={(next) => look({ tab: next })}
        />
      </div>
    </TableProvider>
  );
}
