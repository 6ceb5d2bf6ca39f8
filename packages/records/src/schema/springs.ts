import * as z from 'zod/mini';
import type { Immutable } from './immutable.ts';
import { end, members, name, order } from './names.ts';
import { quantities } from './quantity.ts';

/** How a spring's force grows: as marked, or as worked out from its wire. One spring, never a pair. */
const springRate = z.discriminatedUnion('kind', [
  /** No coil: the air of the shock bears the load alone. */
  z.strictObject({ kind: z.literal('none') }),
  z.strictObject({ kind: z.literal('linear'), rate: quantities.springRate }),
  /** Two springs one upon the other: the soft one closes after its own `softCloses`, then the stiff one is alone. */
  z.strictObject({
    kind: z.literal('series'),
    soft: quantities.springRate,
    stiff: quantities.springRate,
    softCloses: quantities.softCloses,
  }),
  /** A progressive spring as tested: force against compression from free, from 0 and 0, both rising. */
  z.strictObject({
    kind: z.literal('table'),
    rows: z
      .array(
        z.strictObject({
          compression: quantities.springCompression,
          force: quantities.springForce,
        }),
      )
      .check(z.minLength(2), z.maxLength(200)),
  }),
  /** A bare coil, measured: exactly one of the outside and the mean diameter. */
  z.strictObject({
    kind: z.literal('coil'),
    wire: quantities.wire,
    outside: z.exactOptional(quantities.coilDiameter),
    mean: z.exactOptional(quantities.coilDiameter),
    coils: z.number().check(z.minimum(1.5), z.maximum(80)),
    ends: z.enum(['plain', 'plain ground', 'closed', 'closed ground']),
    material: z.enum([
      'music wire',
      'hard drawn',
      'chrome silicon',
      'chrome vanadium',
      'silicon manganese',
      'patented drawn',
      'oil hardened',
      'hot rolled',
    ]),
  }),
]);

const spring = z.strictObject({
  name,
  order,
  end,
  rate: springRate,
  freeLength: z.exactOptional(quantities.springLength),
  solidLength: z.exactOptional(quantities.springLength),
  /** The shelf or drawer it lies in. */
  where: z.exactOptional(name),
  /** At hand, so that it can be fitted today. */
  hand: z.exactOptional(z.boolean()),
});

export const springs = members(spring);

export type SpringRate = Immutable<z.infer<typeof springRate>>;
export type Spring = Immutable<z.infer<typeof spring>>;
