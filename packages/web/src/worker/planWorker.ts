import { parseJob } from '@sagwright/records/read';
import { type Units, unitsFor } from '@sagwright/workbench/format/units';
import { pageView } from '@sagwright/workbench/page/view';
import { whyStand } from '@sagwright/workbench/page/whyStand';
import { type JobPlan, planJob } from '@sagwright/workbench/path';
import { why } from '@sagwright/workbench/why/why';
import { notToBeHadWords, whyWords } from '@sagwright/workbench/words/why';
import { noRest, nothingPlanned } from '../words/opened.ts';
import type { Answer, Ask, FigureQuestion, Open, Opened } from './messages.ts';

/** Answers the page: plans jobs by the same path as the terminal's, and opens figures of the last plan up. */
export function createDesk(): (message: Ask | Open) => Answer | Opened {
  let last: { readonly planned: JobPlan; readonly units: Units } | null = null;

  function plan({ seq, document, units: choice }: Ask): Answer {
    const read = parseJob(document);
    if (!read.ok) return { kind: 'problems', seq, problems: read.problems };
    const planned = planJob(read.job);
    if (!planned.ok) return { kind: 'problems', seq, problems: planned.problems };
    const units = unitsFor(choice, read.job, '.');
    last = { planned, units };
    return { kind: 'view', seq, view: pageView(planned, units) };
  }

  return (message) =>
    message.kind === 'plan'
      ? plan(message)
      : {
          kind: 'opened',
          id: message.id,
          figure: last === null ? nothingPlanned : opened(last.planned, message.question, last.units),
        };
}

function opened(planned: JobPlan, question: FigureQuestion, units: Units): Opened['figure'] {
  if (question.of === 'stand') return whyStand(planned, question.asked, units) ?? noRest;
  const answer = why(planned, question.asked);
  return answer.kind === 'opened'
    ? whyWords(planned, answer, units)
    : notToBeHadWords(question.asked.figure, answer);
}
