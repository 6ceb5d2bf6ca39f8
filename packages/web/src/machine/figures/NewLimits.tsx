import type { JobDocument } from '@sagwright/records/schema';
import { jobOf, useTable } from '../../app/useJob.ts';
import { write } from '../../job/edits.ts';
import { limitFigures as words } from '../../words/limitFigures.ts';
import { NewClearance } from './NewClearance.tsx';
import { NewKnob } from './NewKnob.tsx';

/** Rooms near full bump and knobs that the job did not know, and keys that take one out. */
export function NewLimits() {
  const { state } = useTable();
  const { machine } = jobOf(state);
  return (
    <>
      <NewClearance />
      <NewKnob />
      <div className="sheet-keys">
        <RemoveKeys list="clearances" members={machine.clearances ?? {}} />
        <RemoveKeys list="knobs" members={machine.knobs ?? {}} />
      </div>
    </>
  );
}

function RemoveKeys({
  list,
  members,
}: {
  readonly list: 'clearances' | 'knobs';
  readonly members: NonNullable<JobDocument['machine']['clearances' | 'knobs']>;
}) {
  const { store } = useTable();
  const all = Object.entries<{ readonly name: string }>(members);
  const remove = (id: string, name: string): void =>
    store.act(words.removed(name), (document) => [
      write(document, all.length === 1 ? ['machine', list] : ['machine', list, id], undefined),
    ]);
  return all.map(([id, { name }]) => (
    <button key={id} type="button" className="key" onClick={() => remove(id, name)}>
      {words.remove(name)}
    </button>
  ));
}
