import '@fontsource/b612/latin-400.css';
import '@fontsource/b612/latin-700.css';
import './theme/tokens.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import demo from '../../../examples/two-and-a-box.json';
import { App } from './app/App.tsx';
import { broughtFile } from './app/broughtFile.ts';
import { keepOnShelf } from './app/keeper.ts';
import { watchForNewerPage } from './app/newerPage.ts';
import { newId } from './app/newId.ts';
import { createJobStore } from './job/jobStore.ts';
import { openShelf } from './storage/shelf.ts';
import type { Post } from './worker/planClient.ts';

const page = document.getElementById('page');
if (page === null) throw new Error('index.html has no element with the id "page"');
const root = createRoot(page);
const shelf = openShelf();
const makeWorker = (): Post => new Worker(new URL('./worker/worker.ts', import.meta.url), { type: 'module' });

const newer = watchForNewerPage();
const [latest, brought] = await Promise.all([shelf.latest(), broughtFile()]);
const store = createJobStore(
  brought?.kind === 'job'
    ? { id: newId('job'), document: brought.job, changes: [] }
    : (latest ?? { id: newId('job'), document: demo, changes: [] }),
);
const keeper = keepOnShelf(store, shelf, () => new Date().toISOString());
root.render(
  <StrictMode>
    <App
      store={store}
      shelf={shelf}
      newer={newer}
      makeWorker={makeWorker}
      saving={keeper}
      broken={brought?.kind === 'broken' ? brought : null}
    />
  </StrictMode>,
);
