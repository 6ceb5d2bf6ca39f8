import type { EndView } from '@sagwright/workbench/page/shapes';
import { useState } from 'react';
import { choose as words } from '../words/choose.ts';
import { together } from '../words/fields.ts';
import type { ChooseEnd } from './end.ts';
import { SpringWhy } from './SpringWhy.tsx';
import { goToSpring } from './springPlace.ts';
import './chooseAnswer.css';

interface ChooseAnswerProps {
  readonly end: ChooseEnd;
  readonly here: EndView;
  readonly onField: (path: string) => void;
}

/** The answer first: which spring, or what would help where none reaches; and what a turn is worth. */
export function ChooseAnswer({ end, here, onField }: ChooseAnswerProps) {
  const [asked, setAsked] = useState(false);
  const { headline, remedies, perTurn, planned, springs } = here;
  const turn = perTurn !== null && planned !== null && (
    <button type="button" className="choose-figure" aria-expanded={asked} onClick={() => setAsked(!asked)}>
      {together(perTurn)}
    </button>
  );
  return (
    <section className="choose-answer" data-look={remedies.length > 0 || undefined}>
      <div className="choose-answer-head">
        <div>
          <h2>{together(headline)}</h2>
          {remedies.length === 0 && turn}
        </div>
        {planned !== null && springs.length > 1 && remedies.length === 0 && (
          <button type="button" className="key" onClick={() => goToSpring(planned)}>
            {words.why}
          </button>
        )}
      </div>
      {remedies.length > 0 && (
        <>
          <p>{words.whatWould}</p>
          <ul>
            {remedies.map((remedy) => (
              <li key={remedy}>{together(remedy)}</li>
            ))}
          </ul>
        </>
      )}
      {springs.length === 0 && <p>{words.whereToAdd}</p>}
      {remedies.length > 0 && turn}
      {asked && planned !== null && (
        <SpringWhy
          question={{ figure: 'kg-per-turn', end, spring: planned, loadCase: null }}
          onClose={() => setAsked(false)}
          onField={onField}
        />
      )}
    </section>
  );
}
