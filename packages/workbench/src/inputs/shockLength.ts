import { siOf } from '@sagwright/records/schema/quantity';
import type { Shock } from '@sagwright/records/schema/struts';
import type { Desk } from './desk.ts';

/** What a length adjuster adds to the shock's own length [m]. */
export function lengthened({ lengthAdjuster }: Shock): number {
  return lengthAdjuster === undefined ? 0 : siOf(lengthAdjuster.change);
}

/** The same as a figure of the sum, with its ±. */
export function takeLengthened({ take, job }: Desk): number {
  const { lengthAdjuster } = job.machine.rear.shock;
  return lengthAdjuster === undefined
    ? 0
    : take.known('machine.rear.shock.lengthAdjuster.change', lengthAdjuster.change, 'collar');
}
