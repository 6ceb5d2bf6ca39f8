import type { Quantity } from '@sagwright/records/schema/quantity';

export function isQuantity(value: unknown): value is Quantity {
  return typeof value === 'object' && value !== null && 'value' in value && 'unit' in value;
}
