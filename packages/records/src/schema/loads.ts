import * as z from 'zod/mini';
import type { Immutable } from './immutable.ts';
import { id, members, name, order } from './names.ts';
import { quantities } from './quantity.ts';
import { wanted } from './targets.ts';

const thing = z.strictObject({
  name,
  order,
  kind: z.enum(['person', 'item']),
  mass: quantities.thingMass,
});

export const things = members(thing);

const caseOfAnyKind = {
  name,
  order,
  /** Percent of the riding. */
  share: z.number().check(z.minimum(0), z.maximum(100)),
  fuel: z.exactOptional(quantities.fuel),
  /** Goes before the target set in use. */
  wanted: z.exactOptional(z.strictObject({ rear: z.exactOptional(wanted), front: z.exactOptional(wanted) })),
};

/** A load as the technician builds and names it: things at places, or two scale readings with all of it aboard. */
const loadCase = z.union([
  z.strictObject({ ...caseOfAnyKind, aboard: members(z.strictObject({ thing: id, place: id })) }),
  z.strictObject({
    ...caseOfAnyKind,
    scales: z.strictObject({
      front: quantities.massOnWheel,
      rear: quantities.massOnWheel,
      /** Height of the mass centre of what was added. */
      addedHeight: z.exactOptional(quantities.addedHeight),
    }),
  }),
]);

export const loadCases = members(loadCase);

export type Thing = Immutable<z.infer<typeof thing>>;
export type LoadCase = Immutable<z.infer<typeof loadCase>>;
