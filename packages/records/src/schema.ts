import * as z from 'zod/mini';
import { fitting } from './schema/fitting.ts';
import type { Immutable } from './schema/immutable.ts';
import { loadCases, things } from './schema/loads.ts';
import { machine } from './schema/machine.ts';
import { freeText, id, name } from './schema/names.ts';
import { quantities } from './schema/quantity.ts';
import { readings } from './schema/readings.ts';
import { setups } from './schema/setups.ts';
import { springs } from './schema/springs.ts';
import { steady, tyreSize } from './schema/stance.ts';
import { targetSets } from './schema/targets.ts';

export const jobFormat = 'sagwright-job';
export const jobVersion = 1;

/**
 * The job document: one machine's visit, as typed. The one source of its types, of the published JSON Schema and of the
 * paths of its problems. Shape and bounds are judged here; what one part says about another, in `coherence`.
 */
export const job = z.strictObject({
  format: z.literal(jobFormat),
  version: z.literal(jobVersion),
  name,
  note: z.exactOptional(freeText),
  machine,
  springs,
  things,
  loadCases,
  targetSets,
  /** The set in use. */
  targetSet: z.exactOptional(id),
  setups,
  /** What a person picked: springs, and how the machine shall stand against as found. */
  choice: z.exactOptional(
    z.strictObject({
      rear: z.exactOptional(id),
      front: z.exactOptional(id),
      /** Of the rear shocks: longer is positive. */
      shockLength: z.exactOptional(quantities.lengthChange),
      /** Of the fork tubes in their clamps: raised is positive, and lowers the front. */
      clampHeight: z.exactOptional(quantities.lengthChange),
      rearTyre: z.exactOptional(tyreSize),
      frontTyre: z.exactOptional(tyreSize),
    }),
  ),
  /** Braking and driving that are looked at; left out: nothing is told of them. */
  steady: z.exactOptional(steady),
  fitting: z.exactOptional(fitting),
  readings: z.exactOptional(readings),
});

export type JobDocument = Immutable<z.infer<typeof job>>;
