import * as z from 'zod/mini';
import { adjuster } from './adjusters.ts';
import { descriptions } from './descriptions.ts';
import type { Immutable } from './immutable.ts';
import { name } from './names.ts';
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

/**
 * A pressure spring beside the coil, or instead of it (a spring of the kind `none`): what one sets is its pressure. As read on
 * a gauge, at `readAt` of stroke (left out: fully out), as its range is too.
 */
const air = z.strictObject({
  /** Across what the pressure pushes on; volume with the shock fully out, hose included. */
  diameter: quantities.airDiameter,
  volume: quantities.gasVolume,
  pressure: quantities.gasPressure,
  readAt: z.exactOptional(quantities.wheelTravel),
  least: quantities.gasPressure,
  most: quantities.gasPressure,
  /** What the gauge and its hose hold: so much of the air is lost in reading; 0 with one that loses nothing. */
  gauge: z.exactOptional(quantities.gaugeVolume),
});

/** Rubbers that nobody measured: named, with a curve that we made up. */
export const assumedRubbers = ['short and hard', 'middling', 'long and soft'] as const;

/**
 * The bump rubber, met at stroke `start`; its force by exactly one of: `rate` (F = rate · d + hardening · d³, d how far it is
 * pressed), `rows` as pressed on a tester (d from 0, force from 0, both rising), or `assumed`, and then `start` may be left out too.
 */
export const rubber = z
  .strictObject({
    start: z.exactOptional(quantities.rubberStart),
    rate: z.exactOptional(quantities.rubberRate),
    hardening: z.exactOptional(quantities.rubberHardening),
    rows: z.exactOptional(
      z
        .array(z.strictObject({ compression: quantities.rubberCompression, force: quantities.rubberForce }))
        .check(z.minLength(2), z.maxLength(60)),
    ),
    assumed: z.exactOptional(z.enum(assumedRubbers)),
  })
  .register(descriptions, { id: 'rubber' });

/** The top-out spring: works over the first `length` of the stroke and pulls the strut together. */
export const topOut = z
  .strictObject({
    length: quantities.topOutLength,
    rate: quantities.topOutRate,
  })
  .register(descriptions, { id: 'topOut' });

/** Of the shock's eye-to-eye length: where it stands, its range, and what tells how far out its thread may come. */
const lengthAdjuster = z.strictObject({
  /** Longer is positive, as is the range, from one zero. */
  change: quantities.lengthChange,
  least: z.exactOptional(quantities.lengthChange),
  most: z.exactOptional(quantities.lengthChange),
  lead: z.exactOptional(quantities.lead),
  /** Engaged now, as measured; `atLeast`: diameters that must remain, 1 where nobody said. */
  thread: z.exactOptional(
    z.strictObject({
      diameter: quantities.threadDiameter,
      engaged: quantities.threadEngaged,
      atLeast: z.exactOptional(z.number().check(z.minimum(0.5), z.maximum(5))),
    }),
  ),
  /** A mark or safety ring, and how much further out the thread may come before it shows, or no longer seats. */
  mark: z.exactOptional(z.strictObject({ name: z.exactOptional(name), left: quantities.markLeft })),
});

/** The rear shock, or each of the two. */
export const shock = z.strictObject({
  count: z.literal([1, 2]),
  stroke: z.exactOptional(quantities.stroke),
  /** Eye to eye, fully out. */
  length: z.exactOptional(quantities.shockLength),
  /** How it is built: it tells what its gas is where nobody read it. */
  build: z.exactOptional(z.enum(['mono-tube', 'mono-tube with reservoir', 'twin-tube'])),
  gas: z.exactOptional(z.union([none, gas])),
  air: z.exactOptional(air),
  rubber: z.exactOptional(z.union([none, rubber])),
  topOut: z.exactOptional(z.union([none, topOut])),
  /** Of each shock, along it. */
  friction: z.exactOptional(quantities.friction),
  /** The largest diameter that its spring goes over: body, or nose of the collar. */
  springOver: z.exactOptional(quantities.coilDiameter),
  lengthAdjuster: z.exactOptional(lengthAdjuster),
  adjuster,
});

export type Gas = Immutable<z.infer<typeof gas>>;
export type Rubber = Immutable<z.infer<typeof rubber>>;
export type TopOut = Immutable<z.infer<typeof topOut>>;
export type ShockAir = Immutable<z.infer<typeof air>>;
export type LengthAdjuster = Immutable<z.infer<typeof lengthAdjuster>>;
export type Shock = Immutable<z.infer<typeof shock>>;
