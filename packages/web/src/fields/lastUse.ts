import type { Quantity } from '@sagwright/records/schema/quantity';
import type { Dimension } from '@sagwright/records/units';
import { unitsOf } from '@sagwright/records/units';
import type { LastUse } from './draft.ts';

/**
 * Unit, ± and origin as last written, by kind of reading, for as long as the page is open. Kept beside the page's own
 * session and not in the job: it is a habit of the person at this tablet, not a fact about the machine.
 */
const lastUses = new Map<string, LastUse>();

/** As last written for this kind of reading; at first the commonest unit of its dimension, and nothing else. */
export function lastUse(kind: string, dimension: Dimension): LastUse {
  return lastUses.get(kind) ?? { unit: unitsOf(dimension)[0]! };
}

export function rememberUse(kind: string, { unit, plusMinus, origin }: Quantity): void {
  lastUses.set(kind, { unit, ...(plusMinus && { plusMinus }), ...(origin && { origin }) });
}
