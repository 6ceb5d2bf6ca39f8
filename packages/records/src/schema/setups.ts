import * as z from 'zod/mini';
import { setting } from './adjusters.ts';
import { descriptions } from './descriptions.ts';
import type { Immutable } from './immutable.ts';
import { id } from './names.ts';

/** What one strut has in it and where its adjuster stands. */
const side = z.strictObject({ spring: id, at: setting }).register(descriptions, { id: 'side' });

/** One strut with a spring; both alike; or left and right, each by itself. */
const endSetting = z.union([
  z.strictObject({ single: side }),
  z.strictObject({ both: side }),
  z.strictObject({ left: side, right: side }),
]);

export const setups = z.strictObject({
  asFound: z.strictObject({ rear: endSetting, front: z.exactOptional(endSetting) }),
});

export type Side = Immutable<z.infer<typeof side>>;
export type EndSetting = Immutable<z.infer<typeof endSetting>>;
