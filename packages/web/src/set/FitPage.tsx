import type { JobDocument } from '@sagwright/records/schema';
import { workListOf } from '@sagwright/workbench/fitting/workList';
import { unitsFor } from '@sagwright/workbench/format/units';
import type { PageView } from '@sagwright/workbench/page/shapes';
import { workListWords } from '@sagwright/workbench/words/fitting';
import { useCallback, useState } from 'react';
import { SaidOnce } from '../app/SaidOnce.tsx';
import { useStore } from '../app/useJob.ts';
import { useSame } from '../app/useSame.ts';
import { TextField } from '../fields/TextField.tsx';
import { write } from '../job/edits.ts';
import { remember, remembered } from '../storage/remembered.ts';
import { set as words } from '../words/set.ts';
import { FitParts } from './FitParts.tsx';
import { FitSteps } from './FitSteps.tsx';
import { NotedDone, NotedEarly } from './Noted.tsx';
import { doneNow, notDone } from './stepEdits.ts';
import './fitPage.css';

interface FitPageProps {
  readonly view: PageView;
  readonly job: JobDocument;
  /** The job that the list is of: as it was before a problem, where it has one. */
  readonly sound: JobDocument;
}

const HANDS = 'sagwright-hands';

/** New shocks: what does not fit, what was done too early, then the steps by their numbers. */
export function FitPage({ view, job, sound }: FitPageProps) {
  const store = useStore();
  const [by, setBy] = useState(() => remembered(HANDS) ?? '');
  const work = workListOf(sound).rear!;
  const list = useSame(workListWords(work, unitsFor('typed', sound, '.')));
  const done = useCallback(
    (id: string, title: string) =>
      store.act(words.doneOf(title), (document) => {
        const { rear } = workListOf(document as JobDocument);
        return rear === null ? [] : doneNow(document, rear, id, by, clock());
      }),
    [store, by],
  );
  const undone = (id: string, title: string): void => store.act(title, (document) => [notDone(document, id)]);
  const progress = words.progress(list.done.length, work.steps.length);
  return (
    <>
      <div className="fit-head">
        <p>
          {list.unit !== null && <b>{list.unit}. </b>}
          {list.phases.length === 0 ? words.allDone : `${progress}. ${words.lifts(work.changes)}`}
        </p>
        {job !== sound && <p className="fit-stale">{words.stale}</p>}
        <TextField
          label={words.hands}
          path="hands"
          value={by}
          most={120}
          onCommit={(name) => {
            setBy(name);
            remember(HANDS, name);
          }}
        />
      </div>
      <NotedEarly list={list} onUndone={undone} />
      <FitParts list={list} job={job} view={view} />
      <ul className="fit-cautions">
        {list.cautions.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      <FitSteps phases={list.phases} job={job} onDone={done} />
      <NotedDone list={list} onUndone={undone} />
      <p className="fit-source">{list.source}</p>
      <button
        type="button"
        className="key fit-end"
        onClick={() =>
          store.act(words.ended, (document) => [write(document, ['fitting', 'rear'], undefined)])
        }
      >
        {words.end}
      </button>
      <SaidOnce sentence={progress} />
    </>
  );
}

/** Date and time as they are written down: "2026-05-02 14:10". */
function clock(): string {
  const now = new Date();
  const two = (part: number): string => String(part).padStart(2, '0');
  const day = [now.getFullYear(), two(now.getMonth() + 1), two(now.getDate())].join('-');
  return `${day} ${two(now.getHours())}:${two(now.getMinutes())}`;
}
