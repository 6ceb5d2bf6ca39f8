import type { PageView } from '@sagwright/workbench/page/shapes';
import { useState } from 'react';
import { jobOf, useTable } from '../app/useJob.ts';
import { useWidth } from '../app/useWidth.ts';
import { ReachHead } from '../drawings/reach/ReachHead.tsx';
import { pickSpring } from '../job/choice.ts';
import { choose as words } from '../words/choose.ts';
import type { ChooseEnd } from './end.ts';
import { reachHeadInput, reachInputs } from './reachInputs.ts';
import { SpringRow } from './SpringRow.tsx';
import './springList.css';

interface SpringListProps {
  readonly end: ChooseEnd;
  readonly view: PageView;
  readonly onField: (path: string) => void;
}

/** Every spring of an end on one scale: softest first, never re-sorted, never scored. The planned and the suggested stand open. */
export function SpringList({ end, view, onField }: SpringListProps) {
  const { store, state } = useTable();
  const [opened, setOpened] = useState<Readonly<Record<string, boolean>>>({});
  const [ref, width] = useWidth<HTMLDivElement>();
  const here = view[end];
  const inputs = reachInputs(here, view.loads);
  const head = reachHeadInput(here, inputs);
  const pick = (spring: string | null, name: string): void =>
    store.act(spring === null ? words.backAct : words.planAct(name), () =>
      pickSpring(jobOf(state), end, spring),
    );
  return (
    <section className="spring-list" aria-label={words.page[end]}>
      <div className="spring-list-head">
        <p>{words.softestFirst}</p>
        <div ref={ref}>{head !== null && width > 0 && <ReachHead input={head} width={width} />}</div>
      </div>
      {here.springs.map((spring) => {
        const planned = spring.id === here.planned;
        const suggested = spring.id === here.suggested;
        const open = opened[spring.id] ?? (planned || suggested);
        return (
          <SpringRow
            key={spring.id}
            end={end}
            here={here}
            spring={spring}
            view={view}
            reach={inputs.get(spring.id) ?? null}
            width={width}
            planned={planned}
            suggested={suggested}
            open={open}
            onOpen={() => setOpened({ ...opened, [spring.id]: !open })}
            onField={onField}
            onPick={(yes) => pick(yes ? spring.id : null, spring.name)}
          />
        );
      })}
    </section>
  );
}
