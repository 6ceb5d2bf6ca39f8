import { useCallback, useEffect, useState } from 'react';
import { useTable } from '../app/useJob.ts';
import type { Kept } from '../storage/kept.ts';
import { allOn } from '../storage/refusal.ts';
import type { Shelf } from '../storage/shelf.ts';
import { files as words } from '../words/files.ts';
import { JobLine } from './JobLine.tsx';
import { KeptJob } from './KeptJob.tsx';

interface JobShelfProps {
  readonly shelf: Shelf;
  readonly onOpen: (kept: Kept) => void;
}

/** The job on the table, and the others that are kept on this device. */
export function JobShelf({ shelf, onOpen }: JobShelfProps) {
  const { state } = useTable();
  const [kept, setKept] = useState<readonly Kept[] | 'unreadable'>([]);
  const look = useCallback(() => void allOn(shelf).then(setKept), [shelf]);
  useEffect(look, [look]);
  const readable = kept === 'unreadable' ? [] : kept;
  const others = readable.filter(({ id }) => id !== state.id);
  return (
    <section className="sheet-part">
      <h3>{words.onDevice}</h3>
      <ul className="jobs-list">
        <JobLine
          document={state.document}
          says={others.length < readable.length ? words.onTable : words.notKeptYet}
        />
        {others.map((each) => (
          <KeptJob
            key={each.id}
            kept={each}
            onOpen={() => onOpen(each)}
            onRemove={() => void shelf.remove(each.id).then(look)}
          />
        ))}
      </ul>
      {kept === 'unreadable' && <p className="jobs-quiet">{words.unreadable}</p>}
    </section>
  );
}
