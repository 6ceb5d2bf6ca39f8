import { jobOf, useTable } from '../app/useJob.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { CountField } from '../fields/CountField.tsx';
import { changeRow, changeWanted, type TargetRow } from '../job/targets.ts';
import { targets as words } from '../words/choose.ts';
import { SagField } from './SagField.tsx';

interface TargetRowFieldsProps {
  readonly set: string;
  readonly row: string;
  readonly value: TargetRow;
}

/** One row of a target set: for which loads it holds, and what sag it wants. */
export function TargetRowFields({ set, row, value }: TargetRowFieldsProps) {
  const { store, state } = useTable();
  const job = jobOf(state);
  const path = `targetSets.${set}.rows.${row}`;
  const change = <K extends keyof TargetRow>(name: K, next: TargetRow[K] | undefined): void =>
    store.act(words.editAct, () => changeRow(job, set, row, name, next));
  const want = (wanted: TargetRow['wanted']): void =>
    store.act(words.editAct, () => changeWanted(job, set, row, wanted));
  const { people, wanted } = value;
  return (
    <div className="target-row-fields">
      <ChoiceField
        label={words.end}
        path={`${path}.end`}
        value={value.end}
        choices={[
          { value: 'rear', word: words.ends.rear },
          { value: 'front', word: words.ends.front },
        ]}
        onCommit={(end) => change('end', end)}
      />
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
        value={value.luggage ?? 'either'}
        choices={(['either', 'with', 'without'] as const).map((each) => ({
          value: each,
          word: words.luggages[each],
        }))}
        onCommit={(luggage) => change('luggage', luggage === 'either' ? undefined : luggage)}
      />
      {(['low', 'aim', 'high'] as const).map((name) => (
        <SagField
          key={name}
          label={words[name]}
          path={`${path}.wanted.${name}`}
          sag={wanted[name]}
          onCommit={(sag) => want({ ...wanted, [name]: sag })}
        />
      ))}
      <ChoiceField
        label={words.from}
        path={`${path}.wanted.from`}
        value={wanted.from}
        choices={(['stop', 'hanging'] as const).map((each) => ({ value: each, word: words.froms[each] }))}
        onCommit={(from) => want({ ...wanted, from })}
      />
      <ChoiceField
        label={words.along}
        path={`${path}.wanted.along`}
        value={wanted.along}
        choices={(['wheel', 'stroke'] as const).map((each) => ({ value: each, word: words.alongs[each] }))}
        onCommit={(along) => want({ ...wanted, along })}
      />
    </div>
  );
}
