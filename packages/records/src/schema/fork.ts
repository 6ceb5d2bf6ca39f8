import * as z from 'zod/mini';
import { adjuster } from './adjusters.ts';
import type { Immutable } from './immutable.ts';
import { quantities } from './quantity.ts';
import { none, rubber, topOut } from './struts.ts';

/**
 * Air above the oil of each leg. `gap`: tube top to oil, leg fully in, with that in the leg which `readWith` names; left
 * out: neither spring nor spacer. Volumes are what each displaces wholly under oil.
 */
const trappedAir = z.strictObject({
  bore: z.exactOptional(quantities.tubeDiameter),
  seal: z.exactOptional(quantities.tubeDiameter),
  gap: quantities.airGap,
  readWith: z.exactOptional(z.enum(['nothing', 'spring', 'spacer', 'spring and spacer'])),
  springVolume: z.exactOptional(quantities.displaced),
  spacerVolume: z.exactOptional(quantities.displaced),
  /** Where a leg was filled by volume: what went in, and the volume that the gap belongs to. */
  oil: z.exactOptional(z.strictObject({ filled: quantities.oil, gapIsFor: quantities.oil })),
  /** Of the air when the leg was closed fully out, and its pressure then; left out: that of the air outside. */
  temperature: z.exactOptional(quantities.temperature),
  pressure: z.exactOptional(quantities.gasPressure),
});

const legAir = z.union([none, trappedAir]);

/**
 * What lies between cap and spring seat of a leg. `room`: the tube's own depth from the cap's face, adjuster at its loosest, to
 * the seat; read with the leg at its hard stop (`fully out`; left out, the same), or as it comes to rest with no spring in it (`relaxed`).
 */
const stack = z.strictObject({
  room: quantities.springLength,
  readAt: z.exactOptional(z.enum(['fully out', 'relaxed'])),
  /** Each by its thickness. */
  washers: z.exactOptional(z.array(quantities.washer).check(z.minLength(1), z.maxLength(20))),
  /** One that stays as it is, where something else sets the preload. */
  spacer: z.exactOptional(quantities.spacer),
});

const damping = z.enum(['damping rod', 'cartridge']);
const legDamping = z.enum(['damping rod', 'cartridge', 'none']);

/** How far the tubes stand above the upper clamp. `whenMeasured`: as the machine's lengths and heights were read; left out, as now. */
const clampHeight = z.strictObject({
  now: quantities.clampHeight,
  whenMeasured: z.exactOptional(quantities.clampHeight),
});

/** A telescopic fork: figures of each leg, but for the friction, which is of both together. */
export const fork = z.strictObject({
  /** Which tube the clamps hold: the thin one, or the thick one. */
  tubes: z.exactOptional(z.enum(['conventional', 'inverted'])),
  /** Of both legs, or of each. */
  damping: z.exactOptional(z.union([damping, z.strictObject({ left: legDamping, right: legDamping })])),
  stroke: z.exactOptional(quantities.stroke),
  /** Of each leg alike; or of each by itself, where their build or their oil differs. */
  air: z.exactOptional(z.union([none, trappedAir, z.strictObject({ left: legAir, right: legAir })])),
  rubber: z.exactOptional(z.union([none, rubber])),
  topOut: z.exactOptional(z.union([none, topOut])),
  friction: z.exactOptional(quantities.friction),
  adjuster: z.exactOptional(adjuster),
  stack: z.exactOptional(stack),
  clampHeight: z.exactOptional(clampHeight),
});

export type Fork = Immutable<z.infer<typeof fork>>;
export type SpringStack = NonNullable<Fork['stack']>;
export type TrappedAir = Immutable<z.infer<typeof trappedAir>>;

/** Which leg a figure is of: both alike, or one of them. */
export type Leg = 'both' | 'left' | 'right';

/** What is known of the air in a leg; undefined: nothing. */
export type LegAir = TrappedAir | 'none' | undefined;

/** The air of a fork leg by leg, with the step of its path where each leg is told by itself. */
export function airOfLegs(
  air: Fork['air'],
): readonly { readonly leg: Leg; readonly air: LegAir; readonly step: readonly ('left' | 'right')[] }[] {
  if (air === undefined || air === 'none' || !('left' in air)) return [{ leg: 'both', air, step: [] }];
  return (['left', 'right'] as const).map((leg) => ({ leg, air: air[leg], step: [leg] }));
}
