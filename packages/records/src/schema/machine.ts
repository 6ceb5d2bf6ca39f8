import * as z from 'zod/mini';
import type { Adjuster } from './adjusters.ts';
import { descriptions } from './descriptions.ts';
import { drive } from './drive.ts';
import { fork } from './fork.ts';
import { frontTravel } from './frontTravel.ts';
import { directPoints, linkagePoints } from './hardPoints.ts';
import type { Immutable } from './immutable.ts';
import { capacityRow, clearances, knobs, speedSymbol, standLean, tyreState } from './limits.ts';
import { type End, id, members, name, order } from './names.ts';
import { point, quantities } from './quantity.ts';
import { beam, raised, stancePoints, tyreSize } from './stance.ts';
import { shock } from './struts.ts';

const tyre = z
  .strictObject({
    /** Unloaded, to the ground. */
    radius: z.exactOptional(quantities.tyreRadius),
    /** Metric, as on its wall: gives the radius where none was measured. */
    size: z.exactOptional(tyreSize),
    rate: z.exactOptional(quantities.tyreRate),
    /** What the tyre may carry at its placard pressure. */
    capacity: z.exactOptional(quantities.ratedMass),
    loadIndex: z.exactOptional(z.int().check(z.minimum(20), z.maximum(100))),
    speedSymbol: z.exactOptional(speedSymbol),
    /** Cold, as read; and as plate or manual ask for it. */
    pressure: z.exactOptional(quantities.tyrePressure),
    placardPressure: z.exactOptional(quantities.tyrePressure),
    /** The greatest cold pressure, as on its wall. */
    mostPressure: z.exactOptional(quantities.tyrePressure),
    /** Goes before capacity and load index, within its rows. */
    byPressure: z.exactOptional(z.array(capacityRow).check(z.minLength(2), z.maxLength(20))),
    state: z.exactOptional(tyreState),
  })
  .register(descriptions, { id: 'tyre' });

/** Wheel travel, upward from fully out, against the shock's eye-to-eye length there. */
const travelRow = { wheel: quantities.wheelTravel, shock: quantities.shockLength };

/** Wheel per shock over the whole travel, as it was known before the rows: kept, and held against them. */
const earlierLeverage = z.exactOptional(quantities.leverage);

/** How the rear wheel moves its shock, as deep as it is known. */
const travel = z.discriminatedUnion('kind', [
  /** Wheel travel per shock stroke, usually above 1. */
  z.strictObject({ kind: z.literal('leverage'), ratio: quantities.leverage }),
  /** Shock stroke per wheel travel, usually below 1. */
  z.strictObject({ kind: z.literal('motion'), ratio: quantities.motion }),
  /** Drawn or worked out: a curve is drawn through every row. */
  z.strictObject({
    kind: z.literal('table'),
    rows: z.array(z.strictObject(travelRow)).check(z.minLength(3), z.maxLength(200)),
    earlierLeverage,
  }),
  /** Taped on the machine: a smooth curve is fitted, with its ±. */
  z.strictObject({
    kind: z.literal('taped'),
    points: members(z.strictObject({ order, ...travelRow })),
    earlierLeverage,
  }),
  /** Hard points: the places of eyes, rocker and link in the reference attitude. */
  directPoints,
  linkagePoints,
]);

const rear = z.strictObject({
  unsprung: z.exactOptional(quantities.unsprungMass),
  tyre: z.exactOptional(tyre),
  travel,
  /** Of the swingarm. */
  pivot: z.exactOptional(point),
  /** Wheel travel at which wheelbase, heights and places were read. */
  measuredAt: z.exactOptional(quantities.wheelTravel),
  /** Left out: not known, and no squat is told. */
  drive: z.exactOptional(drive),
  shock,
});

/**
 * What moves with the front wheel, weighed in parts: the wheel with tyre, discs and axle; calipers and their brackets; the lower tubes of
 * both legs with all that moves in them (oil, half of the springs); the mudguard, 0 where it is bolted to what stands still.
 */
