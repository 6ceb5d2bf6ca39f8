import * as z from 'zod/mini';
import { adjuster } from './adjusters.ts';
import type { Immutable } from './immutable.ts';
import { quantities } from './quantity.ts';
import { none, rubber, topOut } from './struts.ts';

/** Air above the oil of each leg. `gap`: tube top to oil, leg fully in, spring and spacer out. */
const trappedAir = z.strictObject({
  bore: z.exactOptional(quantities.tubeDiameter),
  seal: z.exactOptional(quantities.tubeDiameter),
  gap: quantities.airGap,
});

/** How far the tubes stand above the upper clamp. `whenMeasured`: as the machine's lengths and heights were read; left out, as now. */
const clampHeight = z.strictObject({
  now: quantities.clampHeight,
  whenMeasured: z.exactOptional(quantities.clampHeight),
});

/** A telescopic fork: figures of each leg, but for the friction, which is of both together. */
export const fork = z.strictObject({
  stroke: z.exactOptional(quantities.stroke),
  air: z.exactOptional(z.union([none, trappedAir])),
  rubber: z.exactOptional(z.union([none, rubber])),
  topOut: z.exactOptional(z.union([none, topOut])),
  friction: z.exactOptional(quantities.friction),
  adjuster: z.exactOptional(adjuster),
  clampHeight: z.exactOptional(clampHeight),
});

export type Fork = Immutable<z.infer<typeof fork>>;
