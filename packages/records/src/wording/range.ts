import type { Bound } from '../schema/bounds.ts';
import { differenceFromSI, fromSI, toSI, type Unit, unitsOf } from '../units.ts';

/** The allowed range of a quantity in the unit it was typed in: "31.5 in to 102.4 in". */
export function rangeInWords(bound: Bound, unit: Unit): string {
  return `${inUnit(bound.least, unit)} to ${inUnit(bound.most, unit)}`;
}

/** The widest ± that says anything: the whole range, or in % the value itself. */
export function widestInWords({ least, most }: Bound, unit: Unit): string {
  return unit === '%' ? '100 %' : `${rounded(differenceFromSI(most - least, unit))} ${unit}`;
}

/** The unit that may have been meant: the first other one in which the same figure is within its bound. */
export function otherUnit(value: number, unit: Unit, bound: Bound): Unit | undefined {
  return unitsOf(bound.dimension).find((other) => {
    const si = toSI(value, other);
    return other !== unit && si >= bound.least && si <= bound.most;
  });
}

function inUnit(si: number, unit: Unit): string {
  return `${rounded(fromSI(si, unit))} ${unit}`;
}

/** Four significant digits are enough to find a slip by. */
function rounded(value: number): number {
  return Number.isInteger(value) ? value : Number(value.toPrecision(4));
}
