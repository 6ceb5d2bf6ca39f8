import type { JobDocument } from '@sagwright/records/schema';
import { type Edit, write } from './edits.ts';

/** Picks the spring that is planned at an end; null leaves it to the suggestion again. */
export function pickSpring(job: JobDocument, end: 'rear' | 'front', spring: string | null): readonly Edit[] {
  const other = end === 'rear' ? 'front' : 'rear';
  if (spring === null && job.choice?.[other] === undefined) return [write(job, ['choice'], undefined)];
  return [write(job, ['choice', end], spring ?? undefined)];
}
