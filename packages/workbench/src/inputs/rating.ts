import { type Rating, stated } from '@sagwright/model/limits/limits';
import { type Quantity, siOf } from '@sagwright/records/schema/quantity';
import type { Desk } from './desk.ts';

/** A rating as it stands, or with the ± that somebody typed beside it. */
export function ratingOf(desk: Desk, path: string, typed: Quantity | undefined): Rating | null {
  if (typed === undefined) return null;
  if (typed.plusMinus === undefined) return stated(siOf(typed));
  const value = desk.take.known(path, typed, 'stated');
  return { value, plusMinus: desk.take.figures.get(path)!.halfWidth };
}
