import { newId } from '../app/newId.ts';
import { jobOf, useTable } from '../app/useJob.ts';
import { newLoad } from '../job/loads.ts';
import { loads as words } from '../words/machine.ts';
import type { OpenSheet } from './sheets.ts';

/** Makes a load out of another one (null: the bare machine), chooses it and opens it, so that it can be named. */
export function useNewLoad(
  onChoose: (load: string | null) => void,
  onSheet: OpenSheet,
): (from: string | null) => void {
  const { state, store } = useTable();
  return (from) => {
    const job = jobOf(state);
    const id = newId('load');
    const copied = from === null ? undefined : job.loadCases[from]?.name;
    const name = copied === undefined ? words.newLoadName(nextNumber(job)) : words.copyName(copied);
    store.act(words.newLoad, () => newLoad(job, id, name, from));
    onChoose(id);
    onSheet({ kind: 'load' });
  };
}

function nextNumber({ loadCases }: ReturnType<typeof jobOf>): number {
  return Object.keys(loadCases).length + 1;
}
