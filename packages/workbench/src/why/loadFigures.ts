import type { LoadCaseSI } from '@sagwright/model/plan/question';
import { gradientAt } from '@sagwright/model/statics/gradient';
import { GRAVITY } from '@sagwright/model/statics/machine';
import type { JobPlan } from '../path.ts';
import type { End } from '../result/inView.ts';
import type { Opened } from './question.ts';
import { readAt, standingFullTank } from './standing.ts';

/** What a scale under one wheel reads with a load, as found and with a full tank [kg]. */
export function axleLoad(planned: JobPlan, end: End, loadCase: LoadCaseSI): Opened {
  const standing = standingFullTank(planned, loadCase);
  if (standing === null) return 'no rest';
  return readAt(standing, (prepared, state) => {
    gradientAt(prepared, state, 0);
    return prepared.gradient[end].wheelLoad / GRAVITY;
  });
}
