import { shippedTargets } from '@sagwright/workbench/targets/shipped';
import { useState } from 'react';
import { newId } from '../app/newId.ts';
import { jobOf, useTable } from '../app/useJob.ts';
import { takeOwnSet, takeShippedSet } from '../job/targets.ts';
import { SheetFrame } from '../machine/SheetFrame.tsx';
import { targets as words } from '../words/choose.ts';
import { TargetEditor } from './TargetEditor.tsx';
import './targetSheet.css';

/** The sets to choose from, the job's own first, and the editor of the one in use. */
export default function TargetSheet({ onClose }: { readonly onClose: () => void }) {
  const { store, state } = useTable();
  const [editing, setEditing] = useState(false);
  const job = jobOf(state);
  const own = Object.entries(job.targetSets).sort(([, a], [, b]) => a.order - b.order);
  const inUse = job.targetSet ?? own[0]?.[0];
  return (
    <SheetFrame title={words.other} onClose={onClose}>
      <ul className="target-sets">
        {own.map(([id, set]) => (
          <li key={id} data-in-use={id === inUse || undefined}>
            <div>
              <strong>{set.name}</strong>
              <p className="choose-quiet">
                {words.own}; {set.origin}
              </p>
            </div>
            {id === inUse ? (
              <button
                type="button"
                className="key"
                aria-expanded={editing}
                onClick={() => setEditing(!editing)}
              >
                {words.change}
              </button>
            ) : (
              <button
                type="button"
                className="key"
                onClick={() => store.act(words.takeAct(set.name), () => takeOwnSet(job, id))}
              >
                {words.use}
              </button>
            )}
          </li>
        ))}
        {Object.entries(shippedTargets).map(([id, set]) => (
          <li key={id}>
            <div>
              <strong>{set.name}</strong>
              <p className="choose-quiet">
                {words.shipped}; {set.origin}
              </p>
            </div>
            <button
              type="button"
              className="key"
              onClick={() => store.act(words.takeAct(set.name), () => takeShippedSet(job, newId('set'), set))}
            >
              {words.use}
            </button>
          </li>
        ))}
      </ul>
      {editing && inUse !== undefined && <TargetEditor set={inUse} />}
    </SheetFrame>
  );
}
