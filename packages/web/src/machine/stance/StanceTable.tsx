import type { FigureWords } from '@sagwright/workbench/page/shapes';
import type { StanceRowView, StanceView } from '@sagwright/workbench/page/stanceView';
import type { StanceQuestion } from '@sagwright/workbench/stance/whyStance';
import { capital } from '@sagwright/workbench/words/capital';
import { attitude } from '../../words/machine.ts';
import { stance as words } from '../../words/stance.ts';
import type { OpenSheet } from '../sheets.ts';

interface StanceTableProps {
  readonly view: StanceView;
  readonly load: string | null;
  readonly onSheet: OpenSheet;
}

/** Every figure as found, planned and as a change; each opens up. What must be read first leads to its field. */
export function StanceTable({ view, load, onSheet }: StanceTableProps) {
  const known = view.rows.filter(({ needs, asFound }) => needs === null && asFound !== null);
  const needed = view.rows.filter(({ needs }) => needs !== null);
  return (
    <section className="sheet-part" aria-label={words.figures}>
      <ul className="stance-rows">
        {known.map((row) => (
          <Row
            key={`${row.figure} ${row.point}`}
            row={row}
            onOpen={(of) =>
              onSheet({
                kind: 'why',
                question: { of: 'stance', asked: { figure: row.figure, point: row.point, load, of } },
              })
            }
          />
        ))}
      </ul>
      {known.some(({ felt }) => felt !== null) && <p>{view.feltBy}</p>}
      {[...view.notes, ...view.beam].map((text) => (
        <p key={text}>{text}</p>
      ))}
      <ul className="stance-needed">
        {needed.map(({ figure, point, name, needs }) => (
          <li key={`${figure} ${point}`}>
            <span>
              {capital(name)}: {needs!.says}
            </span>
            <button
              type="button"
              className="key"
              onClick={() => onSheet({ kind: 'figures', path: needs!.path })}
            >
              {words.addFigure}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Row({
  row,
  onOpen,
}: {
  readonly row: StanceRowView;
  readonly onOpen: (of: StanceQuestion['of']) => void;
}) {
  const { name, asFound, planned, change, felt } = row;
  const unit = attitude.unit((planned ?? asFound)!.unit);
  return (
    <li className="stance-row">
      <span className="stance-name">
        <b>{capital(name)}</b>
        {felt !== null && <span className="stance-felt">: {felt}</span>}
      </span>
      <span className="stance-figures">
        <Key name={name} of="asFound" figure={asFound} unit={unit} onOpen={onOpen} />
        {planned !== null && <Key name={name} of="planned" figure={planned} unit={unit} onOpen={onOpen} />}
        {change !== null && (
          <button
            type="button"
            className="open-key"
            aria-label={words.openUp(name, `${words.head.change} ${change}`)}
            onClick={() => onOpen('change')}
          >
            <small>{words.head.change}</small>
            <b>{change}</b>
          </button>
        )}
      </span>
    </li>
  );
}

function Key({
  name,
  of,
  figure,
  unit,
  onOpen,
}: {
  readonly name: string;
  readonly of: 'asFound' | 'planned';
  readonly figure: FigureWords | null;
  readonly unit: string;
  readonly onOpen: (of: StanceQuestion['of']) => void;
}) {
  if (figure === null) return null;
  const { value, plusMinus } = figure;
  const doubt = plusMinus === null ? '' : ` ± ${plusMinus}`;
  return (
    <button
      type="button"
      className="open-key"
      aria-label={words.openUp(name, `${words.head[of]} ${value}${doubt}${unit}`)}
      onClick={() => onOpen(of)}
    >
      <small>{words.head[of]}</small>
      <span>
        <b>{value}</b>
        {doubt}
        {unit}
      </span>
    </button>
  );
}
