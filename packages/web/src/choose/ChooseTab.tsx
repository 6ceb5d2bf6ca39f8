import type { PageView } from '@sagwright/workbench/page/shapes';
import { lazy, Suspense, useState } from 'react';
import { jobOf, useTable } from '../app/useJob.ts';
import { useWidth } from '../app/useWidth.ts';
import { ReachAxis } from '../drawings/reach/ReachLine.tsx';
import { pickSpring } from '../job/choice.ts';
import { choose as words } from '../words/choose.ts';
import type { ChooseEnd } from './end.ts';
import { reachInputs } from './reachInputs.ts';
import { SpringRow } from './SpringRow.tsx';
import { TargetBar } from './TargetBar.tsx';
import { usePageTurns } from './usePageTurns.ts';
import '../fields/key.css';
import './chooseTab.css';

const TargetSheet = lazy(() => import('./TargetSheet.tsx'));

interface ChooseTabProps {
  readonly view: PageView;
  /** To the field of a path. */
  readonly onField: (path: string) => void;
}

/** Every spring of an end against what its adjuster reaches: softest first, never re-sorted, never scored. */
export default function ChooseTab({ view, onField }: ChooseTabProps) {
  const { store, state } = useTable();
  const [end, setEnd] = useState<ChooseEnd>('rear');
  const [editing, setEditing] = useState(false);
  const [opened, setOpened] = useState<ReadonlySet<string>>(new Set());
  const [ref, width] = useWidth<HTMLDivElement>();
  usePageTurns(setEnd);
  const here = view[end];
  const inputs = reachInputs(here, view.loads);
  const job = jobOf(state);
  const domain = inputs.values().next().value?.domain ?? null;
  const pick = (spring: string | null, name: string): void =>
    store.act(spring === null ? words.backAct : words.planAct(name), () => pickSpring(job, end, spring));
  const toggle = (id: string): void =>
    setOpened(
      (before) => new Set(before.has(id) ? [...before].filter((each) => each !== id) : [...before, id]),
    );
  return (
    <div className="choose-tab">
      <fieldset className="choose-pages" aria-label={words.pages}>
        {(['rear', 'front'] as const).map((name) => (
          <button key={name} type="button" aria-pressed={name === end} onClick={() => setEnd(name)}>
            <span>{words.page[name]}</span>
            <span className="choose-quiet">{words.rates(view[name].springs.length)}</span>
          </button>
        ))}
      </fieldset>
      <TargetBar view={view} end={end} open={editing} onOpen={() => setEditing(!editing)} />
      {editing && (
        <Suspense>
          <TargetSheet onClose={() => setEditing(false)} />
        </Suspense>
      )}
      <section className="choose-answer" aria-live="polite">
        <h2>{here.headline}</h2>
        {here.suggestion.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        {here.remedies.length > 0 && (
          <ul aria-label={words.whatWould}>
            {here.remedies.map((remedy) => (
              <li key={remedy}>{remedy}</li>
            ))}
          </ul>
        )}
        {here.kilogramsPerTurn !== null && <p>{words.perTurn(here.kilogramsPerTurn, end)}</p>}
      </section>
      <div className="choose-scale">
        <span className="choose-quiet">{words.softestFirst}</span>
        <div ref={ref}>
          {here.adjuster !== null && (
            <strong>
              {words.reaches(here.adjuster.name, here.adjuster.fromWords, here.adjuster.toWords)}
            </strong>
          )}
          {domain !== null && width > 0 && (
            <>
              <p className="choose-quiet">{words.axis}</p>
              <ReachAxis domain={domain} width={width} />
            </>
          )}
        </div>
      </div>
      {here.springs.length === 0 && <p className="choose-empty">{words.nothing}</p>}
      {here.springs.map((spring) => (
        <SpringRow
          key={spring.id}
          end={end}
          spring={spring}
          loads={view.loads}
          reach={inputs.get(spring.id) ?? null}
          width={width}
          planned={spring.id === here.planned}
          picked={spring.id === here.planned && here.plannedBy === 'choice'}
          suggested={spring.id === here.suggested}
          open={opened.has(spring.id) !== (spring.id === here.planned)}
          onOpen={() => toggle(spring.id)}
          onField={onField}
          onPick={(yes) => pick(yes ? spring.id : null, spring.name)}
        />
      ))}
    </div>
  );
}
