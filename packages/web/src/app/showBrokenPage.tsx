import { createRoot } from 'react-dom/client';
import type { JobStore } from '../job/jobStore.ts';
import { BrokenPage } from './BrokenPage.tsx';

const ASIDE = '#aside';

/** Whether the page is to begin with no job of the shelf, this once: the way past a job that breaks it each time. */
export function isAside(): boolean {
  if (location.hash !== ASIDE) return false;
  history.replaceState(null, '', location.pathname);
  return true;
}

/** Puts the broken page in the place of what is gone, and tells the fault on the console as any other. */
export function showBrokenPage(error: unknown, store: JobStore): void {
  reportError(error);
  const place = document.body.appendChild(document.createElement('div'));
  createRoot(place).render(
    <BrokenPage
      why={String(error)}
      onToFile={() =>
        void import('../files/saveJob.ts').then(({ saveJob }) => saveJob(store.state().document))
      }
      onAgain={() => location.reload()}
      onAside={() => {
        location.hash = ASIDE;
        location.reload();
      }}
    />,
  );
}
