import * as z from 'zod/mini';
import { descriptions } from './descriptions.ts';
import { gripped, toolKinds } from './fastenings.ts';
import type { Immutable } from './immutable.ts';
import { members, name, order } from './names.ts';
import { quantities } from './quantity.ts';

/** What lies between bolt and eye; its length is that of what the bolt clamps. */
const sleeve = z.strictObject({
  inner: z.exactOptional(quantities.boltDiameter),
  outer: z.exactOptional(quantities.eyeBore),
  length: z.exactOptional(quantities.mountWidth),
});

/** One end of the new shock against the machine's own bolt. */
const mount = z
  .strictObject({
    /** Left out: not known, and tightened as a rubber one would be. */
    bush: z.exactOptional(z.enum(['rubber', 'spherical', 'plain'])),
    bore: z.exactOptional(quantities.eyeBore),
    bolt: z.exactOptional(quantities.boltDiameter),
    /** Along the bolt: what must stay free to move, and the room between the machine's two faces. */
    eyeWidth: z.exactOptional(quantities.mountWidth),
    clampWidth: z.exactOptional(quantities.mountWidth),
    sleeve: z.exactOptional(sleeve),
    /** Side float that must remain; left out: any. */
    keep: z.exactOptional(quantities.mountFloat),
    /** Of the bolt, in what it is screwed into. `atLeast`: diameters; left out: 1 in steel, else 2. */
    thread: z.exactOptional(
      z.strictObject({
        into: z.exactOptional(z.enum(['steel', 'aluminium'])),
        engaged: z.exactOptional(quantities.threadEngaged),
        atLeast: z.exactOptional(z.number().check(z.minimum(0.5), z.maximum(5))),
      }),
    ),
  })
  .register(descriptions, { id: 'mount' });

/** Where the damper's second chamber is. Left out: not known, and no step is told of it. */
const reservoir = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('none') }),
  z.strictObject({ kind: z.literal('on the body') }),
  /** In a clamp on a bracket of its own. */
  z.strictObject({
    kind: z.literal('by hose'),
    /** How far the bracket must stand off what it is bolted to, and how thick one spacer is. */
    offset: z.exactOptional(quantities.bracketOffset),
    spacer: z.exactOptional(quantities.washer),
    /** Its bolts' heads: flush where the next part lies on them. */
    heads: z.exactOptional(z.enum(['proud', 'flush'])),
  }),
]);

const tool = z.strictObject({
  order,
  on: z.enum(gripped),
  kind: z.enum(toolKinds),
  /** Across flats, or across what it fits into. */
  size: z.exactOptional(quantities.toolSize),
});

/** A torque as somebody read it from this machine's manual. To be worked by it needs its page and its reader. */
const torque = z
  .strictObject({
    value: z.exactOptional(quantities.torque),
    /** Manual and page, as written there. */
    page: z.exactOptional(name),
    readBy: z.exactOptional(name),
    /** A second person who read it there; or the same one, once more. */
    checkedBy: z.exactOptional(name),
  })
  .register(descriptions, { id: 'torqueReading' });

/** A step of the work list that was done. */
const doneStep = z.strictObject({
  by: z.exactOptional(name),
  /** As it was written down. */
  when: z.exactOptional(name),
});

/** New shocks at the rear: what the work list is made of. */
const rearFitting = z.strictObject({
  /** What is fitted, in the workshop's own words. */
  name: z.exactOptional(name),
  top: z.exactOptional(mount),
  bottom: z.exactOptional(mount),
  /** How far the two mounts lie beside each other, across the machine. */
  mountOffset: z.exactOptional(quantities.mountOffset),
  /** Left out: as it comes, its spring on it. */
  spring: z.exactOptional(z.enum(['on the unit', 'to be fitted'])),
  reservoir: z.exactOptional(reservoir),
  /** What must come off the machine to reach the bolts. */
  inTheWay: z.exactOptional(members(z.strictObject({ name, order }))),
  tools: z.exactOptional(members(tool)),
  torques: z.exactOptional(
    z.strictObject({
      topBolt: z.exactOptional(torque),
      bottomBolt: z.exactOptional(torque),
      lockNut: z.exactOptional(torque),
      bracket: z.exactOptional(torque),
      reservoirClamp: z.exactOptional(torque),
    }),
  ),
  /** Steps done, by the names that the work list gives them. */
  done: z.exactOptional(members(doneStep)),
});

/** What is being fitted. Left out: nothing, and no work list is told. */
export const fitting = z.strictObject({ rear: z.exactOptional(rearFitting) });

export type Mount = Immutable<z.infer<typeof mount>>;
export type Tool = Immutable<z.infer<typeof tool>>;
export type Torque = Immutable<z.infer<typeof torque>>;
export type DoneRecord = Immutable<z.infer<typeof doneStep>>;
export type RearFitting = Immutable<z.infer<typeof rearFitting>>;
