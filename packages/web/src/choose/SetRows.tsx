import type { PageView } from '@sagwright/workbench/page/shapes';
import { rowOfLoad } from '@sagwright/workbench/targets/rowOfLoad';
import { useState } from 'react';
import { newId } from '../app/newId.ts';
import { jobOf, useTable } from '../app/useJob.ts';
import { newRow, rowsInOrder, type TargetRow } from '../job/targets.ts';
import { LoadSign } from '../machine/LoadSign.tsx';
import { bandWords, countedWords, rowFor, targets as words } from '../words/targets.ts';
import type { ChooseEnd } from './end.ts';
import { SetRowFields } from './SetRowFields.tsx';
import { firstWanted, type InUse } from './setInUse.ts';
import './setRows.css';

interface SetRowsProps {
  readonly end: ChooseEnd;
  readonly view: PageView;
  readonly inUse: InUse;
}

/** The rows of the job's own set for one end: whom each is for, what it wants, which loads take it. A row opens to be changed. */
export function SetRows({ end, view, inUse }: SetRowsProps) {
  const { store, state } = useTable();
  const [opened, setOpened] = useState<string | null>(null);
  const job = jobOf(state);
  const rows = rowsInOrder(inUse.set).filter(([, row]) => row.end === end);
  const takenBy = (row: string): readonly string[] =>
    view.loads.flatMap(({ id, letter }) => {
      const load = id === null ? undefined : job.loadCases[id];
      if (load === undefined || letter === null || load.wanted?.[end] !== undefined) return [];
      return rowOfLoad(job, end, load, inUse.set)?.id === row ? [letter] : [];
    });
  const add = (): void => {
    const id = newId('row');
    store.act(words.editAct, () => newRow(job, inUse.id, id, end, firstWanted(inUse, end)));
    setOpened(id);
  };
  return (
    <div className="set-rows">
      <div className="set-rows-head">
        <h3>{words.rowsOf(end)}</h3>
        <button type="button" className="key" onClick={add}>
          {words.addRow}
        </button>
      </div>
      <ul>
        {rows.map(([id, row]) => (
          <li key={id} data-open={id === opened || undefined}>
            <button
              type="button"
              className="set-row"
              aria-expanded={id === opened}
              onClick={() => setOpened(id === opened ? null : id)}
            >
              <RowWords row={row} />
              <LoadSigns letters={takenBy(id)} />
            </button>
            {id === opened && (
              <SetRowFields set={inUse.id} id={id} row={row} end={view[end]} onOpen={setOpened} />
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** The loads that take a row. */
function LoadSigns({ letters }: { readonly letters: readonly string[] }) {
  return (
    <span className="set-row-loads">
      {letters.length === 0 && words.noLoad}
      {letters.map((letter) => (
        <LoadSign key={letter} letter={letter} />
      ))}
    </span>
  );
}

function RowWords({ row }: { readonly row: TargetRow }) {
  const counted = countedWords(row.wanted);
  return (
    <span className="set-row-words">
      <b>{rowFor(row)}</b>
      <span>
        {bandWords(row.wanted)}
        {counted !== '' && `, ${counted}`}
      </span>
    </span>
  );
}
