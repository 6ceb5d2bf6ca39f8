import { writeJob } from '@sagwright/records/write';
import { useCallback, useEffect, useState } from 'react';
import { jobOf, useTable } from '../app/useJob.ts';
import { SheetFrame } from '../machine/SheetFrame.tsx';
import type { Kept, Shelf } from '../storage/shelf.ts';
import { files as words } from '../words/files.ts';
import { examples, exampleWords } from './examples.ts';
import { jobFileName } from './fileName.ts';
import { KeptJob } from './KeptJob.tsx';
import { saveFile } from './saveFile.ts';
import '../fields/key.css';
import './jobsSheet.css';

interface JobsSheetProps {
  readonly shelf: Shelf;
  readonly onFile: (name: string, text: string) => void;
  readonly onKept: (kept: Kept) => void;
  readonly onEmpty: () => void;
  /** The three-minute way in. */
  readonly onFirst: () => void;
  readonly onClose: () => void;
}

/** The jobs of this device, and every way to begin or to bring one in or out. */
export default function JobsSheet({ shelf, onFile, onKept, onEmpty, onFirst, onClose }: JobsSheetProps) {
  const { state } = useTable();
  const [kept, setKept] = useState<readonly Kept[]>([]);
  const look = useCallback(() => shelf.all().then(setKept), [shelf]);
  useEffect(() => void look(), [look]);
  const job = jobOf(state);
  const others = kept.filter(({ id }) => id !== state.id);
  return (
    <div className="jobs-sheet">
      <SheetFrame title={words.title} onClose={onClose}>
        <div className="jobs-keys">
          <label className="key jobs-file">
            {words.fromFile}
            <input
              type="file"
              accept=".json,application/json"
              onChange={(event) => {
                const [file] = event.target.files ?? [];
                if (file !== undefined) void file.text().then((text) => onFile(file.name, text));
              }}
            />
          </label>
          <button
            type="button"
            className="key"
            onClick={() => saveFile(jobFileName(job.name), writeJob(job))}
          >
            {words.toFile}
          </button>
          <button type="button" className="key" onClick={onFirst}>
            {words.threeMinutes}
          </button>
          <button type="button" className="key" onClick={onEmpty}>
            {words.fromEmpty}
          </button>
        </div>
        <p className="jobs-quiet">{words.drop}</p>
        <section className="sheet-part">
          <h3>{words.onDevice}</h3>
          <ul className="jobs-list">
            <li>
              <div>
                <strong>{job.name}</strong>
                <p className="jobs-quiet">{words.here}</p>
              </div>
            </li>
            {others.map((each) => (
              <KeptJob
                key={each.id}
                kept={each}
                onOpen={() => onKept(each)}
                onRemove={() => void shelf.remove(each.id).then(look)}
              />
            ))}
          </ul>
        </section>
        <section className="sheet-part">
          <h3>{words.examples}</h3>
          <p className="jobs-quiet">{words.invented}</p>
          <ul className="jobs-list">
            {examples.map(({ name, text }) => (
              <li key={name}>
                <div>
                  <strong>{name}</strong>
                  <p className="jobs-quiet">{exampleWords[name]}</p>
                </div>
                <button
                  type="button"
                  className="key"
                  aria-label={`${words.open} ${name}`}
                  onClick={() => void text().then((read) => onFile(`${name}.json`, read))}
                >
                  {words.open}
                </button>
              </li>
            ))}
          </ul>
        </section>
      </SheetFrame>
    </div>
  );
}
