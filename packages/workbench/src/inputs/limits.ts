import type { LimitsSI } from '@sagwright/model/limits/limits';
import { loadIndexMass } from '@sagwright/model/tyres/loadIndex';
import type { Tyre } from '@sagwright/records/schema/machine';
import { siOf } from '@sagwright/records/schema/quantity';
import type { Desk } from './desk.ts';

/** The maker's limits, each only where somebody read it. A tyre's own capacity goes before its load index. */
export function limitsFigures(desk: Desk): LimitsSI {
  const { machine } = desk.job;
  const { limits } = machine;
  return {
    gross: limits?.gross === undefined ? null : siOf(limits.gross),
    frontAxle: limits?.frontAxle === undefined ? null : siOf(limits.frontAxle),
    rearAxle: limits?.rearAxle === undefined ? null : siOf(limits.rearAxle),
    frontTyre: tyreCapacity(machine.front.tyre),
    rearTyre: tyreCapacity(machine.rear.tyre),
  };
}

function tyreCapacity(tyre: Tyre | undefined): number | null {
  if (tyre?.capacity !== undefined) return siOf(tyre.capacity);
  return tyre?.loadIndex === undefined ? null : loadIndexMass(tyre.loadIndex);
}
