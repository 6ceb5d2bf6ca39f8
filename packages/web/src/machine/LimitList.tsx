import type { LimitListView, LimitRowView } from '@sagwright/workbench/page/limitListView';
import type { LoadView } from '@sagwright/workbench/page/shapes';
import { capital } from '@sagwright/workbench/words/capital';
import { memo, useCallback } from 'react';
import { useTable } from '../app/useJob.ts';
import { useTold } from '../app/useTold.ts';
import { addFigure } from '../words/fields.ts';
import { limitList as words } from '../words/limitList.ts';
import { loads } from '../words/machine.ts';
import { whole } from '../words/whole.ts';
import type { FigureQuestion } from '../worker/messages.ts';
import type { MachineSheet, OpenSheet } from './sheets.ts';
import './limitList.css';

/** Every limit of the job, the failed first, what lacks a figure with a key to its field; and the room that the load leaves. */
export default memo(function LimitList({
  load,
  onSheet,
}: {
  readonly load: LoadView;
  readonly onSheet: OpenSheet;
}) {
  const { limits } = useTable();
  const view = useTold(useCallback(() => limits(load.id), [limits, load.id]));
  return (
    <section className="limit-list" aria-labelledby="limit-list-title">
      <h2 id="limit-list-title">{words.title}</h2>
      {view === null ? (
        <p>{words.working}</p>
      ) : (
        <>
          <p className="limit-list-counts">{words.counts(countsOf(view))}</p>
          {standings.map((standing) => (
            <Rows
              key={standing}
              rows={view.rows.filter(({ verdict }) => verdict === standing)}
              onSheet={onSheet}
            />
          ))}
          <Rooms view={view} load={load} onSheet={onSheet} />
        </>
      )}
    </section>
  );
});

/** What must be looked at comes first. */
const standings = ['over', 'within its ±', 'within', 'not checked'] as const;

function countsOf({ rows }: LimitListView): Readonly<Record<LimitRowView['verdict'], number>> {
  const count = (verdict: LimitRowView['verdict']): number =>
    rows.filter((row) => row.verdict === verdict).length;
  return {
    over: count('over'),
    'within its ±': count('within its ±'),
    within: count('within'),
    'not checked': count('not checked'),
  };
}

function Rows({ rows, onSheet }: { readonly rows: readonly LimitRowView[]; readonly onSheet: OpenSheet }) {
  if (rows.length === 0) return null;
  return (
    <ul>
      {rows.map(({ id, name, verdict, says, note, needs }) => (
        <li key={id} data-verdict={verdict} data-limit={id}>
          {needs.length === 0 ? (
            <OpenKey says={says} name={name} onOpen={() => onSheet(why({ of: 'limit', id }))} />
          ) : (
            <Needs name={name} needs={needs} onSheet={onSheet} />
          )}
          {note !== null && <span className="limit-list-note">{note}</span>}
        </li>
      ))}
    </ul>
  );
}

function why(question: FigureQuestion): MachineSheet {
  return { kind: 'why', question };
}

/** A sentence that opens up. */
function OpenKey({
  name,
  says,
  onOpen,
}: {
  readonly name: string | null;
  readonly says: string;
  readonly onOpen: () => void;
}) {
  return (
    <button type="button" className="limit-list-open" onClick={onOpen}>
      {name !== null && <b>{capital(name)}</b>}
      <span>{whole(says)}</span>
    </button>
  );
}

/** Each figure that is needed, where one reads it, and a key to its field; what is no field of the machine has none. */
function Needs({
  name,
  needs,
  onSheet,
}: Pick<LimitRowView, 'name' | 'needs'> & { readonly onSheet: OpenSheet }) {
  return (
    <>
      <b>{capital(name)}</b>
      <span>{words.notChecked}</span>
      {needs.map(({ says, path }) => (
        <span key={`${path} ${says}`} className="limit-list-need">
          <span>{says}</span>
          {!path.startsWith('loadCases') && (
            <button
              type="button"
              className="key"
              aria-label={words.addFigureTo(says, name)}
              onClick={() => onSheet({ kind: 'figures', path })}
            >
              {addFigure}
            </button>
          )}
        </span>
      ))}
    </>
  );
}

function Rooms({
  view,
  load,
  onSheet,
}: {
  readonly view: LimitListView;
  readonly load: LoadView;
  readonly onSheet: OpenSheet;
}) {
  const { id, letter, name } = load;
  if (id === null || letter === null) return null;
  return (
    <>
      <h2>{words.room(loads.spoken(letter, name))}</h2>
      <p>{whole(view.payload ?? '')}</p>
      {view.rooms.length > 0 && <p className="limit-list-counts">{capital(view.roomSays)}.</p>}
      <ul>
        {view.rooms.map(({ place, says }) => (
          <li key={place}>
            <OpenKey
              name={null}
              says={capital(says)}
              onOpen={() => onSheet(why({ of: 'room', place, load: id }))}
            />
          </li>
        ))}
      </ul>
    </>
  );
}
