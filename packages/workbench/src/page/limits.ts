import type { LimitResult } from '@sagwright/model/limits/limits';
import { formatPlainNumber, formatValueNumber } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import { limitNeeds, limitPath } from '../limits/needs.ts';
import type { JobPlan } from '../path.ts';
import { limitName, limitWords } from '../words/limits.ts';
import type { LimitView } from './shapes.ts';

/** A load against each of its limits. */
export function limitViews(
  planned: JobPlan,
  limits: readonly LimitResult[],
  units: Units,
): readonly LimitView[] {
  return limits.map((limit) => ({
    of: limit.of.kind,
    name: limitName(planned, limit.of),
    load: formatValueNumber({ value: limit.load, plusMinus: limit.plusMinus }, 'mass', units),
    allowed: limit.allowed === null ? null : formatPlainNumber(limit.allowed, 'mass', units),
    verdict: limit.verdict,
    text: limitWords(planned, limit, units),
    path: limitNeeds(planned, limit.of)[0]?.path ?? limitPath(planned, limit.of),
  }));
}
