import { HALF_WIDTH_90 } from '@sagwright/model/uncertainty/spread';
import { type Quantity, siOf } from '@sagwright/records/schema/quantity';
import { differenceToSI } from '@sagwright/records/units';
import { defaultWidth } from './widths.ts';

/** A tape tells no two lengths apart that are nearer than this [m]; a ± of 0 would be held against all others at any price. */
const FINEST = 1e-5;

/** ± of a length as taped [m], 90 % half-width. */
export function tapeHalfWidth(typed: Quantity<'length'>): number {
  const width = typed.plusMinus ?? defaultWidth('tape', typed.origin);
  return width.unit === '%'
    ? (Math.abs(siOf(typed)) * width.value) / 100
    : differenceToSI(width.value, width.unit);
}

/** Its standard deviation [m]. */
export function tapeDeviation(typed: Quantity<'length'>): number {
  return Math.max(tapeHalfWidth(typed), FINEST) / HALF_WIDTH_90;
}
