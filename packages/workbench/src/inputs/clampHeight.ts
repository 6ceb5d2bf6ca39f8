import type { Fork } from '@sagwright/records/schema/fork';
import type { Desk } from './desk.ts';

const PATH = 'machine.front.fork.clampHeight';

/**
 * How much further the fork tubes stand through their clamps than when the machine's lengths and heights were read [m], along
 * the tubes: the axle stands so much higher in the body (model: `withClampHeight`). 0 where they were read as it is now.
 */
export function raised({ take }: Desk, clampHeight: Fork['clampHeight']): number {
  if (clampHeight?.whenMeasured === undefined) return 0;
  const now = take.known(`${PATH}.now`, clampHeight.now, 'collar');
  return now - take.known(`${PATH}.whenMeasured`, clampHeight.whenMeasured, 'collar');
}
