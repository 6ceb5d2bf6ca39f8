import type { bounds } from '@sagwright/records/schema/bounds';
import { type Quantity, siOf } from '@sagwright/records/schema/quantity';
import type { Dimension, UnitOf } from '@sagwright/records/units';
import type { ReadingKind } from '../inputs/widths.ts';

/**
 * The eight entries of a first plan, as typed: who and what rides, and what one person reads in three minutes at the rear, where the
 * collar is set. Null: there is none.
 */
export interface FirstEntries {
  readonly rider: Quantity<'mass'>;
  readonly passenger: Quantity<'mass'> | null;
  /** What is carried behind the passenger, box included. */
  readonly behind: Quantity<'mass'> | null;
  /** A scale under the rear wheel, nobody aboard. */
  readonly rear: Quantity<'mass'>;
  readonly shocks: ShockCount;
  /** Of one spring, as marked. */
  readonly rate: Quantity<'rate'>;
  /** Where the collar stands and how far it goes, both from its loosest end; null for a shock without one. */
  readonly collarNow: Quantity<'length'> | null;
  readonly collarMost: Quantity<'length'> | null;
}

export type ShockCount = 1 | 2;

/** In the order in which they are asked. */
export const firstNames = [
  'rider',
  'passenger',
  'behind',
  'rear',
  'shocks',
  'rate',
  'collarNow',
  'collarMost',
] as const satisfies readonly (keyof FirstEntries)[];

/** What kind of figure an entry is, the unit that stands in where none is typed, and the bound that judges it. */
export interface FirstFigure<D extends Dimension> {
  readonly dimension: D;
  readonly unit: UnitOf<D>;
  readonly bound: keyof typeof bounds;
  readonly reading: ReadingKind;
}

const person = { dimension: 'mass', unit: 'kg', bound: 'thingMass', reading: 'person' } as const;
const collar = { dimension: 'length', unit: 'mm', bound: 'collarReading', reading: 'collar' } as const;

export const firstFigures = {
  rider: person,
  passenger: person,
  behind: { dimension: 'mass', unit: 'kg', bound: 'thingMass', reading: 'item' },
  rear: { dimension: 'mass', unit: 'kg', bound: 'massOnWheel', reading: 'scale' },
  rate: { dimension: 'rate', unit: 'N/mm', bound: 'springRate', reading: 'springRate' },
  collarNow: collar,
  collarMost: collar,
} as const satisfies { readonly [N in Exclude<keyof FirstEntries, 'shocks'>]: FirstFigure<Dimension> };

export type CollarFault = 'nothing to set' | 'beyond its end';

/** Why two readings of a collar cannot be, as read from its loosest end; null where they can. */
export function collarFault(now: Quantity<'length'>, most: Quantity<'length'>): CollarFault | null {
  if (siOf(most) === 0) return 'nothing to set';
  return siOf(now) > siOf(most) ? 'beyond its end' : null;
}
