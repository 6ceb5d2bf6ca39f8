import { parseJob } from '@sagwright/records/read';
import { type Units, unitsFor } from '@sagwright/workbench/format/units';
import { inputsOf } from '@sagwright/workbench/inputs/inputs';
import { forkView } from '@sagwright/workbench/page/forkView';
import { loadInSight, pageView } from '@sagwright/workbench/page/view';
import { whyStand } from '@sagwright/workbench/page/whyStand';
import { type JobPlan, planInputs } from '@sagwright/workbench/path';
import { why } from '@sagwright/workbench/why/why';
import { notToBeHadWords, whyWords } from '@sagwright/workbench/words/why';
import { noRest, nothingPlanned } from '../words/opened.ts';
import type { Answer, Ask, AskFork, FigureQuestion, ForkAnswer, Open, Opened } from './messages.ts';

/**
 * Answers the page: plans jobs by the same path as the terminal's, and opens figures of the last plan up. The load in sight
 * is told first; then, if `pause` brought no newer job, all the rest. A job that a newer one has overtaken gets no further answer.
 */
export function createDesk(
  say: (answer: Answer | Opened | ForkAnswer) => void,
  pause: () => Promise<void>,
): (message: Ask | Open | AskFork) => Promise<void> {
  let last: { readonly planned: JobPlan; readonly units: Units } | null = null;
  let newest = 0;

  async function plan({ seq, document, units: choice, inSight }: Ask): Promise<void> {
    newest = seq;
    const read = parseJob(document);
    if (!read.ok) return say({ kind: 'problems', seq, problems: read.problems });
    const { job } = read;
    const taken = inputsOf(job);
    if (!taken.ok) return say({ kind: 'problems', seq, problems: taken.problems });
    const units = unitsFor(choice, job, '.');
    if (last !== null) {
      const { rear, front } = last.planned.plan.planned;
      const springs = { rear: rear.spring, front: front.spring };
      const load = loadInSight(job, taken.inputs, inSight, springs, units);
      if (load !== null) say({ kind: 'in sight', seq, load });
      await pause();
      if (seq !== newest) return;
    }
    const planned = planInputs(job, taken.inputs);
    last = { planned, units };
    say({ kind: 'view', seq, view: pageView(planned, units) });
  }

  return async (message) => {
    if (message.kind === 'plan') return plan(message);
    if (message.kind === 'fork') {
      const fork = last === null ? null : forkView(last.planned, last.units);
      return say({ kind: 'fork', id: message.id, fork });
    }
    const figure = last === null ? nothingPlanned : opened(last.planned, message.question, last.units);
    say({ kind: 'opened', id: message.id, figure });
  };
}

function opened(planned: JobPlan, question: FigureQuestion, units: Units): Opened['figure'] {
  if (question.of === 'stand') return whyStand(planned, question.asked, units) ?? noRest;
  const answer = why(planned, question.asked);
  return answer.kind === 'opened'
    ? whyWords(planned, answer, units)
    : notToBeHadWords(question.asked.figure, answer);
}
