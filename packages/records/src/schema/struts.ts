import * as z from 'zod/mini';
import { adjuster } from './adjusters.ts';
import { descriptions } from './descriptions.ts';
import type { Immutable } from './immutable.ts';
import { quantities } from './quantity.ts';

/** A part that is known not to be there. Left out altogether, it is unknown instead: assumed, and said. */
export const none = z.literal('none');

/** The gas behind the shock's piston, pressing its shaft out. Pressure as read on a gauge, shock fully out. */
const gas = z.strictObject({
  shaft: quantities.shaftDiameter,
  pressure: quantities.gasPressure,
  volume: z.exactOptional(quantities.gasVolume),
  /** Of the gas when the pressure was read. */
  temperature: z.exactOptional(quantities.temperature),
});

/** The bump rubber, met at stroke `start`: F = rate · d + hardening · d³, d how far it is pressed. */
export const rubber = z
  .strictObject({
    start: quantities.rubberStart,
    rate: quantities.rubberRate,
    hardening: z.exactOptional(quantities.rubberHardening),
  })
  .register(descriptions, { id: 'rubber' });

/** The top-out spring: works over the first `length` of the stroke and pulls the strut together. */
export const topOut = z
  .strictObject({
    length: quantities.topOutLength,
    rate: quantities.topOutRate,
  })
  .register(descriptions, { id: 'topOut' });

/** The rear shock, or each of the two. */
export const shock = z.strictObject({
  count: z.literal([1, 2]),
  stroke: z.exactOptional(quantities.stroke),
  /** Eye to eye, fully out. */
  length: z.exactOptional(quantities.shockLength),
  gas: z.exactOptional(z.union([none, gas])),
  rubber: z.exactOptional(z.union([none, rubber])),
  topOut: z.exactOptional(z.union([none, topOut])),
  /** Of each shock, along it. */
  friction: z.exactOptional(quantities.friction),
  /** Longer is positive; `most` is where the thread engagement ends. */
  lengthAdjuster: z.exactOptional(
    z.strictObject({
      change: quantities.lengthChange,
      least: quantities.lengthChange,
      most: quantities.lengthChange,
    }),
  ),
  adjuster,
});

export type Gas = Immutable<z.infer<typeof gas>>;
export type Rubber = Immutable<z.infer<typeof rubber>>;
export type TopOut = Immutable<z.infer<typeof topOut>>;
export type Shock = Immutable<z.infer<typeof shock>>;
