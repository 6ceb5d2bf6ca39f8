import { type Quantity, siOf } from '@sagwright/records/schema/quantity';
import { dimensionOf, dimensions, type Unit, unitsOf } from '@sagwright/records/units';
import { formatFigureNumber, formatNumber } from '@sagwright/workbench/format/format';
import { plainFraction } from '@sagwright/workbench/format/plainNumber';
import type { Units } from '@sagwright/workbench/format/units';
import { afterNumber } from '../words/fields.ts';

const commonest = Object.fromEntries(
  dimensions.map((dimension) => [dimension, unitsOf(dimension)[0]]),
) as unknown as Units['unit'];

/** "185 ± 30": a value in SI with its ±, to the place that the ± supports. */
export function figureNumber(si: number, halfWidth: number, unit: Unit): string {
  return formatFigureNumber({ value: si, plusMinus: halfWidth }, dimensionOf(unit), unitsWith(unit));
}

/** "571.5": as typed, with at least the decimals of its step, so that readings stand in line. */
export function typedNumber(value: number, decimals: number): string {
  const typed = String(value);
  return (typed.split('.')[1]?.length ?? 0) < decimals ? value.toFixed(decimals) : typed;
}

/** "571.5 mm", "5 %": a figure or a ± as typed. */
export function typedFigure({ value, unit }: { value: number; unit: Unit | '%' }): string {
  return `${value}${afterNumber(unit)}`;
}

/** "0.5", "2", "1/64" in inches: a step as it stands on its key. */
export function stepText(step: number, unit: Unit): string {
  return unit === 'in' ? plainFraction(step, 64) : String(step);
}

/** "28.0": a typed figure in another unit, to the finest place worth showing there. */
export function numberIn(quantity: Quantity, unit: Unit): string {
  return formatNumber(siOf(quantity), dimensionOf(unit), unitsWith(unit));
}

function unitsWith(unit: Unit): Units {
  return { choice: 'typed', decimal: '.', unit: { ...commonest, [dimensionOf(unit)]: unit } };
}