const unsprungParts = z.strictObject({
  wheel: quantities.unsprungPart,
  brakes: z.exactOptional(quantities.unsprungPart),
  tubes: z.exactOptional(quantities.unsprungPart),
  guard: z.exactOptional(quantities.unsprungPart),
});

const front = z.strictObject({
  unsprung: z.exactOptional(quantities.unsprungMass),
  /** Instead of the whole. */
  unsprungParts: z.exactOptional(unsprungParts),
  tyre: z.exactOptional(tyre),
  measuredAt: z.exactOptional(quantities.wheelTravel),
  /** Left out: a telescopic fork. */
  travel: z.exactOptional(frontTravel),
  fork: z.exactOptional(fork),
});

/** Where something can sit or lie. Its own limit counts what is in it, or all that stands on it, box included. */
const place = z.strictObject({
  name,
  order,
  kind: z.enum(['rider seat', 'passenger seat', 'rear box', 'side cases', 'rack', 'tank bag', 'other']),
  at: z.exactOptional(point),
  limit: z.exactOptional(quantities.ratedMass),
  limitCounts: z.exactOptional(z.enum(['contents', 'all on it'])),
  /** The place it stands on, whose limit it uses too. */
  carriedBy: z.exactOptional(id),
});

/** The machine without people and things, on two scales. */
const weighing = z.strictObject({
  front: quantities.massOnWheel,
  rear: quantities.massOnWheel,
  fuel: z.exactOptional(quantities.fuel),
  attitude: z.enum(['own sag', 'level']),
  massCentreHeight: z.exactOptional(quantities.height),
  /** Gives the height of the mass centre. */
  raised: z.exactOptional(raised),
});

export const machine = z.strictObject({
  name,
  kind: z.enum(['solo', 'sidecar', 'trike', 'rigid rear']),
  ridingHeightControl: z.exactOptional(z.enum(['none', 'self-levelling', 'electronic'])),
  wheelbase: z.exactOptional(quantities.wheelbase),
  rake: z.exactOptional(quantities.rake),
  forkOffset: z.exactOptional(quantities.forkOffset),
  seat: z.exactOptional(point),
  weighing,
  tank: z.exactOptional(z.strictObject({ capacity: quantities.tank, at: z.exactOptional(point) })),
  rear,
  front,
  limits: z.exactOptional(
    z.strictObject({
      gross: z.exactOptional(quantities.ratedMass),
      frontAxle: z.exactOptional(quantities.ratedMass),
      rearAxle: z.exactOptional(quantities.ratedMass),
      topSpeed: z.exactOptional(quantities.speed),
      standLean: z.exactOptional(standLean),
    }),
  ),
  places: members(place),
  /** Pegs, stand, lamp, and what touches the ground first. */
  points: z.exactOptional(stancePoints),
  beam: z.exactOptional(beam),
  /** What comes near to what as a wheel goes in. */
  clearances: z.exactOptional(clearances),
  /** Of the dampers. */
  knobs: z.exactOptional(knobs),
});

export type Tyre = Immutable<z.infer<typeof tyre>>;
export type Travel = Immutable<z.infer<typeof travel>>;
/** Travel known by hard points. */
export type Points = Extract<Travel, { kind: 'direct' | 'linkage' }>;
export type Rear = Immutable<z.infer<typeof rear>>;
export type UnsprungParts = Immutable<z.infer<typeof unsprungParts>>;
export type Front = Immutable<z.infer<typeof front>>;
export type Place = Immutable<z.infer<typeof place>>;
export type Machine = Immutable<z.infer<typeof machine>>;

/** What sets the preload at an end, as the job describes it; undefined where nobody said. */
export function adjusterAt(of: Machine, at: End): Adjuster | undefined {
  return at === 'rear' ? of.rear.shock.adjuster : of.front.fork?.adjuster;
}
