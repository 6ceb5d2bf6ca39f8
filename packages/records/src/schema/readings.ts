import * as z from 'zod/mini';
import { setting } from './adjusters.ts';
import type { Immutable } from './immutable.ts';
import { end, id, members, name, order } from './names.ts';
import { quantities } from './quantity.ts';

const ofAnyKind = {
  order,
  /** What was aboard; left out: the machine alone. */
  loadCase: z.exactOptional(id),
  by: z.exactOptional(name),
  /** As it was written down. */
  when: z.exactOptional(name),
};

/** Where the adjusters of that end stood, if elsewhere than as found: collars turned by a known step. */
const adjusters = z.union([
  z.strictObject({ single: setting }),
  z.strictObject({ both: setting }),
  z.strictObject({ left: setting, right: setting }),
]);

/** A tape between two marks, read up to three times: hanging, settled after a push, settled after a lift. */
const sag = z.strictObject({
  ...ofAnyKind,
  kind: z.literal('sag'),
  end,
  /** Left out: in the middle, or nobody said. */
  side: z.exactOptional(z.enum(['left', 'right'])),
  /** From where to where the tape went; readings with the same words have the same marks. */
  marks: name,
  hanging: z.exactOptional(quantities.tapedLength),
  afterPush: z.exactOptional(quantities.tapedLength),
  afterLift: z.exactOptional(quantities.tapedLength),
  adjusters: z.exactOptional(adjusters),
});

/** Scales under the wheels, with what was aboard. The machine alone has its own, `machine.weighing`. */
const scales = z.strictObject({
  ...ofAnyKind,
  kind: z.literal('scales'),
  front: z.exactOptional(quantities.massOnWheel),
  rear: z.exactOptional(quantities.massOnWheel),
});

/** What was measured to be held against the sum, raw, kept as it was read. */
export const readings = members(z.discriminatedUnion('kind', [sag, scales]));

export type Readings = Immutable<z.infer<typeof readings>>;
export type JobReading = Readings[string];
export type SagReading = Extract<JobReading, { readonly kind: 'sag' }>;
export type ReadAdjusters = NonNullable<SagReading['adjusters']>;
