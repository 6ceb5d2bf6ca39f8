import { useTable } from '../../app/useJob.ts';
import { write } from '../../job/edits.ts';
import { limitFigures as words } from '../../words/limitFigures.ts';

interface RemoveKeysProps {
  readonly list: 'clearances' | 'knobs' | 'points';
  readonly members: Readonly<Record<string, { readonly name: string }>>;
}

/** A key for each member of a list of the machine, which takes it out; the list goes with its last one. */
export function RemoveKeys({ list, members }: RemoveKeysProps) {
  const { store } = useTable();
  const all = Object.entries(members);
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
