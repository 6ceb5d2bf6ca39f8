import { SheetFrame } from '../machine/SheetFrame.tsx';
import { broken as words } from '../words/files.ts';
import type { BrokenFileOpened } from './openFile.ts';
import type { FileRest } from './readFile.ts';
import { saveFile } from './saveFile.ts';
import '../fields/key.css';
import './brokenFile.css';

interface BrokenFileProps {
  readonly file: BrokenFileOpened;
  /** Lays the file on the table as it is, to be mended there. */
  readonly onMend: (document: unknown) => void;
  readonly onClose: () => void;
}

/** A file that is no job as it stands: what is wrong and where, what could be read, and the way back to it as it was. */
export default function BrokenFile({ file: opened, onMend, onClose }: BrokenFileProps) {
  const { name, file, verdict, problems, rest, mendable } = opened;
  return (
    <div className="broken-file">
      <SheetFrame title={words.title[verdict](name)} note={words.nothingChanged} onClose={onClose}>
        <div className="broken-file-keys">
          {mendable !== null && (
            <button type="button" className="key" data-do onClick={() => onMend(mendable)}>
              {words.mend}
            </button>
          )}
          {file !== null && (
            <button type="button" className="key" onClick={() => saveFile(name, file)}>
              {words.asItWas}
            </button>
          )}
        </div>
        {mendable === null && verdict === 'problems' && <p>{words.elsewhere}</p>}
        <div className="broken-file-parts">
          <section>
            <h3>{words.count(problems.length)}</h3>
            <ol>
              {problems.map(({ path, message }) => (
                <li key={path + message}>
                  {message}
                  {path !== '' && <span className="problem-list-path">{path}</span>}
                </li>
              ))}
            </ol>
          </section>
          {rest !== null && <Rest rest={rest} />}
        </div>
      </SheetFrame>
    </div>
  );
}

function Rest({ rest }: { readonly rest: FileRest }) {
  return (
    <section>
      <h3>{words.rest}</h3>
      <dl>
        <dt>{words.name}</dt>
        <dd>{rest.name ?? words.none}</dd>
        <dt>{words.machine}</dt>
        <dd>{rest.machine ?? words.none}</dd>
        <dt>{words.springs}</dt>
        <dd>{listed(rest.springs)}</dd>
        <dt>{words.loads}</dt>
        <dd>{listed(rest.loads)}</dd>
      </dl>
    </section>
  );
}

/** By semicolons, since names of loads have commas of their own. */
function listed(names: readonly string[]): string {
  return names.length === 0 ? words.none : names.join('; ');
}
