import type { PageView } from '@sagwright/workbench/page/shapes';
import { jobOf, useTable } from '../app/useJob.ts';
import { targets as words } from '../words/targets.ts';
import { LoadsWanted } from './LoadsWanted.tsx';
import { SetInUse } from './SetInUse.tsx';
import { SetRows } from './SetRows.tsx';
import { setInUse } from './setInUse.ts';
import './wantedPage.css';

/** What sag is wanted: the set in use, its rows, and what single loads want beside it. What it does to the springs stands with it. */
export default function WantedPage({ view }: { readonly view: PageView }) {
  const job = jobOf(useTable().state);
  const inUse = setInUse(job, view.targets.id);
  return (
    <div className="wanted-page">
      <SetInUse view={view} inUse={inUse} />
      <section className="wanted-effect" aria-label={words.withIt}>
        <p>{view.rear.headline}</p>
        {view.front.springs.length > 0 && <p>{view.front.headline}</p>}
      </section>
      {inUse.own && (
        <section className="wanted-part">
          <p>{words.firstTaken}</p>
          {(['rear', 'front'] as const).map((end) => (
            <SetRows key={end} end={end} view={view} inUse={inUse} />
          ))}
        </section>
      )}
      <LoadsWanted view={view} inUse={inUse} />
    </div>
  );
}
