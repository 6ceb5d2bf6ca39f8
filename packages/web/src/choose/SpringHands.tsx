import type { LaneView, LoadView, SpringView } from '@sagwright/workbench/page/shapes';
import { lazy, Suspense, useState } from 'react';
import { LoadSign } from '../machine/LoadSign.tsx';
import { choose as words } from '../words/choose.ts';
import type { ChooseEnd } from './end.ts';

const WhySheet = lazy(() => import('../machine/WhySheet.tsx'));

interface SpringHandsProps {
  readonly end: ChooseEnd;
  readonly spring: SpringView;
  readonly loads: readonly LoadView[];
  /** To the field of a path. */
  readonly onField: (path: string) => void;
}

/** What hands do with a spring for each load; what is set opens up. */
export function SpringHands({ end, spring, loads, onField }: SpringHandsProps) {
  const [asked, setAsked] = useState<string | null>(null);
  const set = spring.lanes.filter((lane) => lane.hands.length > 0);
  if (set.length === 0) return null;
  return (
    <section>
      <h4>{words.hands}</h4>
      <ul className="spring-hands">
        {set.map((lane) => (
          <li key={lane.load}>
            <LoadSign letter={lane.letter} />
            <div>
              <p className="choose-quiet">{loads.find((load) => load.id === lane.load)?.name}</p>
              <Hands
                lane={lane}
                open={lane.load === asked}
                onOpen={() => setAsked(asked === lane.load ? null : lane.load)}
              />
            </div>
          </li>
        ))}
      </ul>
      {asked !== null && (
        <div className="spring-why">
          <Suspense>
            <WhySheet
              key={asked}
              question={{ of: 'plan', asked: { figure: 'collar', end, spring: spring.id, loadCase: asked } }}
              onSheet={(sheet) => {
                setAsked(null);
                if (sheet?.kind === 'figures' && sheet.path !== null) onField(sheet.path);
              }}
            />
          </Suspense>
        </div>
      )}
    </section>
  );
}

interface HandsProps {
  readonly lane: LaneView;
  readonly open: boolean;
  readonly onOpen: () => void;
}

function Hands({ lane, open, onOpen }: HandsProps) {
  const [setting, ...others] = lane.hands;
  return (
    <>
      <button type="button" className="spring-hands-open" aria-expanded={open} onClick={onOpen}>
        {setting}
      </button>
      {others.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </>
  );
}
