import * as z from 'zod/mini';
import type { Immutable } from './immutable.ts';
import { end, members, name, order } from './names.ts';
import { quantities } from './quantity.ts';

/** Coils as counted on the spring, and how far off that may be (left out: a quarter turn at each end that gives). */
const coilsPlusMinus = z.exactOptional(z.number().check(z.minimum(0), z.maximum(5)));

const material = z.enum([
  'music wire',
  'hard drawn',
  'chrome silicon',
  'chrome vanadium',
  'silicon manganese',
  'patented drawn',
  'oil hardened',
  'hot rolled',
]);

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
  /**
   * A bare coil, measured: exactly one of the outside and the mean diameter. Where a rate is marked on it too, both are held
   * against each other; the coil's counts unless `counts` says otherwise.
   */
  z.strictObject({
    kind: z.literal('coil'),
    wire: quantities.wire,
    outside: z.exactOptional(quantities.coilDiameter),
    mean: z.exactOptional(quantities.coilDiameter),
    coils: z.number().check(z.minimum(1.5), z.maximum(80)),
    coilsPlusMinus,
    ends: z.enum(['plain', 'plain ground', 'closed', 'closed ground']),
    material,
    marked: z.exactOptional(quantities.springRate),
    counts: z.exactOptional(z.enum(['coil', 'marked'])),
  }),
  /**
   * Wound with several pitches, measured free: its sections close one after another. Of each the coils that give, and their pitch
   * or the length over them, centre to centre.
   */
  z.strictObject({
    kind: z.literal('wound'),
    wire: quantities.wire,
    outside: z.exactOptional(quantities.coilDiameter),
    mean: z.exactOptional(quantities.coilDiameter),
    sections: members(
      z.strictObject({
        order,
        coils: z.number().check(z.minimum(0.25), z.maximum(80)),
        coilsPlusMinus,
        pitch: z.exactOptional(quantities.pitch),
        length: z.exactOptional(quantities.springLength),
      }),
    ),
    ends: z.enum(['plain', 'closed', 'closed ground']),
    material,
  }),
]);

const spring = z.strictObject({
  name,
  order,
  end,
  rate: springRate,
  freeLength: z.exactOptional(quantities.springLength),
  /** Inner diameter, where no coil was measured. */
  inside: z.exactOptional(quantities.coilDiameter),
  /** Height of what it stands on when it is fitted, rear only: a fork's spacers are in its stack. */
  spacer: z.exactOptional(quantities.springSpacer),
  solidLength: z.exactOptional(quantities.springLength),
  /** The shelf or drawer it lies in. */
  where: z.exactOptional(name),
  /** At hand, so that it can be fitted today. */
  hand: z.exactOptional(z.boolean()),
});

export const springs = members(spring);

export type SpringRate = Immutable<z.infer<typeof springRate>>;
export type Spring = Immutable<z.infer<typeof spring>>;
