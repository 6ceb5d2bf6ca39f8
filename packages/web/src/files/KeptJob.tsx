import { useState } from 'react';
import { at } from '../job/edits.ts';
import type { Kept } from '../storage/shelf.ts';
import { files as words } from '../words/files.ts';

interface KeptJobProps {
  readonly kept: Kept;
  readonly onOpen: () => void;
  readonly onRemove: () => void;
}

/** One job on the shelf; removing it asks first. */
export function KeptJob({ kept, onOpen, onRemove }: KeptJobProps) {
  const [asking, setAsking] = useState(false);
  const name = String(at(kept.document, ['name']) ?? kept.id);
  const machine = String(at(kept.document, ['machine', 'name']) ?? '');
  if (asking) {
    return (
      <li className="jobs-asking">
        <p>{words.removeSure(name)}</p>
        <button type="button" className="key" onClick={onRemove}>
          {words.removeYes}
        </button>
        <button type="button" className="key" onClick={() => setAsking(false)}>
          {words.removeNo}
        </button>
      </li>
    );
  }
  return (
    <li>
      <div>
        <strong>{name}</strong>
        <p className="jobs-quiet">
          {machine}, {words.keptAt(new Date(kept.kept).toLocaleString())}
        </p>
      </div>
      <button type="button" className="key" aria-label={`${words.open} ${name}`} onClick={onOpen}>
        {words.open}
      </button>
      <button
        type="button"
        className="key"
        aria-label={`${words.remove} ${name}`}
        onClick={() => setAsking(true)}
      >
        {words.remove}
      </button>
    </li>
  );
}
