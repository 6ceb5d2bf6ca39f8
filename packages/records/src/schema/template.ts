import * as z from 'zod/mini';
import { fitting } from './fitting.ts';
import { fork } from './fork.ts';
import type { Immutable } from './immutable.ts';
import { machine } from './machine.ts';
import { freeText, id, name } from './names.ts';
import { springs } from './springs.ts';
import { shock } from './struts.ts';

export const templateFormat = 'sagwright-template';
export const templateVersion = 1;

export const templateKinds = ['machine', 'shock', 'fork'] as const;

export type TemplateKind = (typeof templateKinds)[number];

/** Which spring is in each strut, as the set-up of a job tells it, but for where the adjuster stands. */
const fittedAt = z.union([
  z.strictObject({ single: id }),
  z.strictObject({ both: id }),
  z.strictObject({ left: id, right: id }),
]);

const every = {
  format: z.literal(templateFormat),
  version: z.literal(templateVersion),
  name,
  note: z.exactOptional(freeText),
};

/**
 * A machine, a shock or a fork as a pattern for others of its kind. Every part stands where it stands in a job, and is of
 * the job's own schema, so that a path means the same in both.
 */
export const template = z.discriminatedUnion('kind', [
  z.strictObject({
    ...every,
    kind: z.literal('machine'),
    /** Its name is the template's. */
    machine: z.omit(machine, { name: true }),
    springs,
    fitted: z.strictObject({ rear: fittedAt, front: z.exactOptional(fittedAt) }),
  }),
  z.strictObject({
    ...every,
    kind: z.literal('shock'),
    machine: z.strictObject({ rear: z.strictObject({ shock }) }),
    springs,
    fitted: z.strictObject({ rear: z.exactOptional(fittedAt) }),
    /** Its eyes, its reservoir, and the tools that go on it. */
    fitting: z.exactOptional(fitting),
  }),
  z.strictObject({
    ...every,
    kind: z.literal('fork'),
    machine: z.strictObject({ front: z.strictObject({ fork }) }),
    springs,
    fitted: z.strictObject({ front: z.exactOptional(fittedAt) }),
  }),
]);

export type Template = Immutable<z.infer<typeof template>>;
export type TemplateOf<K extends TemplateKind> = Extract<Template, { readonly kind: K }>;
export type FittedAt = Immutable<z.infer<typeof fittedAt>>;
