import { broken as words } from '../words/files.ts';
import type { BrokenFileOpened } from './readFile.ts';
import { saveFile } from './saveFile.ts';
import '../fields/key.css';
import './brokenFile.css';

interface BrokenFileProps {
  readonly file: BrokenFileOpened;
  /** Lays the file on the table as it is, to be mended there. */
  readonly onMend: (document: unknown) => void;
  readonly onClose: () => void;
}

/** A file that could not be planned: what is wrong with it and where, what could be read, and the way back to it as it was. */
export default function BrokenFile({ file, onMend, onClose }: BrokenFileProps) {
  const { name, problems, rest, text, mendable } = file;
  const list = (names: readonly string[]): string => (names.length === 0 ? words.none : names.join(', '));
  return (
    <section className="broken-file" aria-labelledby="broken-file-title">
      <h2 id="broken-file-title">{words.title(name)}</h2>
      <p>{words.nothingChanged}</p>
      <p>{words.count(problems.length)}</p>
      <ol>
        {problems.map(({ path, message }) => (
          <li key={path + message}>
            {message}
            {path !== '' && <span className="problem-list-path">{path}</span>}
          </li>
        ))}
      </ol>
      <h3>{words.rest}</h3>
      <dl>
        <dt>{words.name}</dt>
        <dd>{rest.name ?? words.none}</dd>
        <dt>{words.machine}</dt>
        <dd>{rest.machine ?? words.none}</dd>
        <dt>{words.springs}</dt>
        <dd>{list(rest.springs)}</dd>
        <dt>{words.loads}</dt>
        <dd>{list(rest.loads)}</dd>
      </dl>
      <div className="broken-file-keys">
        {mendable !== null && (
          <button type="button" className="key" data-do onClick={() => onMend(mendable)}>
            {words.mend}
          </button>
        )}
        <button type="button" className="key" onClick={() => saveFile(name, text)}>
          {words.asItWas}
        </button>
        <button type="button" className="key" onClick={onClose}>
          {words.close}
        </button>
      </div>
    </section>
  );
}
