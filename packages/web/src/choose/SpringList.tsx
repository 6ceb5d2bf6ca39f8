import type { JobDocument } from '@sagwright/records/schema';
import type { PageView } from '@sagwright/workbench/page/shapes';
import { memo, useCallback, useState } from 'react';
import { useStore } from '../app/useJob.ts';
import { useSame } from '../app/useSame.ts';
import { useWidth } from '../app/useWidth.ts';
import { ReachHead } from '../drawings/reach/ReachHead.tsx';
import { pickSpring } from '../job/choice.ts';
import { choose as words } from '../words/choose.ts';
import type { ChooseEnd } from './end.ts';
import { reachHeadInput, reachInputs } from './reachInputs.ts';
import { SpringDetails } from './SpringDetails.tsx';
import { SpringRow } from './SpringRow.tsx';
import './springList.css';

interface SpringListProps {
  readonly end: ChooseEnd;
  readonly view: PageView;
  readonly onField: (path: string) => void;
}

/** Every spring of an end on one scale: softest first, never re-sorted, never scored. The planned and the suggested stand open. */
export const SpringList = memo(function SpringList({ end, view, onField }: SpringListProps) {
  const store = useStore();
  const [opened, setOpened] = useState<Readonly<Record<string, boolean>>>({});
  const [ref, width] = useWidth<HTMLDivElement>();
  const here = view[end];
  const inputs = useSame(reachInputs(here, view.loads));
  const head = reachHeadInput(here, inputs);
  const pick = (spring: string | null, name: string): void =>
    store.act(spring === null ? words.backAct : words.planAct(name), (document) =>
      pickSpring(document as JobDocument, end, spring),
    );
  const open = useCallback(
    (id: string, yes: boolean) => setOpened((before) => ({ ...before, [id]: yes })),
    [],
  );
  return (
    <section className="spring-list" aria-label={words.page[end]}>
      <div className="spring-list-head">
        <p>{words.softestFirst}</p>
        <div ref={ref}>{head !== null && width > 0 && <ReachHead input={head} width={width} />}</div>
      </div>
      {here.springs.map((spring) => {
        const { id } = spring;
        const planned = id === here.planned;
        const suggested = id === here.suggested;
        const isOpen = opened[id] ?? (planned || suggested);
        const reach = inputs[id] ?? null;
        return (
          <SpringRow
            key={id}
            spring={spring}
            reach={reach}
            width={width}
            planned={planned ? here.plannedBy : null}
            suggested={suggested}
            open={isOpen}
            onOpen={open}
            details={
              isOpen && (
                <SpringDetails
                  end={end}
                  here={here}
                  spring={spring}
                  view={view}
                  reach={reach}
                  planned={planned}
                  suggested={suggested}
                  onField={onField}
                  onPick={(yes) => pick(yes ? id : null, spring.name)}
                />
              )
            }
          />
        );
      })}
    </section>
  );
});
