import { parseJob } from '@sagwright/records/read';
import { type Units, unitsFor } from '@sagwright/workbench/format/units';
import { inputsOf } from '@sagwright/workbench/inputs/inputs';
import { loadInSight, pageView } from '@sagwright/workbench/page/view';
import { whyStand } from '@sagwright/workbench/page/whyStand';
import { type JobPlan, planInputs } from '@sagwright/workbench/path';
import { why } from '@sagwright/workbench/why/why';
import { notToBeHadWords, whyWords } from '@sagwright/workbench/words/why';
import { noRest, nothingPlanned } from '../words/opened.ts';
import type { Ask, FigureQuestion, FromWorker, Opened, ToWorker } from './messages.ts';

/**
 * Answers the page: plans jobs by the same path as the terminal's, and opens figures of the last plan up. The load in sight
 * is told first; then, if `pause` brought no newer job, all the rest. A job that a newer one has overtaken gets no further answer.
 */
export function createDesk(
  say: (answer: FromWorker) => void,
  pause: () => Promise<void>,
): (message: ToWorker) => Promise<void> {
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
    const { id } = message;
    const now = last;
    if (message.kind === 'fork') {
      const { forkDesk } = await import('./forkDesk.ts');
      const fork = now === null ? null : forkDesk.forkView(now.planned, now.units);
      return say({ kind: 'fork', id, fork });
    }
    if (message.kind === 'rear') {
      const { rearView } = await import('@sagwright/workbench/page/rearView');
      const rear = now === null ? null : rearView(now.planned, message.load, now.units);
      return say({ kind: 'rear', id, rear });
    }
    if (message.kind === 'ask stance') {
      const { stanceDesk } = await import('./stanceDesk.ts');
      const stance =
        now === null
          ? nothingPlanned
          : (stanceDesk.stanceView(now.planned, message.load, now.units) ?? noRest);
      return say({ kind: 'stance told', id, stance });
    }
    if (message.kind === 'ask limits') {
      const { limitDesk } = await import('./limitDesk.ts');
      const limits = now === null ? null : limitDesk.limitListView(now.planned, message.load, now.units);
      return say({ kind: 'limits told', id, limits });
    }
    if (message.kind === 'ask compare') {
      const { compareView } = await import('@sagwright/workbench/page/compareView');
      return say({ kind: 'compared', id, comparison: compareView(message.question) });
    }
    const figure = now === null ? nothingPlanned : await opened(now.planned, message.question, now.units);
    say({ kind: 'opened', id, figure });
  };
}

async function opened(planned: JobPlan, question: FigureQuestion, units: Units): Promise<Opened['figure']> {
  if (question.of === 'stand') return whyStand(planned, question.asked, units) ?? noRest;
  if (question.of === 'stance') {
    const { stanceDesk } = await import('./stanceDesk.ts');
    return stanceDesk.whyStance(planned, question.asked, units);
  }
  if (question.of === 'fork') {
    const { forkDesk } = await import('./forkDesk.ts');
    return forkDesk.whyFork(planned, question.asked, units);
  }
  if (question.of === 'limit' || question.of === 'room') {
    const { limitDesk } = await import('./limitDesk.ts');
    return question.of === 'limit'
      ? limitDesk.whyLimit(planned, question.id, units)
      : limitDesk.whyRoom(planned, question.load, question.place, units);
  }
  const answer = why(planned, question.asked);
  return answer.kind === 'opened'
    ? whyWords(planned, answer, units)
    : notToBeHadWords(question.asked.figure, answer);
}
