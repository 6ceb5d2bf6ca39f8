import type { Adjuster } from '@sagwright/records/schema/adjusters';

/** Adjusters and where they stand. */
export const settings = {
  adjuster: {
    collar: 'collar',
    cap: 'cap',
    cam: 'cam',
    clicks: 'knob',
    spacer: 'spacer',
    none: 'adjuster',
  } satisfies { readonly [K in Adjuster['kind']]: string },
  /** Where it stands, inside a sentence. */
  at: {
    reading: (length: string) => `collar at ${length}`,
    turns: (turns: string) => `cap ${turns} ${turns === '1' || !/^\d/.test(turns) ? 'turn' : 'turns'} in`,
    step: (step: string) => `cam on step ${step}`,
    click: (click: string) => `knob on click ${click}`,
    spacer: (length: string) => `spacer of ${length}`,
  },
  /** The same beside a heading. */
  short: {
    reading: (length: string) => length,
    turns: (turns: string) => `${turns} in`,
    step: (step: string) => `step ${step}`,
    click: (click: string) => `click ${click}`,
    spacer: (length: string) => length,
  },
  turns: {
    tighter: (turns: string) => `${turns} tighter`,
    looser: (turns: string) => `${turns} looser`,
    same: () => 'as it is',
  },
  steps: {
    tighter: (steps: string) => `${steps} up`,
    looser: (steps: string) => `${steps} down`,
    same: () => 'as it is',
  },
  strut: { left: 'left', right: 'right', both: 'both sides', single: 'the one' },
  foundAt: (strut: string, setting: string) => `${strut} ${setting}`,
  preload: (length: string) => `${length} of preload`,
  /** Added where left and right were found on different springs. */
  withSpring: (setting: string, spring: string) => `${setting} on ${spring}`,
} as const;
