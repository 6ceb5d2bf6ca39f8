import type { JobDocument } from '@sagwright/records/schema';
import type { Quantity } from '@sagwright/records/schema/quantity';
import { type Edit, write } from './edits.ts';
import { nextOrder } from './nextOrder.ts';

/** A spring that the job did not know yet; it comes last. */
export function newSpring(
  job: JobDocument,
  id: string,
  { name, end, rate }: { name: string; end: 'rear' | 'front'; rate: Quantity<'rate'> },
): readonly Edit[] {
  const order = nextOrder(job.springs);
  return [write(job, ['springs', id], { name, order, end, rate: { kind: 'linear', rate } })];
}
