import { useState } from 'react';
import type { Kept } from '../storage/kept.ts';
import { files as words } from '../words/files.ts';
import { JobLine, nameOf } from './JobLine.tsx';
import { momentHere } from './momentHere.ts';
import { SureToRemove } from './SureToRemove.tsx';

interface KeptJobProps {
  readonly kept: Kept;
  readonly onOpen: () => void;
  readonly onRemove: () => void;
}

/** One job on the shelf; removing it asks first. */
export function KeptJob({ kept, onOpen, onRemove }: KeptJobProps) {
  const [asking, setAsking] = useState(false);
  const name = nameOf(kept.document);
  return (
    <JobLine document={kept.document} says={words.keptAt(momentHere(kept.kept))}>
      <button
        type="button"
        className="key"
        aria-label={words.removeOf(name)}
        aria-expanded={asking}
        onClick={() => setAsking(!asking)}
      >
        {words.remove}
      </button>
      <button type="button" className="key" aria-label={words.openOf(name)} onClick={onOpen}>
        {words.open}
      </button>
      {asking && <SureToRemove onRemove={onRemove} onLeave={() => setAsking(false)} />}
    </JobLine>
  );
}
