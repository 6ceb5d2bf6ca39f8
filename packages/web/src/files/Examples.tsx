import { files as words } from '../words/files.ts';
import { examples } from './examples.ts';

/** The examples, each with its story in a line. */
export function Examples({ onOpen }: { readonly onOpen: (file: File) => void }) {
  return (
    <section className="sheet-part">
      <h3>{words.examples}</h3>
      <p className="jobs-quiet">{words.invented}</p>
      <ul className="jobs-list">
        {examples.map(({ title, story, file }) => (
          <li key={title}>
            <div>
              <strong>{title}</strong>
              <p className="jobs-quiet">{story}</p>
            </div>
            <button
              type="button"
              className="key"
              aria-label={words.openOf(title)}
              onClick={() => void file().then(onOpen)}
            >
              {words.open}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
