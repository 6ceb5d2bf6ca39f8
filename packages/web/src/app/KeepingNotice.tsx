import { useState, useSyncExternalStore } from 'react';
import '../fields/key.css';
import { remember, remembered } from '../storage/remembered.ts';
import type { Shelf } from '../storage/shelf.ts';
import { keeping as words } from '../words/files.ts';
import type { Keeper } from './keeper.ts';
import { isAtRisk, type Saving } from './saving.ts';
import { useTable } from './useJob.ts';
import './notice.css';

interface KeepingNoticeProps {
  readonly keeper: Keeper;
  readonly shelf: Shelf;
}

const TOLD = 'sagwright-told-may-be-cleared';

/**
 * Says what one must know about the keeping of the job, with the keys for it; nothing while all is well. That the browser may clear
 * itself is said once on this device, and stays on the strip.
 */
export function KeepingNotice({ keeper, shelf }: KeepingNoticeProps) {
  const { state } = useTable();
  const saving = useRest(useSyncExternalStore(keeper.subscribe, keeper.state));
  const [understood, setUnderstood] = useState<Saving | null>(() =>
    remembered(TOLD) === null ? null : 'may be cleared',
  );
  if (!isWorded(saving) || saving === understood) return null;
  const onUnderstood = (): void => {
    setUnderstood(saving);
    if (saving === 'may be cleared') remember(TOLD, 'yes');
  };
  const onToFile = async (): Promise<void> => {
    const { saveJob } = await import('../files/saveJob.ts');
    saveJob(state.document);
  };
  /** Shows the job as another window kept it. */
  const onShowIt = async (): Promise<void> => {
    const there = await shelf.one(state.id);
    if (there !== null) keeper.layKept(there);
  };
  return (
    <div className="notice" data-look={isAtRisk(saving) || undefined} role="status">
      <p>{words.says[saving]}</p>
      {saving === 'changed elsewhere' && (
        <button type="button" className="key" data-do onClick={() => void onShowIt()}>
          {words.showIt}
        </button>
      )}
      {saving !== 'changed elsewhere' && saving !== 'went on as a copy' && (
        <button type="button" className="key" data-do onClick={() => void onToFile()}>
          {words.toFile}
        </button>
      )}
      {saving === 'no room' && (
        <button type="button" className="key" onClick={keeper.keepNow}>
          {words.again}
        </button>
      )}
      {!isAtRisk(saving) && (
        <button type="button" className="key" onClick={onUnderstood}>
          {words.understood}
        </button>
      )}
    </div>
  );
}

/** How the job was kept when that last came to rest: what is said stays while the next act is being kept, and the page stays where it is. */
function useRest(saving: Saving): Saving {
  const [rest, setRest] = useState(saving);
  if (saving !== 'keeping' && saving !== rest) setRest(saving);
  return saving === 'keeping' ? rest : saving;
}

function isWorded(saving: Saving): saving is keyof typeof words.says {
  return saving in words.says;
}
