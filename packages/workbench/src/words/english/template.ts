import type { LeftOutBecause } from '@sagwright/records/template/leftOut';

/** What is said where a machine, a shock or a fork is kept, and where one is taken. */
export const templateWords = {
  rearPreload: (figure: string) => `preload at the rear ${figure}`,
  frontPreload: (figure: string) => `preload of the fork ${figure}`,
  /** The note of a job that was begun with a machine that was kept. */
  begun: (name: string, preloads: readonly string[]) =>
    `Begun with the template "${name}". Nobody has read on this machine yet, and usual figures stand in: ${preloads.join('; ')}. Scales and plates are told of another one: weigh this machine, and read its own plate.`,
  leftOut: {
    'who rides': (what) => `Left out, since it is of who rides: ${what}.`,
    'how it stood': (what) => `Left out, since it is how this one stood: ${what}.`,
    'read it there': (what) =>
      `Left out, since somebody relies on it and it must be read on each machine: ${what}.`,
    'this one only': (what) => `Left out, since it was read of this one alone: ${what}.`,
    'around it': (what) =>
      `Left out, but for what goes with a shock into any machine (eyes, reservoir, tools on it): ${what}.`,
    'not in it': (what) => `Left out, since it is of the shelf: ${what}.`,
  } satisfies Record<LeftOutBecause, (what: string) => string>,
  told: (what: string) => `Kept as told, since the next one has its own plate and weight: ${what}.`,
  same: 'It was in there already, with all that was read of it. Nothing was changed.',
  dropped: (what: string) => `Gone with the one that was in it: ${what}.`,
  readAgain: (what: string) => `To be read with this one in it, until then it is uncertain: ${what}.`,
  count: (count: 1 | 2) =>
    count === 1
      ? 'It was kept as one of two; this machine has one.'
      : 'It was kept as the only one; this machine has two of them.',
} as const;
