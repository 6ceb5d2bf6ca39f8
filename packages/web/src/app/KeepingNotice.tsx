import { useState, useSyncExternalStore } from 'react';
import '../fields/key.css';
import { keeping as words } from '../words/files.ts';
import type { Keeper } from './keeper.ts';
import { isAtRisk, type Saving } from './saving.ts';
import './notice.css';

interface KeepingNoticeProps {
  readonly keeper: Keeper;
  readonly onToFile: () => void;
  /** Shows the job as another window kept it. */
  readonly onShowIt: () => void;
}

/** Says what one must know about the keeping of the job, with the keys for it; nothing while all is well. */
export function KeepingNotice({ keeper, onToFile, onShowIt }: KeepingNoticeProps) {
  const saving = useSyncExternalStore(keeper.subscribe, keeper.state);
  const [later, setLater] = useState<Saving | null>(null);
  if (!isWorded(saving) || saving === later) return null;
  return (
    <aside className="notice" data-look={isAtRisk(saving) || undefined} role="status">
      <p>{words.says[saving]}</p>
      {saving === 'changed elsewhere' && (
        <button type="button" className="key" data-do onClick={onShowIt}>
          {words.showIt}
        </button>
      )}
      {saving !== 'changed elsewhere' && saving !== 'went on as a copy' && (
        <button type="button" className="key" data-do onClick={onToFile}>
          {words.toFile}
        </button>
      )}
      {saving === 'no room' && (
        <button type="button" className="key" onClick={keeper.keepNow}>
          {words.again}
        </button>
      )}
      {!isAtRisk(saving) && (
        <button type="button" className="key" onClick={() => setLater(saving)}>
          {words.later}
        </button>
      )}
    </aside>
  );
}

function isWorded(saving: Saving): saving is keyof typeof words.says {
  return saving in words.says;
}
