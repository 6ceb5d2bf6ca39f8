import type { WorkListWords } from '@sagwright/workbench/words/fitting';
import type { ReactNode } from 'react';
import { set as words } from '../words/set.ts';

interface NotedProps {
  readonly list: WorkListWords;
  /** Takes back that a step is done, under the words that undo shows. */
  readonly onUndone: (id: string, title: string) => void;
}

/** What was done too early: to be undone in this order, or to be done again; and what is noted and is no step any more. */
export function NotedEarly({ list: { undo, again, lost, unknown }, onUndone }: NotedProps) {
  if (undo.length === 0 && again.length === 0 && lost.length === 0 && unknown === null) return null;
  return (
    <section className="fit-early" aria-label={words.undoTitle}>
      {undo.length > 0 && <h3>{words.undoTitle}</h3>}
      {undo.map(({ id, text }) => (
        <Row key={id} doWord={words.undone} onDo={() => onUndone(id, words.undoneOf(id))}>
          {text}
        </Row>
      ))}
      {again.length > 0 && <h3>{words.againTitle}</h3>}
      {again.map(({ id, text }) => (
        <p key={id}>{text}</p>
      ))}
      {lost.length > 0 && <h3>{words.lostTitle}</h3>}
      {[...lost, ...(unknown === null ? [] : [unknown])].map((text) => (
        <p key={text}>{text}</p>
      ))}
    </section>
  );
}

/** Every step that is done, folded. */
export function NotedDone({ list: { done }, onUndone }: NotedProps) {
  if (done.length === 0) return null;
  return (
    <details className="fit-done">
      <summary>{words.doneTitle(done.length)}</summary>
      {done.map(({ id, number, title, by }) => (
        <Row key={id} doWord={words.notDone} onDo={() => onUndone(id, words.notDoneOf(title))}>
          <b>{number}</b> {title} <span className="fit-quiet">{by}</span>
        </Row>
      ))}
    </details>
  );
}

interface RowProps {
  readonly doWord: string;
  readonly onDo: () => void;
  readonly children: ReactNode;
}

function Row({ doWord, onDo, children }: RowProps) {
  return (
    <div className="fit-early-row">
      <p>{children}</p>
      <button type="button" className="key" onClick={onDo}>
        {doWord}
      </button>
    </div>
  );
}
