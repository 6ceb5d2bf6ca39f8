import type { LimitView, LoadView } from '@sagwright/workbench/page/shapes';
import { memo } from 'react';
import { limits as words } from '../words/machine.ts';
import { whole } from '../words/whole.ts';
import type { OpenSheet } from './sheets.ts';
import './limitList.css';

/** A load against each of its limits, the exceeded first, the unknown with a key to its field. */
export const LimitList = memo(function LimitList({
  load,
  onSheet,
}: {
  readonly load: LoadView;
  readonly onSheet: OpenSheet;
}) {
  if (load.limits.length === 0) return null;
  const known = [...load.limits].filter(({ allowed }) => allowed !== null).sort(byUrgency);
  const unknown = load.limits.filter(({ allowed }) => allowed === null);
  return (
    <section className="limit-list" aria-labelledby="limit-list-title">
      <h2 id="limit-list-title">{words.title}</h2>
      <ul>
        {known.map((limit) => (
          <li key={limit.path} data-verdict={limit.verdict}>
            <span>{whole(limit.text)}</span>
            <span className="limit-list-left">{words.verdict[limit.verdict]}</span>
          </li>
        ))}
        {unknown.map((limit) => (
          <li key={limit.path} data-verdict={limit.verdict}>
            <span>{whole(limit.text)}</span>
            <button
              type="button"
              className="key"
              onClick={() => onSheet({ kind: 'figures', path: limit.path })}
            >
              {words.addFigure}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
});

const urgency: Readonly<Record<LimitView['verdict'], number>> = {
  over: 0,
  'within its ±': 1,
  within: 2,
  'not checked': 3,
};

function byUrgency(a: LimitView, b: LimitView): number {
  return urgency[a.verdict] - urgency[b.verdict];
}
