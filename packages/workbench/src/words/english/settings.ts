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
  /** Under its name at the head of a column, where it is no length. */
  counted: { cap: 'turns in', cam: 'step', clicks: 'click', none: '' },
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
    tighter: (steps: string) => `${steps} tighter`,
    looser: (steps: string) => `${steps} looser`,
    same: () => 'as it is',
  },
  strut: { left: 'left', right: 'right', both: 'both sides', single: 'the one' },
  /** For which spring, in what state, and how it is read. */
  howRead: {
    collar: (spring: string, state: string, unit: string, between: string, and: string) =>
      `For ${spring}, ${state}; read from ${between} to ${and}. Lengths: ${unit}.`,
    cap: (spring: string, state: string, unit: string) =>
      `For ${spring}, ${state}; turns of the cap count in from fully out. Lengths: ${unit}.`,
    cam: (spring: string, state: string, unit: string) =>
      `For ${spring}, ${state}; steps count from 1, the loosest. Lengths: ${unit}.`,
    clicks: (spring: string, state: string, unit: string) =>
      `For ${spring}, ${state}; clicks count in from fully out. Lengths: ${unit}.`,
    spacer: (spring: string, state: string, unit: string) =>
      `For ${spring}, ${state}; the spacer is cut to this length. Lengths: ${unit}.`,
  },
  state: {
    rear: (sides: string) => `${sides}, wheel in the air, shock fully out`,
    front: (sides: string) => `${sides}, wheel in the air, fork fully out`,
  },
  sides: { one: () => 'machine held', two: () => 'both sides alike, machine held' },
  perTurn: (kilograms: string, end: 'rear' | 'front', sides: number) =>
    `One turn${sides > 1 ? ' on each side' : ''} answers ${kilograms} on the ${end} wheel.`,
  foundAt: (strut: string, setting: string) => `${strut} ${setting}`,
  preload: (length: string) => `${length} of preload`,
  /** Added where left and right were found on different springs. */
  withSpring: (setting: string, spring: string) => `${setting} on ${spring}`,
  /** How the nose moved. */
  nose: { up: (angle: string) => `${angle} up`, down: (angle: string) => `${angle} down` },
} as const;
