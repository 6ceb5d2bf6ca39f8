import { nominalRadius } from '@sagwright/model/tyres/size';
import { sizeFigures } from '@sagwright/records/schema/stance';
import type { Desk } from './desk.ts';

/** By how much a tyre's radius may be off what its size says [m], and why. Common practice, no source. */
export const sizeDoubt = {
  halfWidth: 0.006,
  why: 'by its size (rim and section, UN Regulation No. 75); makes differ by some millimetres and tyres wear',
} as const;

/** Radius of a tyre that was not pressed [m]: measured, else by its size, else assumed. */
export function tyreRadius({ take, job }: Pick<Desk, 'take' | 'job'>, end: 'rear' | 'front'): number {
  const path = `machine.${end}.tyre.radius`;
  const { tyre } = job.machine[end];
  if (tyre?.radius === undefined && tyre?.size !== undefined) {
    return take.workedOut(path, radiusBySize(tyre.size), sizeDoubt.halfWidth, 'length', 'mm', sizeDoubt.why);
  }
  return take.orAssumed(
    path,
    tyre?.radius,
    'tyreRadius',
    end === 'rear' ? 'tyreRadiusRear' : 'tyreRadiusFront',
  );
}

/** Radius [m] of a new tyre by its size as on its wall. */
export function radiusBySize(size: string): number {
  const { width, aspect, rim } = sizeFigures(size);
  return nominalRadius({ width: width / 1000, aspect: aspect / 100, rim });
}
