import type { ReactNode } from 'react';
import { at } from '../job/edits.ts';
import { files as words } from '../words/files.ts';
import { saveJob } from './saveJob.ts';

interface JobLineProps {
  readonly document: unknown;
  /** Where it is, or when it was kept. */
  readonly says: string;
  /** Keys beside the one that copies it to a file. */
  readonly children?: ReactNode;
}

/** One job by its name and machine, with the key that copies it to a file. */
export function JobLine({ document, says, children }: JobLineProps) {
  const name = nameOf(document);
  const machine = at(document, ['machine', 'name']);
  return (
    <li>
      <div>
        <strong>{name}</strong>
        {typeof machine === 'string' && <p>{machine}</p>}
        <p className="jobs-quiet">{says}</p>
      </div>
      <button
        type="button"
        className="key"
        aria-label={words.toFileOf(name)}
        onClick={() => saveJob(document)}
      >
        {words.toFile}
      </button>
      {children}
    </li>
  );
}

export function nameOf(document: unknown): string {
  const name = at(document, ['name']);
  return typeof name === 'string' && name !== '' ? name : words.nameless;
}
