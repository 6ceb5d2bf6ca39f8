import type { Quantity } from '@sagwright/records/schema/quantity';
import { differenceFromSI, fromSI } from '@sagwright/records/units';
import { decimalsFor, fixed } from '@sagwright/workbench/format/digits';
import type { AssumedFigure, PageView } from '@sagwright/workbench/page/shapes';

/** What the sum assumes at a path of the job; undefined where nothing is, or while there is no plan. */
export function assumedAt(view: PageView | null, path: string): AssumedFigure | undefined {
  return view?.assumed.find((each) => each.path === path)?.figure;
}

/** An assumed figure as a quantity with its whole ±, to the place that the ± supports: for a figure that it has to stand beside. */
export function asQuantity({ value, halfWidth, unit }: AssumedFigure): Quantity {
  const width = differenceFromSI(halfWidth, unit);
  const round = (number: number): number => Number(fixed(number, decimalsFor(width)));
  return { value: round(fromSI(value, unit)), unit, plusMinus: { value: round(width), unit } } as Quantity;
}
