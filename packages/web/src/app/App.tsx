import { useState } from 'react';
import { type Door, JobDoor, SHUT } from '../files/JobDoor.tsx';
import { nextUndo } from '../job/edits.ts';
import type { JobStore } from '../job/jobStore.ts';
import type { MachineSheet } from '../machine/sheets.ts';
import type { Shelf } from '../storage/shelf.ts';
import { setUps } from '../words/machine.ts';
import { strip as words } from '../words/page.ts';
import type { Post } from '../worker/planClient.ts';
import { chooseSays } from './chooseSays.ts';
import { JobStrip } from './JobStrip.tsx';
import { KeepingNotice } from './KeepingNotice.tsx';
import type { Keeper } from './keeper.ts';
import { NewerNotice } from './NewerNotice.tsx';
import type { NewerPage } from './newerPage.ts';
import { OnTable } from './OnTable.tsx';
import { PageKeys } from './PageKeys.tsx';
import { usePageWide } from './pageWidth.ts';
import { useSession } from './session.ts';
import { setSays } from './setSays.ts';
import { TabIndex, tabNames } from './TabIndex.tsx';
import { useTheme } from './theme.ts';
import { jobOf, StoreProvider, TableProvider, usePlannedJob } from './useJob.ts';
import './app.css';

interface AppProps {
  readonly store: JobStore;
  readonly shelf: Shelf;
  readonly keeper: Keeper;
  readonly newer: NewerPage;
  /** What stands open at first: a file that was brought along, and is no job. */
  readonly begunAt: Door;
  readonly makeWorker: () => Post;
}

/** The whole page: the strip on top, the thumb index, and the tab that is open. */
export function App({ store, shelf, keeper, newer, begunAt, makeWorker }: AppProps) {
  const [{ tab, load, shown }, look] = useSession();
  const [sheet, setSheet] = useState<MachineSheet | null>(null);
  const [fitField, setFitField] = useState<{ readonly path: string } | null>(null);
  const [door, setDoor] = useState(begunAt);
  const [theme, setTheme] = useTheme();
  const wide = usePageWide();
  const table = usePlannedJob(store, 'typed', load, makeWorker);
  const job = jobOf(table.state);
  const undo = nextUndo(table.state.changes);
  const onLaid = (): void => {
    look({ load: null, shown: 'asFound' });
    setSheet(null);
  };
  const goToField = (path: string): void => {
    if (path.startsWith('fitting.')) {
      look({ tab: 'set' });
      setFitField({ path });
      return;
    }
    look({ tab: 'machine' });
    setSheet({ kind: 'figures', path });
  };
  return (
    <StoreProvider value={store}>
      <TableProvider value={table}>
        <div className="app">
          <JobStrip
            name={job.name}
            machine={job.machine.name}
            keeper={keeper}
            undoes={undo?.words ?? null}
            theme={theme}
            onJobs={() => setDoor(door.kind === 'jobs' ? SHUT : { kind: 'jobs' })}
            onUndo={store.undo}
            onTheme={() => setTheme(theme === 'sun' ? 'truck' : 'sun')}
          />
          <main className="app-main" aria-busy={table.behind !== 'nothing'} data-behind={table.behind}>
            <p className="app-working">{words.working}</p>
            <NewerNotice newer={newer} />
            <KeepingNotice keeper={keeper} shelf={shelf} />
            <JobDoor door={door} onDoor={setDoor} shelf={shelf} keeper={keeper} onLaid={onLaid} />
            <OnTable
              tab={tab}
              wide={wide}
              load={load}
              shown={shown}
              sheet={sheet}
              fitField={fitField}
              onLook={look}
              onSheet={setSheet}
              onField={goToField}
            />
          </main>
          <PageKeys tabs={tabNames.length} onTab={(index) => look({ tab: tabNames[index]! })} />
          <TabIndex
            tab={tab}
            says={{ machine: setUps[shown], choose: chooseSays(table.view), set: setSays(job) }}
            onTab={(next) => look({ tab: next })}
          />
        </div>
      </TableProvider>
    </StoreProvider>
  );
}
