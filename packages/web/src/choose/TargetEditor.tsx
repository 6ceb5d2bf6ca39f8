import { newId } from '../app/newId.ts';
import { jobOf, useTable } from '../app/useJob.ts';
import { TextField } from '../fields/TextField.tsx';
import { copyRow, removeRow, renameSet, rowsInOrder } from '../job/targets.ts';
import { targets as words } from '../words/choose.ts';
import { TargetRowFields } from './TargetRowFields.tsx';

/** Changes a target set of the job: its name, who says so, and its rows, the first that matches a load being taken. */
export function TargetEditor({ set }: { readonly set: string }) {
  const { store, state } = useTable();
  const job = jobOf(state);
  const targets = job.targetSets[set];
  if (targets === undefined) return null;
  const path = `targetSets.${set}`;
  const rename = (name: 'name' | 'origin', value: string): void =>
    store.act(words.editAct, () => renameSet(job, set, name, value));
  return (
    <div className="target-editor">
      <TextField
        label={words.name}
        path={`${path}.name`}
        value={targets.name}
        most={120}
        onCommit={(value) => rename('name', value)}
      />
      <TextField
        label={words.origin}
        path={`${path}.origin`}
        value={targets.origin}
        most={120}
        onCommit={(value) => rename('origin', value)}
      />
      {rowsInOrder(targets).map(([row, each], i) => (
        <fieldset key={row} className="target-row">
          <legend>{words.row(i + 1)}</legend>
          <TargetRowFields set={set} row={row} value={each} />
          <div className="target-row-keys">
            <button
              type="button"
              className="key"
              onClick={() => store.act(words.editAct, () => copyRow(job, set, row, newId('row')))}
            >
              {words.copyRow}
            </button>
            <button
              type="button"
              className="key"
              onClick={() => store.act(words.editAct, () => removeRow(job, set, row))}
            >
              {words.removeRow}
            </button>
          </div>
        </fieldset>
      ))}
    </div>
  );
}
