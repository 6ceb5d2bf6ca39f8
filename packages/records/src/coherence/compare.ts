import { type Quantity, siOf } from '../schema/quantity.ts';

/** a ≤ b, whatever units they were typed in. */
export function isAtMost(a: Quantity, b: Quantity): boolean {
  const [first, second] = [siOf(a), siOf(b)];
  // The same figure typed in two units may differ in its last digit; no figure of the trade is as fine as this.
  return first <= second + 1e-12 * Math.abs(second);
}

/** a < b, whatever units they were typed in. */
export function isBelow(a: Quantity, b: Quantity): boolean {
  return !isAtMost(b, a);
}

/** Between two ends that may be given in either order, the ends included. */
export function isBetween(a: Quantity, end: Quantity, otherEnd: Quantity): boolean {
  return (isAtMost(end, a) && isAtMost(a, otherEnd)) || (isAtMost(otherEnd, a) && isAtMost(a, end));
}

/** A quantity as it was typed: "60 mm". */
export function asTyped({ value, unit }: Quantity): string {
  return `${value} ${unit}`;
}
