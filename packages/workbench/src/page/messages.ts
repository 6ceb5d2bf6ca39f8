import type { LoadCaseResult } from '@sagwright/model/plan/answer';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import { closeLimitWords, refusalWords } from '../words/limits.ts';
import type { MessageView } from './shapes.ts';

/** What must be said of a load before anything else: that it may not be ridden so, or only just. */
export function messageViews(planned: JobPlan, load: LoadCaseResult, units: Units): readonly MessageView[] {
  const refusal = refusalWords(planned, load, units);
  const stop: readonly MessageView[] = refusal === null ? [] : [{ tone: 'stop', text: refusal }];
  const look = closeLimitWords(planned, load, units).map((text): MessageView => ({ tone: 'look', text }));
  return [...stop, ...look];
}
