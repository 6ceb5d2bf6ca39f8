import { incoherences } from '../coherence.ts';
import type { Problem } from '../problem.ts';
import type { Template } from '../schema/template.ts';
import { whereInWords } from '../wording/where.ts';
import { jobAround } from './around.ts';

/** What one part of a template says against another: it is judged as the job that it would become, by the same rules. */
export function templateProblems(template: Template): Problem[] {
  const none = { value: 0, unit: 'mm' } as const;
  return incoherences(jobAround(template, { rear: none, front: none })).map(inTemplate);
}

const AS_FOUND = 'setups.asFound.';

/** Which springs are in it a job says in its set-up, and a template in `fitted`. */
function inTemplate(problem: Problem): Problem {
  if (!problem.path.startsWith(AS_FOUND)) return problem;
  const path = `fitted.${problem.path.slice(AS_FOUND.length).replace(/\.spring$/, '')}`;
  const said = problem.message.slice(whereInWords(problem.path.split('.')).length);
  return { ...problem, path, message: `${whereInWords(path.split('.'))}${said}` };
}
