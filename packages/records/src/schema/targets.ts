import * as z from 'zod/mini';
import { unitsOf } from '../units.ts';
import { bounds } from './bounds.ts';
import { descriptions } from './descriptions.ts';
import type { Immutable } from './immutable.ts';
import { end, members, name, order } from './names.ts';
import { boundedBy } from './quantity.ts';

/** A sag that is wanted: a length, or a share of the total travel, rubber included. No ±: a target is not a measurement. */
const wantedSag = z
  .strictObject({ value: z.number(), unit: z.enum([...unitsOf('length'), '%']) })
  .check(boundedBy((typed) => (typed.unit === '%' ? bounds.wantedShare : bounds.wantedLength)))
  .register(descriptions, { id: 'wantedSag', description: '0 % to 100 % of the travel, or 0 mm to 400 mm' });

/** The wanted sag of one end: the aim, and the band within which it is left alone. All three in % or all three lengths. */
export const wanted = z
  .strictObject({
    low: wantedSag,
    aim: wantedSag,
    high: wantedSag,
    /** Counted from the hard stop, or from where the wheel hangs. */
    from: z.enum(['stop', 'hanging']),
    along: z.enum(['wheel', 'stroke']),
  })
  .register(descriptions, { id: 'wanted' });

const headcount = z.int().check(z.minimum(0), z.maximum(10));

const targetSet = z.strictObject({
  name,
  order,
  /** Who says so. */
  origin: name,
  rows: members(
    z.strictObject({
      order,
      end,
      people: z.strictObject({ least: headcount, most: headcount }),
      luggage: z.exactOptional(z.enum(['with', 'without'])),
      wanted,
    }),
  ),
});

export const targetSets = members(targetSet);

export type Wanted = Immutable<z.infer<typeof wanted>>;
export type TargetSet = Immutable<z.infer<typeof targetSet>>;
