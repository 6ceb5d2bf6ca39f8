import { useState, useSyncExternalStore } from 'react';
import '../fields/key.css';
import { newer as words } from '../words/files.ts';
import type { NewerPage, NewerPageState } from './newerPage.ts';
import './notice.css';

/** Says that a newer page is ready; it is taken when somebody says so. */
export function NewerNotice({ newer }: { readonly newer: NewerPage }) {
  const state = useSyncExternalStore(newer.subscribe, newer.state);
  const [later, setLater] = useState<NewerPageState>('none');
  if (state === 'none' || state === later) return null;
  return (
    <div className="notice" role="status">
      <p>{words[state]}</p>
      <button type="button" className="key" data-do onClick={newer.take}>
        {words.take}
      </button>
      <button type="button" className="key" onClick={() => setLater(state)}>
        {words.later}
      </button>
    </div>
  );
}
