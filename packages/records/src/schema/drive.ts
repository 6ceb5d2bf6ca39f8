import * as z from 'zod/mini';
import { descriptions } from './descriptions.ts';
import type { Immutable } from './immutable.ts';
import { point, quantities } from './quantity.ts';

const teeth = z.int().check(z.minimum(6), z.maximum(200));

/** A chain or toothed belt: the front one's middle, the pitch from link to link or tooth to tooth, and teeth counted. */
const pulling = {
  frontSprocket: point,
  pitch: quantities.drivePitch,
  teeth: z.strictObject({ front: teeth, rear: teeth }),
};

/** How the engine's torque comes to the rear wheel. A shaft's case is one with the swingarm. */
export const drive = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('chain'), ...pulling }),
    z.strictObject({ kind: z.literal('belt'), ...pulling }),
    z.strictObject({ kind: z.literal('shaft') }),
  ])
  .register(descriptions, { id: 'drive' });

export type Drive = Immutable<z.infer<typeof drive>>;
