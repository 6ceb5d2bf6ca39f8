import * as z from 'zod/mini';
import { type Dimension, differenceToSI, toSI, type UnitOf, unitsOf } from '../units.ts';
import { rangeInWords } from '../wording/range.ts';
import { type Bound, bounds } from './bounds.ts';
import { descriptions } from './descriptions.ts';

/** Where a figure comes from, in the words of the workshop. */
export type Origin = (typeof origins)[number];

export const origins = [
  'plate',
  'manual',
  'own scale',
  'own tape',
  'own log',
  'marked',
  'catalogue',
  'told',
  'memory',
  /** Of machines of that kind: nobody has read it on this one. */
  'usual',
] as const;

const origin = z.enum(origins).register(descriptions, { id: 'origin' });

/**
 * A quantity as typed, of one dimension: `Quantity<'length'>`. The ± is the half-width that holds 90 %, in a unit of
 * the same kind or in % of the value.
 */
export interface Quantity<D extends Dimension = Dimension> {
  readonly value: number;
  readonly unit: UnitOf<D>;
  readonly plusMinus?: { readonly value: number; readonly unit: UnitOf<D> | '%' };
  readonly origin?: Origin;
}

/** The schema of each kind of quantity, by the name of its bound, which is judged in SI whatever unit was typed. */
export const quantities = Object.fromEntries(
  Object.entries(bounds).map(([kind, bound]) => [kind, quantity(kind, bound)]),
) as { readonly [K in keyof typeof bounds]: z.ZodMiniType<Quantity<(typeof bounds)[K]['dimension']>> };

/** A quantity without its unit, in SI. */
export function siOf(typed: Quantity): number {
  return toSI(typed.value, typed.unit);
}

/** What a bound that is broken hands to the wording. */
export interface OutOfBounds {
  readonly rule: 'outOfBounds' | 'plusMinusOutOfBounds';
  readonly bound: Bound;
  readonly typed: Quantity;
}

/** A point of the machine in the reference attitude: x forward from the rear axle (behind it negative), height above ground. */
export const point = z
  .strictObject({ x: quantities.forwardOfRearAxle, height: quantities.height })
  .register(descriptions, { id: 'point' });

/** A check that judges a value and its ± in SI; what is broken goes to the wording with the bound itself. */
export function boundedBy<T extends Quantity>(boundOf: (typed: T) => Bound) {
  return z.superRefine<T>((typed, context) => {
    const bound = boundOf(typed);
    const report = (rule: OutOfBounds['rule'], path: string[]) =>
      context.addIssue({ code: 'custom', path, params: { rule, bound, typed } satisfies OutOfBounds });
    if (!holds(bound, siOf(typed))) report('outOfBounds', ['value']);
    if (typed.plusMinus && !widthHolds(typed.plusMinus, bound)) {
      report('plusMinusOutOfBounds', ['plusMinus', 'value']);
    }
  });
}

function quantity(kind: string, bound: Bound): z.ZodMiniType<Quantity> {
  const units = unitsOf(bound.dimension);
  return z
    .strictObject({
      value: z.number(),
      unit: z.enum(units),
      plusMinus: z.exactOptional(z.strictObject({ value: z.number(), unit: z.enum([...units, '%']) })),
      origin: z.exactOptional(origin),
    })
    .check(boundedBy<Quantity>(() => bound))
    .register(descriptions, { id: kind, description: rangeInWords(bound, units[0]!) });
}

function holds({ least, most }: Bound, value: number): boolean {
  // The edge itself is allowed in every unit, though conversion may move it by its last digit.
  const slack = 1e-12 * Math.max(Math.abs(least), Math.abs(most));
  return value >= least - slack && value <= most + slack;
}

/** A ± wider than the whole range, or than the value itself, says nothing that a missing ± would not. */
function widthHolds(width: NonNullable<Quantity['plusMinus']>, { least, most }: Bound): boolean {
  const widest = width.unit === '%' ? 1 : most - least;
  return width.value >= 0 && differenceToSI(width.value, width.unit) <= widest;
}
