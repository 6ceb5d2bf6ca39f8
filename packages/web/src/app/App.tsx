import { useState, useSyncExternalStore } from 'react';
import { nextUndo } from '../job/edits.ts';
import type { JobStore } from '../job/jobStore.ts';
import { newLoad } from '../job/loads.ts';
import type { SetUpShown } from '../machine/drawingInputs.ts';
import { MachineTab } from '../machine/MachineTab.tsx';
import { loads as loadWords } from '../words/page.ts';
import type { Post } from '../worker/planClient.ts';
import { JobStrip, type Saving } from './JobStrip.tsx';
import { newId } from './newId.ts';
import { ProblemList } from './ProblemList.tsx';
import { TabIndex, type TabName } from './TabIndex.tsx';
import { useTheme } from './theme.ts';
import { jobOf, TableProvider, usePlannedJob } from './useJob.ts';
import './app.css';

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
  const [theme, setTheme] = useTheme();
  const table = usePlannedJob(store, 'typed', makeWorker);
  const kept = useSyncExternalStore(saving.subscribe, saving.state);
  const job = jobOf(table.state);
  const undo = nextUndo(table.state.changes);
  const addLoad = (): void => {
    const id = newId('load');
    const count = Object.keys(job.loadCases).length + 1;
    store.act(loadWords.newLoad, () => newLoad(job, id, loadWords.newLoadName(count), chosen));
    setChosen(id);
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
          <ProblemList problems={table.problems} />
          {table.view !== null && tab === 'machine' && (
            <MachineTab
              view={table.view}
              chosen={chosen}
              onChoose={setChosen}
              shown={shown}
              onShow={setShown}
              onNewLoad={addLoad}
            />
          )}
        </main>
        <TabIndex tab={tab} says={{ machine: 'as found', choose: '' }} onTab={setTab} />
      </div>
    </TableProvider>
  );
}
