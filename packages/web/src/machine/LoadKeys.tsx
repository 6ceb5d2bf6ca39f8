import type { LoadView } from '@sagwright/workbench/page/shapes';
import { jobOf, useTable } from '../app/useJob.ts';
import { loadsInOrder, moveLoad, removeLoad } from '../job/loads.ts';
import { load as words } from '../words/machine.ts';
import type { OpenSheet } from './sheets.ts';
import { useNewLoad } from './useNewLoad.ts';

interface LoadKeysProps {
  readonly load: LoadView;
  readonly onChoose: (load: string | null) => void;
  readonly onSheet: OpenSheet;
}

/** Copy a load, move it among the others, take it out; undo brings it back. */
export function LoadKeys({ load, onChoose, onSheet }: LoadKeysProps) {
  const { state, store } = useTable();
  const addLoad = useNewLoad(onChoose, onSheet);
  const job = jobOf(state);
  const { id, name } = load;
  const order = loadsInOrder(job).map(([each]) => each);
  const here = id === null ? -1 : order.indexOf(id);
  const move = (by: -1 | 1): void => {
    if (id !== null) store.act(words.movedLoad(name), () => moveLoad(job, id, by));
  };
  if (id === null) {
    return (
      <div className="sheet-keys">
        <button type="button" className="key" onClick={() => addLoad(null)}>
          {words.firstThing}
        </button>
        <button type="button" className="key" onClick={() => onSheet({ kind: 'figures', path: null })}>
          {words.figures}
        </button>
      </div>
    );
  }
  return (
    <div className="sheet-keys">
      <button type="button" className="key" onClick={() => addLoad(id)}>
        {words.copy}
      </button>
      <button type="button" className="key" disabled={here <= 0} onClick={() => move(-1)}>
        {words.earlier}
      </button>
      <button type="button" className="key" disabled={here >= order.length - 1} onClick={() => move(1)}>
        {words.later}
      </button>
      <button
        type="button"
        className="key"
        onClick={() => {
          store.act(words.removed(name), () => removeLoad(job, id));
          onChoose(order[here - 1] ?? null);
          onSheet(null);
        }}
      >
        {words.remove}
      </button>
    </div>
  );
}
