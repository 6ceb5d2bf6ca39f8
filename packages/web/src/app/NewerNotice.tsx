import { useState, useSyncExternalStore } from 'react';
import '../fields/key.css';
import { newer as words } from '../words/files.ts';
import type { NewerPage } from './newerPage.ts';
import './newerNotice.css';

/** Says that a newer page is ready; it is taken when somebody says so. */
export function NewerNotice({ newer }: { readonly newer: NewerPage }) {
  const ready = useSyncExternalStore(newer.subscribe, newer.isReady);
  const [later, setLater] = useState(false);
  if (!ready || later) return null;
  return (
    <aside className="newer-notice" role="status">
      <p>{words.ready}</p>
      <button type="button" className="key" data-do onClick={newer.take}>
        {words.take}
      </button>
      <button type="button" className="key" onClick={() => setLater(true)}>
        {words.later}
      </button>
    </aside>
  );
}
