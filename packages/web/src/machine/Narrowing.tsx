import type { PageView } from '@sagwright/workbench/page/shapes';
import { memo } from 'react';
import { narrowing as words } from '../words/machine.ts';
import { whole } from '../words/whole.ts';
import type { OpenSheet } from './sheets.ts';
import './narrowing.css';

/** What would narrow either end's adjuster most, with a key to its field; nothing where nothing is aimed at. */
export const Narrowing = memo(function Narrowing({
  view,
  onSheet,
}: {
  readonly view: PageView;
  readonly onSheet: OpenSheet;
}) {
  const ends = (['rear', 'front'] as const).flatMap((end) => {
    const { narrowing } = view[end];
    return narrowing === null ? [] : [{ end, ...narrowing }];
  });
  if (ends.length === 0) return null;
  return (
    <section className="narrowing" aria-labelledby="narrowing-title">
      <h2 id="narrowing-title">{words.title}</h2>
      {ends.map(({ end, says, path }) => (
        <div key={end}>
          <p>
            <b>{words.end[end]}</b> {whole(says)}
          </p>
          <button type="button" className="key" onClick={() => onSheet({ kind: 'figures', path })}>
            {words.goTo}
          </button>
        </div>
      ))}
    </section>
  );
});
