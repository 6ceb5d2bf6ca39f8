import * as z from 'zod/mini';
import { descriptions } from './descriptions.ts';
import type { Immutable } from './immutable.ts';
import { name } from './names.ts';
import { quantities } from './quantity.ts';

const springLength = quantities.springLength;

/** What sets the preload, and how far it goes. `springLength` is always that of the installed spring, shock fully out. */
export const adjuster = z
  .discriminatedUnion('kind', [
    /** A threaded collar, read between two faces named on the shock itself, never from a thread end. */
    z.strictObject({
      kind: z.literal('collar'),
      lead: quantities.lead,
      between: name,
      and: name,
      reading: z.enum(['grows with preload', 'shrinks with preload']),
      least: quantities.collarReading,
      most: quantities.collarReading,
      springLength: z.exactOptional(z.strictObject({ at: quantities.collarReading, length: springLength })),
      /** The reading at which the collar just touches the fitted spring. */
      touches: z.exactOptional(quantities.collarReading),
    }),
    /** A screwed cap: turns counted in from fully out. */
    z.strictObject({
      kind: z.literal('cap'),
      lead: quantities.lead,
      turns: z.number().check(z.minimum(0.25), z.maximum(100)),
      springLength: z.exactOptional(springLength),
    }),
    /** A stepped cam: the rise of each step above the first. */
    z.strictObject({
      kind: z.literal('cam'),
      steps: z.array(quantities.camRise).check(z.minLength(2), z.maxLength(40)),
      springLength: z.exactOptional(springLength),
    }),
    /** A hydraulic knob: clicks counted in from fully out; the dead ones at the start move nothing. */
    z.strictObject({
      kind: z.literal('clicks'),
      perClick: quantities.perClick,
      count: z.int().check(z.minimum(1), z.maximum(400)),
      dead: z.exactOptional(z.int().check(z.minimum(0), z.maximum(400))),
      springLength: z.exactOptional(springLength),
    }),
    /** A spacer on the spring, cut to length. */
    z.strictObject({
      kind: z.literal('spacer'),
      least: quantities.spacer,
      most: quantities.spacer,
      cut: quantities.spacerCut,
      springLength: z.exactOptional(z.strictObject({ at: quantities.spacer, length: springLength })),
    }),
    z.strictObject({ kind: z.literal('none') }),
  ])
  .register(descriptions, { id: 'adjuster' });

/** Preload measured at the spring itself, where the adjuster's place does not tell it. */
const preload = z.exactOptional(quantities.preload);

/** Where an adjuster stands, in its own terms. */
export const setting = z
  .union([
    z.strictObject({ reading: quantities.collarReading, preload }),
    z.strictObject({ turns: z.number().check(z.minimum(0), z.maximum(100)), preload }),
    z.strictObject({ step: z.int().check(z.minimum(1), z.maximum(40)), preload }),
    z.strictObject({ click: z.int().check(z.minimum(0), z.maximum(400)), preload }),
    z.strictObject({ spacer: quantities.spacer, preload }),
    z.strictObject({ preload: quantities.preload }),
  ])
  .register(descriptions, { id: 'setting' });

export type Adjuster = Immutable<z.infer<typeof adjuster>>;
export type Setting = Immutable<z.infer<typeof setting>>;
