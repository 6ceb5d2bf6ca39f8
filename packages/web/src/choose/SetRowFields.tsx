import type { EndView } from '@sagwright/workbench/page/shapes';
import { newId } from '../app/newId.ts';
import { jobOf, useTable } from '../app/useJob.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { CountField } from '../fields/CountField.tsx';
import type { Edit } from '../job/edits.ts';
import { changeRow, changeWanted, copyRow, moveRow, removeRow, type TargetRow } from '../job/targets.ts';
import { targets as words } from '../words/targets.ts';
import { BandFields } from './BandFields.tsx';

interface SetRowFieldsProps {
  readonly set: string;
  readonly id: string;
  readonly row: TargetRow;
  readonly end: EndView;
  readonly onOpen: (row: string | null) => void;
}

/** One row of a set: for which loads it holds, what sag it wants, and its place among the others. */
export function SetRowFields({ set, id, row, end, onOpen }: SetRowFieldsProps) {
  const { store, state } = useTable();
  const job = jobOf(state);
  const path = `targetSets.${set}.rows.${id}`;
  const act = (edits: readonly Edit[]): void => store.act(words.editAct, () => edits);
  const change = <K extends keyof TargetRow>(name: K, value: TargetRow[K] | undefined): void =>
    act(changeRow(job, set, id, name, value));
  const { people } = row;
  const copy = (): void => {
    const copied = newId('row');
    act(copyRow(job, set, id, copied));
    onOpen(copied);
  };
  return (
    <div className="set-row-fields">
      <CountField
        label={words.least}
        path={`${path}.people.least`}
        value={people.least}
        unit={words.people}
        most={10}
        onCommit={(least) =>
          least !== null && change('people', { least, most: Math.max(least, people.most) })
        }
      />
      <CountField
        label={words.most}
        path={`${path}.people.most`}
        value={people.most}
        unit={words.people}
        most={10}
        onCommit={(most) => most !== null && change('people', { least: Math.min(people.least, most), most })}
      />
      <ChoiceField
        label={words.luggage}
        path={`${path}.luggage`}
        value={row.luggage ?? 'either'}
        choices={(['either', 'with', 'without'] as const).map((each) => ({
          value: each,
          word: words.luggages[each],
        }))}
        onCommit={(luggage) => change('luggage', luggage === 'either' ? undefined : luggage)}
      />
      <ChoiceField
        label={words.end}
        path={`${path}.end`}
        value={row.end}
        choices={(['rear', 'front'] as const).map((each) => ({ value: each, word: words.ends[each] }))}
        onCommit={(next) => change('end', next)}
      />
      <BandFields
        path={`${path}.wanted`}
        wanted={row.wanted}
        end={end}
        onChange={(wanted) => act(changeWanted(job, set, id, wanted))}
      />
      <div className="set-row-keys">
        <button type="button" className="key" onClick={() => act(moveRow(job, set, id, -1))}>
          {words.up}
        </button>
        <button type="button" className="key" onClick={() => act(moveRow(job, set, id, 1))}>
          {words.down}
        </button>
        <button type="button" className="key" onClick={copy}>
          {words.copyRow}
        </button>
        <button type="button" className="key" onClick={() => act(removeRow(job, set, id))}>
          {words.removeRow}
        </button>
      </div>
    </div>
  );
}
