import type { TemplateKind } from '@sagwright/records/schema/template';
import type { LeftOutBecause } from '@sagwright/records/template/leftOut';

/** What is said where a machine, a shock or a fork is kept, and where one is taken. */
export const templateWords = {
  kinds: { machine: 'machine', shock: 'shock', fork: 'fork' } satisfies Record<TemplateKind, string>,
  rearPreload: (figure: string) => `preload at the rear ${figure}`,
  frontPreload: (figure: string) => `preload of the fork ${figure}`,
  /** The note of a job that was begun with a machine that was kept. */
  begun: (name: string, preloads: readonly string[]) =>
    `Begun with the template "${name}". Nobody has read on this machine yet, and usual figures stand in: ${preloads.join('; ')}. The scales and plates are told of another one: weigh this machine, and read its own plate.`,
  leftOut: {
    'who rides': 'who rides, and what they want',
    'how it stood': 'how this one stood',
    'read it there': 'to be read on each machine, since it keeps somebody safe',
    'this one only': 'read of this one alone',
    'not in it': 'the shelf, not the machine',
  } satisfies Record<LeftOutBecause, string>,
  told: 'kept as told, since the next machine has its own plate and weight',
} as const;
