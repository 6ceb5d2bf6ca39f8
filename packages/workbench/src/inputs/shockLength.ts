import { siOf } from '@sagwright/records/schema/quantity';
import type { Shock } from '@sagwright/records/schema/struts';

/** What a length adjuster adds to the shock's own length [m]. */
export function lengthened({ lengthAdjuster }: Shock): number {
  return lengthAdjuster === undefined ? 0 : siOf(lengthAdjuster.change);
}
