import { figureGroups } from '../machine/figures/groups.ts';
import { plainProblem } from '../machine/figures/plainProblem.ts';
import { problems as words } from '../words/page.ts';
import type { PageProblem } from '../worker/messages.ts';
import { jobOf, useTable } from './useJob.ts';
import './problemList.css';

/** Why the job as it stands has no plan: each in the words of its field, with the way there. */
export default function ProblemList({
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
  const { state } = useTable();
  const groups = figureGroups(jobOf(state));
  return (
    <section className="problem-list" aria-labelledby="problem-list-title">
      <h2 id="problem-list-title">{hasPlan ? words.titleOld : words.title}</h2>
      <ul>
        {problems.map((problem) => (
          <li key={problem.path + problem.message}>
            <span>
              {plainProblem(groups, problem)}
              <span className="problem-list-path">{problem.path}</span>
            </span>
            <button type="button" className="key" onClick={() => onGo(problem.path)}>
              {words.goTo}
            </button>
          </li>
        ))}
      </ul>
      {hasPlan && <p>{words.old}</p>}
    </section>
  );
}
