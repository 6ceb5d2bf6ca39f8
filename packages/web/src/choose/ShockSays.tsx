import type { ShockView } from '@sagwright/workbench/page/shapes';
import type { FigureName } from '@sagwright/workbench/why/figures';
import { useState } from 'react';
import { choose as words } from '../words/choose.ts';
import { together } from '../words/fields.ts';
import { SpringWhy } from './SpringWhy.tsx';
import './shockSays.css';

interface ShockSaysProps {
  readonly shock: ShockView;
  /** To the field of a path. */
  readonly onField: (path: string) => void;
}

/** The rear shock by itself: how its air is read, and what is left of its length adjuster both ways; what is worked out opens up. */
export function ShockSays({ shock, onField }: ShockSaysProps) {
  const [asked, setAsked] = useState<FigureName | null>(null);
  const { air, length } = shock;
  if (air === null && length.length === 0) return null;
  return (
    <section className="shock-says">
      {air !== null && (
        <div>
          <h3>{words.air}</h3>
          {air.says.map((says) => (
            <p key={says}>{together(says)}</p>
          ))}
        </div>
      )}
      {length.length > 0 && (
        <div>
          <h3>{words.length}</h3>
          {length.map(({ says, figure }) =>
            figure === null ? (
              <p key={says}>{together(says)}</p>
            ) : (
              <button
                key={says}
                type="button"
                className="choose-figure"
                aria-expanded={asked === figure}
                onClick={() => setAsked(asked === figure ? null : figure)}
              >
                {together(says)}
              </button>
            ),
          )}
        </div>
      )}
      {asked !== null && (
        <SpringWhy
          key={asked}
          question={{ figure: asked, end: 'rear', spring: null, loadCase: null }}
          onClose={() => setAsked(null)}
          onField={onField}
        />
      )}
    </section>
  );
}
