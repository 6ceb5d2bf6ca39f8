import type { Quantity } from '@sagwright/records/schema/quantity';
import { differenceFromSI, fromSI } from '@sagwright/records/units';
import type { AssumedFigure, PageView } from '@sagwright/workbench/page/shapes';

/** What the sum assumes at a path of the job; undefined where nothing is, or while there is no plan. */
export function assumedAt(view: PageView | null, path: string): AssumedFigure | undefined {
  return view?.assumed.find((each) => each.path === path)?.figure;
}

/** An assumed figure as a quantity with its whole ±, for a figure that it has to stand beside; to the digits that a tape reads. */
export function asQuantity({ value, halfWidth, unit }: AssumedFigure): Quantity {
  const round = (number: number): number => Number(number.toPrecision(4));
  return {
    value: round(fromSI(value, unit)),
    unit,
    plusMinus: { value: round(differenceFromSI(halfWidth, unit)), unit },
  } as Quantity;
}
