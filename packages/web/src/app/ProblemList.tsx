import { problems as words } from '../words/page.ts';
import type { PageProblem } from '../worker/messages.ts';
import './problemList.css';

/** Why the job as it stands has no plan, each with its field; nothing where it has one. */
export function ProblemList({
  problems,
  onGo,
}: {
  readonly problems: readonly PageProblem[];
  /** To the field of a path. */
  readonly onGo: (path: string) => void;
}) {
  if (problems.length === 0) return null;
  return (
    <section className="problem-list" aria-labelledby="problem-list-title">
      <h2 id="problem-list-title">{words.title}</h2>
      <ul>
        {problems.map(({ path, message }) => (
          <li key={path + message}>
            {message}
            <span className="problem-list-path">{path}</span>
            <button type="button" className="key" onClick={() => onGo(path)}>
              {words.goTo}
            </button>
          </li>
        ))}
      </ul>
      <p>{words.old}</p>
    </section>
  );
}
