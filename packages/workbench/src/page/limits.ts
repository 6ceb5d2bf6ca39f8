import type { LimitOf, LimitResult } from '@sagwright/model/limits/limits';
import { formatPlainNumber, formatValueNumber } from '../format/format.ts';
import type { Units } from '../format/units.ts';
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
    path: pathOf(planned, limit.of),
  }));
}

/** Where the job holds a limit. A tyre's is its load index, unless its capacity was read. */
function pathOf({ job }: JobPlan, of: LimitOf): string {
  switch (of.kind) {
    case 'place':
      return `machine.places.${of.place}.limit`;
    case 'gross':
      return 'machine.limits.gross';
    case 'rear axle':
      return 'machine.limits.rearAxle';
    case 'front axle':
      return 'machine.limits.frontAxle';
    default: {
      const end = of.kind === 'rear tyre' ? 'rear' : 'front';
      const known = job.machine[end].tyre?.capacity !== undefined;
      return `machine.${end}.tyre.${known ? 'capacity' : 'loadIndex'}`;
    }
  }
}
