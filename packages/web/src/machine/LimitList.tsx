import type { LimitListView, LimitRowView } from '@sagwright/workbench/page/limitListView';
import type { LoadView } from '@sagwright/workbench/page/shapes';
import { memo } from 'react';
import { addFigure } from '../words/fields.ts';
import { limitList as words } from '../words/limitList.ts';
import { loads } from '../words/machine.ts';
import { whole } from '../words/whole.ts';
import type { OpenSheet } from './sheets.ts';
import { useLimits } from './useLimits.ts';
import './limitList.css';

/** Every limit of the job, the failed first, what lacks a figure with a key to its field; and the room that the load leaves. */
export default memo(function LimitList({
  load,
  onSheet,
}: {
  readonly load: LoadView;
  readonly onSheet: OpenSheet;
}) {
  const view = useLimits(load.id);
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
          {load.letter !== null && <Rooms view={view} name={loads.spoken(load.letter, load.name)} />}
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
          <b className="limit-list-name">{capital(name)}</b>
          {needs.length === 0 ? (
            <span>{whole(says)}</span>
          ) : (
            <Needs name={name} needs={needs} onSheet={onSheet} />
          )}
          {note !== null && <span className="limit-list-note">{note}</span>}
        </li>
      ))}
    </ul>
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

function Rooms({ view, name }: { readonly view: LimitListView; readonly name: string }) {
  if (view.rooms.length === 0) return null;
  return (
    <>
      <h2>{words.room(name)}</h2>
      <p className="limit-list-counts">{capital(view.roomSays)}.</p>
      <ul>
        {view.rooms.map(({ place, says }) => (
          <li key={place}>{whole(capital(says))}</li>
        ))}
      </ul>
    </>
  );
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
