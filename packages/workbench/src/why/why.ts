import type { JobPlan } from '../path.ts';
import { cellFigure } from './cellFigures.ts';
import { figures } from './figures.ts';
import { axleLoad } from './loadFigures.ts';
import { placeOf } from './place.ts';
import type { Why, WhyQuestion } from './question.ts';

/** Opens a figure of the plan up: what it is made of is worked out now, when it is asked for. */
export function why(planned: JobPlan, question: WhyQuestion): Why {
  const { figure, end } = question;
  const place = placeOf(planned, question);
  if (place.kind === 'nowhere') return { kind: 'not to be had', because: place.because, found: place.found };
  const { loadCase, spring } = place;
  const opened =
    figures[figure].of === 'load'
      ? axleLoad(planned, end, loadCase)
      : cellFigure(planned, figure, end, spring!, loadCase);
  if (typeof opened === 'string') return { kind: 'not to be had', because: opened, found: '' };
  return {
    kind: 'opened',
    figure,
    end,
    spring: spring?.spring ?? null,
    loadCase: loadCase.id,
    ...opened,
  };
}
