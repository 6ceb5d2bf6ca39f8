import fc from 'fast-check';
import type { Quantity } from '../schema/quantity.ts';
import { origins } from '../schema/quantity.ts';
import { type Dimension, fromSI, type UnitOf, unitsOf } from '../units.ts';

/** Any quantity between two SI values, in any unit of its dimension, with or without ± and origin. */
export function arbitraryQuantity<D extends Dimension>(
  dimension: D,
  least: number,
  most: number,
): fc.Arbitrary<Quantity<D>> {
  return fc.constantFrom(...unitsOf(dimension)).chain((unit) =>
    fc.record(
      {
        value: fc
          .double({ min: fromSI(least, unit), max: fromSI(most, unit), noNaN: true })
          .map((value) => asWritten(value)),
        unit: fc.constant(unit),
        plusMinus: fc.oneof(percent, fc.record({ value: fc.constant(0), unit: fc.constant(unit) })),
        origin: fc.constantFrom(...origins),
      },
      { requiredKeys: ['value', 'unit'] },
    ),
  ) as fc.Arbitrary<Quantity<D>>;
}

/** A known SI value, written in a unit as a person would, with no ± of its own. */
export function written<D extends Dimension>(si: number, unit: UnitOf<D>): Quantity<D> {
  return { value: asWritten(fromSI(si, unit)), unit };
}

const percent = fc.record({
  value: fc.integer({ min: 0, max: 100 }).map((tenths) => tenths / 10),
  unit: fc.constant('%' as const),
});

/** Six digits, and never −0, which JSON cannot tell from 0. */
function asWritten(value: number): number {
  return Number(value.toPrecision(6)) + 0;
}
