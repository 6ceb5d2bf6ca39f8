import * as z from 'zod/mini';
import type { Immutable } from './immutable.ts';
import { quantities } from './quantity.ts';

/**
 * How the wheel moves the springs of a front that is no telescopic fork. Wheel travel upward from fully out, along the body's
 * vertical; each kind as at the rear, but for the last.
 */
export const frontTravel = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('leverage'), ratio: quantities.leverage }),
  z.strictObject({ kind: z.literal('motion'), ratio: quantities.motion }),
  z.strictObject({
    kind: z.literal('table'),
    rows: z
      .array(z.strictObject({ wheel: quantities.wheelTravel, shock: quantities.shockLength }))
      .check(z.minLength(3), z.maxLength(200)),
  }),
  /** What all springs together press the wheel down with, from fully out to full bump: nothing of them is to be set. */
  z.strictObject({
    kind: z.literal('force'),
    rows: z
      .array(z.strictObject({ wheel: quantities.wheelTravel, force: quantities.springForce }))
      .check(z.minLength(3), z.maxLength(200)),
  }),
]);

export type FrontTravel = Immutable<z.infer<typeof frontTravel>>;
