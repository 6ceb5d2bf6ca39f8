import type { PageView } from '@sagwright/workbench/page/shapes';
import { useEffect, useRef } from 'react';
import { jobOf, useTable } from '../app/useJob.ts';
import { write } from '../job/edits.ts';
import { set as words } from '../words/set.ts';
import { FitPage } from './FitPage.tsx';
import '../fields/key.css';
import '../machine/sheetHere.css';
import './setTab.css';

interface SetTabProps {
  readonly view: PageView;
  /** Field to go to, asked anew each time. */
  readonly asked: { readonly path: string } | null;
}

/** What hands do: fitting what the job tells of. */
export default function SetTab({ view, asked }: SetTabProps) {
  const { state, store, problems } = useTable();
  const tab = useRef<HTMLDivElement>(null);
  const job = jobOf(state);
  /** The last one without a problem: its list stays in sight while a field is being mended. */
  const sound = useRef(job);
  if (problems.length === 0) sound.current = job;
  useEffect(() => {
    if (asked !== null) goTo(tab.current, asked.path);
  }, [asked]);
  return (
    <div className="set-tab" ref={tab}>
      <h2 className="set-title">{words.title}</h2>
      {job.fitting?.rear === undefined || sound.current.fitting?.rear === undefined ? (
        <div className="set-nothing">
          <p>
            <b>{words.nothing}</b> {words.nothingMore}
          </p>
          <button
            type="button"
            className="key"
            data-do
            onClick={() => store.act(words.begun, (document) => [write(document, ['fitting', 'rear'], {})])}
          >
            {words.begin}
          </button>
        </div>
      ) : (
        <FitPage view={view} job={job} sound={sound.current} />
      )}
    </div>
  );
}

/** Opens what holds a field, brings it into sight and gives it the keyboard. */
function goTo(tab: HTMLDivElement | null, path: string): void {
  const names = path.split('.');
  while (names.length > 2) {
    const field = tab?.querySelector(`[id="${names.join('.')}"]`);
    if (field instanceof HTMLElement) {
      const held = field.closest('details');
      if (held !== null) held.open = true;
      field.scrollIntoView({ block: 'center' });
      field.querySelector<HTMLElement>('[data-field-face]')?.focus();
      return;
    }
    names.pop();
  }
}
