import type { Figure } from '@sagwright/model/plan/answer';

/** A figure without its sign, where the words beside it say which way. */
export function sizeOf({ value, plusMinus }: Figure): Figure {
  return { value: Math.abs(value), plusMinus };
}
