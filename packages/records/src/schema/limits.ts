import * as z from 'zod/mini';
import type { Immutable } from './immutable.ts';
import { end, members, name, order } from './names.ts';
import { quantities } from './quantity.ts';

/** Letters of a tyre's wall that all tables read alike; of those in brackets they do not. */
export const speedSymbols = [
  'B',
  'C',
  'D',
  'E',
  'F',
  'G',
  'J',
  'K',
  'L',
  'M',
  'N',
  'P',
  'Q',
  'R',
  'S',
  'T',
  'U',
  'H',
  'V',
  'W',
  'Y',
] as const;

export const speedSymbol = z.enum(speedSymbols);

/** What a look at the tread and at the date on the wall says. Left out: nobody looked. */
export const tyreState = z.enum(['sound', 'worn', 'aged']);

/** From the maker's table: what the tyre may carry at a pressure. */
export const capacityRow = z.strictObject({
  pressure: quantities.tyrePressure,
  capacity: quantities.ratedMass,
});

/** Room between two parts that come nearer as a wheel goes in, read at one wheel travel or more (from fully out). */
const clearance = z.strictObject({
  name,
  order,
  end,
  kind: z.enum(['tyre and guard', 'belt or chain', 'exhaust', 'bags', 'hose', 'other']),
  readings: z
    .array(z.strictObject({ travel: quantities.wheelTravel, gap: quantities.gap }))
    .check(z.minLength(1), z.maxLength(10)),
  /** What must be left at full bump; left out: they must not touch. */
  keep: z.exactOptional(quantities.gap),
});

export const clearances = members(clearance);

/** A damper's adjuster with clicks, counted out from lightly closed. */
const knob = z.strictObject({
  name,
  order,
  end,
  /** All that it has. */
  count: z.int().check(z.minimum(1), z.maximum(100)),
  /** Where its maker starts; where it stands. */
  base: z.exactOptional(z.int().check(z.minimum(0), z.maximum(100))),
  at: z.exactOptional(z.int().check(z.minimum(0), z.maximum(100))),
});

export const knobs = members(knob);

/** Between which leans the machine stands safely on its side stand, unladen on level ground. */
export const standLean = z.strictObject({ least: quantities.standLean, most: quantities.standLean });

export type SpeedSymbol = z.infer<typeof speedSymbol>;
export type CapacityRow = Immutable<z.infer<typeof capacityRow>>;
export type Clearance = Immutable<z.infer<typeof clearance>>;
export type Knob = Immutable<z.infer<typeof knob>>;
