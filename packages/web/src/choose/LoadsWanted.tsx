import type { PageView } from '@sagwright/workbench/page/shapes';
import { rowOfLoad } from '@sagwright/workbench/targets/rowOfLoad';
import { useState } from 'react';
import { jobOf, useTable } from '../app/useJob.ts';
import { type TargetRow, wantOfLoad } from '../job/targets.ts';
import { LoadSign } from '../machine/LoadSign.tsx';
import { bandWords, targets as words } from '../words/targets.ts';
import { BandFields } from './BandFields.tsx';
import type { ChooseEnd } from './end.ts';
import { firstWanted, type InUse } from './setInUse.ts';
import './loadsWanted.css';

interface LoadsWantedProps {
  readonly view: PageView;
  readonly inUse: InUse;
}

const ends = ['rear', 'front'] as const;

/** What each load wants of each end, and who says so: the set, the load itself, or nobody. */
export function LoadsWanted({ view, inUse }: LoadsWantedProps) {
  const [opened, setOpened] = useState<{ readonly load: string; readonly end: ChooseEnd } | null>(null);
  const job = jobOf(useTable().state);
  const loads = view.loads.flatMap(({ id, letter, name }) => {
    const load = id === null ? undefined : job.loadCases[id];
    return id === null || load === undefined ? [] : [{ id, letter, name, load }];
  });
  return (
    <section className="wanted-part loads-wanted">
      <div className="loads-wanted-head">
        <div>
          <h3>{words.byLoad}</h3>
          <p>{words.byLoadNote}</p>
        </div>
        {ends.map((end) => (
          <span key={end} aria-hidden="true">
            {words.rowsOf(end)}
          </span>
        ))}
      </div>
      <ul>
        {loads.map(({ id, letter, name, load }) => (
          <li key={id}>
            <p className="loads-wanted-name">
              <LoadSign letter={letter} />
              {name}
            </p>
            {ends.map((end) => {
              const own = load.wanted?.[end];
              const wanted = own ?? rowOfLoad(job, end, load, inUse.set)?.row.wanted;
              const open = opened?.load === id && opened.end === end;
              return (
                <button
                  key={end}
                  type="button"
                  className="loads-wanted-end"
                  aria-expanded={open}
                  onClick={() => setOpened(open ? null : { load: id, end })}
                >
                  <span className="loads-wanted-which">{words.rowsOf(end)}</span>
                  <b>{wanted === undefined ? words.byNone : bandWords(wanted)}</b>
                  <span>{lengthWords(view[end].wanted[id]?.words ?? '', own !== undefined)}</span>
                </button>
              );
            })}
            {opened?.load === id && (
              <OwnWanted key={opened.end} view={view} inUse={inUse} load={id} end={opened.end} />
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

/** The band in millimetres or inches of wheel travel, where it is worked out; that it is the load's own. */
function lengthWords(length: string, own: boolean): string {
  if (!own) return length;
  return length === '' ? words.itsOwn : words.ownWith(length);
}

interface OwnWantedProps extends LoadsWantedProps {
  readonly load: string;
  readonly end: ChooseEnd;
}

/** Gives a load a wish of its own at one end, changes it, or leaves it to the set again. */
function OwnWanted({ view, inUse, load, end }: OwnWantedProps) {
  const { store, state } = useTable();
  const job = jobOf(state);
  const loadCase = job.loadCases[load]!;
  const own = loadCase.wanted?.[end];
  const want = (wanted: TargetRow['wanted'] | undefined): void =>
    store.act(words.ownAct(loadCase.name), () => wantOfLoad(job, load, end, wanted));
  if (own === undefined) {
    const start = rowOfLoad(job, end, loadCase, inUse.set)?.row.wanted ?? firstWanted(inUse, end);
    return (
      <div className="loads-wanted-own">
        <button type="button" className="key" onClick={() => want(start)}>
          {words.giveOwn}
        </button>
      </div>
    );
  }
  return (
    <div className="loads-wanted-own">
      <BandFields path={`loadCases.${load}.wanted.${end}`} wanted={own} end={view[end]} onChange={want} />
      <button type="button" className="key" onClick={() => want(undefined)}>
        {words.leaveToSet}
      </button>
    </div>
  );
}
