import { useSyncExternalStore } from 'react';
import { strip } from '../words/page.ts';
import type { Keeper } from './keeper.ts';
import type { Saving } from './saving.ts';
import './jobStrip.css';

interface JobStripProps {
  readonly name: string;
  readonly machine: string;
  readonly keeper: Keeper;
  /** What undo would take back, in words; null where there is nothing. */
  readonly undoes: string | null;
  readonly theme: 'sun' | 'truck';
  readonly onJobs: () => void;
  readonly onUndo: () => void;
  readonly onTheme: () => void;
}

const savingWords: Readonly<Record<Saving, string>> = {
  example: strip.example,
  keeping: strip.keeping,
  kept: strip.kept,
  'may be cleared': strip.mayBeCleared,
  'no room': strip.noRoom,
  refused: strip.refused,
  'changed elsewhere': strip.changedElsewhere,
  'went on as a copy': strip.wentOnAsCopy,
};

/** Always on top: the jobs, this job, whether it is kept, undo. */
export function JobStrip(props: JobStripProps) {
  const { name, machine, keeper, undoes, theme, onJobs, onUndo, onTheme } = props;
  return (
    <header className="job-strip">
      <button type="button" className="job-strip-key" onClick={onJobs}>
        <svg viewBox="0 0 32 22" width="32" height="22" aria-hidden="true">
          <path d="M1 2h30M1 11h30M1 20h30" />
        </svg>
        {strip.jobs}
      </button>
      <div className="job-strip-job">
        <h1>{name}</h1>
        <p>{machine}</p>
      </div>
      <SavingSaid keeper={keeper} />
      <button type="button" className="job-strip-key job-strip-theme" onClick={onTheme}>
        <svg viewBox="0 0 32 22" width="32" height="22" aria-hidden="true">
          <path d="M16 3v16a8 8 0 0 0 0-16Zm0 0a8 8 0 0 0 0 16" />
        </svg>
        <span>{strip.theme[theme]}</span>
      </button>
      <button
        type="button"
        className="job-strip-key job-strip-undo"
        disabled={undoes === null}
        onClick={onUndo}
        aria-keyshortcuts="Control+Z"
        aria-label={undoes === null ? strip.nothingToUndo : strip.undoOf(undoes)}
      >
        <svg viewBox="0 0 32 22" width="32" height="22" aria-hidden="true">
          <path d="M11 2 4 9l7 7M5 9h15a6 6 0 0 1 0 12h-4" />
        </svg>
        <span className="job-strip-undoes">{undoes === null ? strip.undo : strip.undoOf(undoes)}</span>
      </button>
    </header>
  );
}

/** Whether the job is kept; alone, since it changes twice at each act. */
function SavingSaid({ keeper }: { readonly keeper: Keeper }) {
  const saving = useSyncExternalStore(keeper.subscribe, keeper.state);
  return (
    <p className="job-strip-saving" role="status" data-saving={saving}>
      {savingWords[saving]}
    </p>
  );
}
