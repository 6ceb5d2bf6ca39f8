import { problems as words } from '../words/page.ts';
import type { PageProblem } from '../worker/messages.ts';
import './problemList.css';

/** Why the job as it stands has no plan, each with its field; nothing where it has one. */
export function ProblemList({
  problems,
  hasPlan,
  onGo,
}: {
  readonly problems: readonly PageProblem[];
  /** A plan from before is still shown. */
  readonly hasPlan: boolean;
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
            <span>
              {message}
              <span className="problem-list-path">{path}</span>
            </span>
            <button type="button" className="key" onClick={() => onGo(path)}>
              {words.goTo}
            </button>
          </li>
        ))}
      </ul>
      {hasPlan && <p>{words.old}</p>}
    </section>
  );
}
