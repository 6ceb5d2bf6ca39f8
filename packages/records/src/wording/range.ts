import type { Bound } from '../schema/bounds.ts';
import { fromSI, type Unit } from '../units.ts';

/** The allowed range of a quantity in the unit it was typed in: "31.5 in to 102 in". */
export function rangeInWords(bound: Bound, unit: Unit): string {
  return `${figure(fromSI(bound.least, unit))} ${unit} to ${figure(fromSI(bound.most, unit))} ${unit}`;
}

/** Four significant digits are enough to say where a wide bound lies; a whole number keeps all of its digits. */
export function figure(value: number): string {
  if (Number.isInteger(value) && Math.abs(value) < 1e6) return String(value);
  return String(Number(value.toPrecision(4)));
}
