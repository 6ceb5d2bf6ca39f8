import type { ForkView } from '@sagwright/workbench/page/forkView';
import { useState } from 'react';
import { Steppers } from '../../fields/Steppers.tsx';
import { fork as words } from '../../words/fork.ts';
import type { OpenSheet } from '../sheets.ts';
import '../openKey.css';
import './forcesAt.css';

/** The forces at one place of the stroke, step by step along it; each opens up. */
export function ForcesAt({ fork, onSheet }: { readonly fork: ForkView; readonly onSheet: OpenSheet }) {
  const { steps, lengthUnit, forceUnit } = fork;
  const last = steps.length - 1;
  const [place, setPlace] = useState(last);
  const at = steps[place]!.words;
  const forces = (['springs', 'air', 'airQuick', 'whole'] as const).filter(
    (force) => force !== 'airQuick' || steps[place]!.airQuick !== null,
  );
  return (
    <section className="forces-at" aria-label={words.at}>
      <p>
        <b>{words.atStroke(`${at.stroke} ${lengthUnit}`)}</b>
      </p>
      <Steppers
        label={words.at}
        step={words.tenth}
        onStep={(times) => setPlace(Math.max(0, Math.min(last, place + times)))}
      />
      <ul>
        {forces.map((force) => (
          <li key={force}>
            <button
              type="button"
              className="open-key"
              onClick={() =>
                onSheet({ kind: 'why', question: { of: 'fork', asked: { force, share: place / last } } })
              }
            >
              <small>{words.lines[force]}</small>
              <b>
                {at[force]} {forceUnit}
              </b>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
