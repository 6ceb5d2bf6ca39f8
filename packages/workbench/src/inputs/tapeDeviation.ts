import { HALF_WIDTH_90 } from '@sagwright/model/uncertainty/spread';
import { type Quantity, siOf } from '@sagwright/records/schema/quantity';
import { widthInSI } from './take.ts';
import { defaultWidth } from './widths.ts';

/** A tape tells no two lengths apart that are nearer than this [m]; a ± of 0 would be held against all others at any price. */
const FINEST = 1e-5;

/** Standard deviation of a length as taped [m]. */
export function tapeDeviation(typed: Quantity<'length'>): number {
  const halfWidth = widthInSI(typed.plusMinus ?? defaultWidth('tape', typed.origin), siOf(typed));
  return Math.max(halfWidth, FINEST) / HALF_WIDTH_90;
}
