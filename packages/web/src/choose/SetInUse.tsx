import type { PageView } from '@sagwright/workbench/page/shapes';
import { useState } from 'react';
import { newId } from '../app/newId.ts';
import { jobOf, useTable } from '../app/useJob.ts';
import { TextField } from '../fields/TextField.tsx';
import { removeSet, renameSet, takeShippedSet } from '../job/targets.ts';
import { targets as words } from '../words/targets.ts';
import { SetList } from './SetList.tsx';
import type { InUse } from './setInUse.ts';

interface SetInUseProps {
  readonly view: PageView;
  readonly inUse: InUse;
}

/** The set that is used: who says so, and the keys for another one. */
export function SetInUse({ inUse: { id, set, own } }: SetInUseProps) {
  const { store, state } = useTable();
  const [open, setOpen] = useState<'sets' | 'name' | null>(null);
  const job = jobOf(state);
  const toggle = (what: 'sets' | 'name') => () => setOpen(open === what ? null : what);
  return (
    <section className="set-in-use">
      <div className="set-in-use-head">
        <div>
          <h2>{set.name}</h2>
          <p>
            {own ? words.own : words.shipped}; {set.origin}
          </p>
        </div>
        <button type="button" className="key" aria-expanded={open === 'sets'} onClick={toggle('sets')}>
          {words.other}
        </button>
        {own && (
          <button type="button" className="key" aria-expanded={open === 'name'} onClick={toggle('name')}>
            {words.rename}
          </button>
        )}
      </div>
      {!own && (
        <button
          type="button"
          className="key"
          onClick={() =>
            store.act(words.takeAct(set.name), () => takeShippedSet(job, newId('set'), set, set.name))
          }
        >
          {words.copyIn}
        </button>
      )}
      {open === 'sets' && <SetList used={own ? id : null} onTaken={() => setOpen(null)} />}
      {open === 'name' && own && (
        <div className="set-in-use-name">
          <NameField set={id} name="name" value={set.name} />
          <NameField set={id} name="origin" value={set.origin} />
          <button
            type="button"
            className="key"
            onClick={() => store.act(words.removeAct(set.name), () => removeSet(job, id))}
          >
            {words.remove}
          </button>
        </div>
      )}
    </section>
  );
}

interface NameFieldProps {
  readonly set: string;
  readonly name: 'name' | 'origin';
  readonly value: string;
}

function NameField({ set, name, value }: NameFieldProps) {
  const { store, state } = useTable();
  return (
    <TextField
      label={words[name]}
      path={`targetSets.${set}.${name}`}
      value={value}
      most={120}
      onCommit={(next) =>
        next !== '' && store.act(words.editAct, () => renameSet(jobOf(state), set, name, next))
      }
    />
  );
}
