import '@fontsource/b612/latin-400.css';
import '@fontsource/b612/latin-700.css';
import './theme/tokens.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import demo from '../../../examples/two-and-a-box.json';
import { App } from './app/App.tsx';
import { type Beginning, beginning } from './app/beginning.ts';
import { broughtFile } from './app/broughtFile.ts';
import { createKeeper } from './app/keeper.ts';
import { watchForNewerPage } from './app/newerPage.ts';
import { newId } from './app/newId.ts';
import { isAtRisk } from './app/saving.ts';
import { isAside, showBrokenPage } from './app/showBrokenPage.tsx';
import { doorTo } from './files/JobDoor.tsx';
import { createJobStore, type JobState } from './job/jobStore.ts';
import { clearLeftBehind, leaveBehind, leftBehind } from './storage/leftBehind.ts';
import { remember, remembered } from './storage/remembered.ts';
import { openShelf } from './storage/shelf.ts';
import type { Post } from './worker/planClient.ts';

const ON_TABLE = 'sagwright-on-table';

const page = document.getElementById('page');
if (page === null) throw new Error('index.html has no element with the id "page"');
const shelf = openShelf();
const makeWorker = (): Post => new Worker(new URL('./worker/worker.ts', import.meta.url), { type: 'module' });

const newer = watchForNewerPage();
const brought = await broughtFile();
const demoJob: JobState = { id: newId('job'), document: demo, changes: [] };
const begun: Beginning = isAside()
  ? { job: demoJob, kept: null, saving: 'example' }
  : await beginning({ shelf, left: leftBehind(), onTable: remembered(ON_TABLE), demo: demoJob });
const store = createJobStore(begun.job);
const keeper = createKeeper(
  {
    store,
    shelf,
    pages: new BroadcastChannel('sagwright-kept'),
    now: () => new Date().toISOString(),
    newId: () => newId('job'),
  },
  begun.kept,
  begun.saving,
);
if (begun.saving === 'keeping') keeper.keepNow();
const rememberTable = (): void => remember(ON_TABLE, store.state().id);
rememberTable();
store.subscribe(rememberTable);
if (brought?.kind === 'job') store.lay({ id: newId('job'), document: brought.job, changes: [] });
const isWorkAtRisk = (): boolean => isAtRisk(keeper.state()) && store.state().changes.length > 0;
addEventListener('beforeunload', (event) => {
  if (!isWorkAtRisk()) return;
  // A window that loads itself again as a newer page finds again what it leaves: nobody is asked.
  if (newer.isTaking() && leaveBehind(store.state())) return;
  event.preventDefault();
});
addEventListener('pagehide', () => {
  if (isWorkAtRisk()) leaveBehind(store.state());
  else clearLeftBehind();
});

/** A page that another window left behind lacks the parts that it had not fetched: it is loaded again, as the newer one. */
const onUncaughtError = (error: unknown): void =>
  newer.state() === 'elsewhere' ? newer.take() : showBrokenPage(error, store);

createRoot(page, { onUncaughtError }).render(
  <StrictMode>
    <App
      store={store}
      shelf={shelf}
      keeper={keeper}
      newer={newer}
      makeWorker={makeWorker}
      begunAt={doorTo(brought)}
    />
  </StrictMode>,
);
