import type { JobPlan } from '../path.ts';
import { cellFigure } from './cellFigures.ts';
import { figures } from './figures.ts';
import { axleLoad } from './loadFigures.ts';
import { placeOf } from './place.ts';
import type { Opened, Why, WhyQuestion } from './question.ts';
import { isShockFigure, shockFigure } from './shockFigures.ts';

/** Opens a figure of the plan up: what it is made of is worked out now, when it is asked for. */
export function why(planned: JobPlan, question: WhyQuestion): Why {
  const { figure, end } = question;
  if (isShockFigure(figure)) return openedAs(question, shockFigure(planned, figure), null, null);
  const place = placeOf(planned, question);
  if (place.kind === 'nowhere') return { kind: 'not to be had', because: place.because, found: place.found };
  const { loadCase, spring } = place;
  const opened =
    figures[figure].of === 'load'
      ? axleLoad(planned, end, loadCase)
      : cellFigure(planned, figure, end, spring!, loadCase);
  return openedAs(question, opened, spring?.spring ?? null, loadCase.id);
}

function openedAs(
  { figure, end }: WhyQuestion,
  opened: Opened,
  spring: string | null,
  loadCase: string | null,
): Why {
  if (typeof opened === 'string') return { kind: 'not to be had', because: opened, found: '' };
  return { kind: 'opened', figure, end, spring, loadCase, ...opened };
}
