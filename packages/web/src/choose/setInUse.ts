import type { JobDocument } from '@sagwright/records/schema';
import type { TargetSet } from '@sagwright/records/schema/targets';
import { shippedTargets, usualSet } from '@sagwright/workbench/targets/shipped';
import type { TargetRow } from '../job/targets.ts';

export interface InUse {
  readonly id: string;
  readonly set: TargetSet;
  /** It lies in the job and can be changed there. */
  readonly own: boolean;
}

/** The set of this id in the job; else the one that comes with the program. */
export function setInUse(job: JobDocument, id: string): InUse {
  const own = job.targetSets[id];
  if (own !== undefined) return { id, set: own, own: true };
  return { id, set: shippedTargets[id] ?? shippedTargets[usualSet]!, own: false };
}

/** What is wanted of an end to begin with where nothing is: as the first row of its set says, or the usual one. */
export function firstWanted({ set }: InUse, end: TargetRow['end']): TargetRow['wanted'] {
  const ofEnd = (rows: TargetSet['rows']): TargetRow | undefined =>
    Object.values(rows)
      .sort((a, b) => a.order - b.order)
      .find((row) => row.end === end);
  return (ofEnd(set.rows) ?? ofEnd(shippedTargets[usualSet]!.rows)!).wanted;
}
