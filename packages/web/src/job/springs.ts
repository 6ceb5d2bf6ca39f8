import type { JobDocument } from '@sagwright/records/schema';
import type { Quantity } from '@sagwright/records/schema/quantity';
import { type Edit, write } from './edits.ts';

/** A spring that the job did not know yet; it comes last. */
export function newSpring(
  job: JobDocument,
  id: string,
  { name, end, rate }: { name: string; end: 'rear' | 'front'; rate: Quantity<'rate'> },
): readonly Edit[] {
  const order = Math.max(0, ...Object.values(job.springs).map((spring) => spring.order)) + 1;
  return [write(job, ['springs', id], { name, order, end, rate: { kind: 'linear', rate } })];
}
