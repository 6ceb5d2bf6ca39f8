import type { Travel } from '@sagwright/records/schema/machine';

/** How the rear moves its shock, in sentences; figures arrive formatted. */
export const rearMotion = {
  /** Where the ratios come from, by how the travel was told. */
  source: {
    leverage: 'one ratio for the whole travel, as typed',
    motion: 'one ratio for the whole travel, as typed',
    table: 'a curve through the rows of the table',
    taped: 'a smooth curve fitted to the taped points',
    direct: 'worked out exactly from the hard points of arm and shock',
    linkage: 'worked out exactly from the hard points of rocker and link',
  } satisfies { readonly [K in Travel['kind']]: string },
  fullyOut: 'fully out',
  fullBump: 'full bump',
  alone: 'nothing aboard, as found',
  readAt: (travel: string) =>
    `By the hard points and the shock's length they were read at ${travel} of wheel travel.`,
  link: {
    pulls: 'The link is pulled as the shock is pressed.',
    pushes: 'The link is pushed as the shock is pressed.',
  },
  earlier: {
    agrees: (leverage: string, now: string) =>
      `The leverage known before, ${leverage}, agrees with what is worked with over the whole travel, ${now}.`,
    differs: (leverage: string, now: string, difference: string) =>
      `The leverage known before, ${leverage}, is not what is worked with over the whole travel, ${now}: they are ${difference} apart, more than both ±. One of the readings is wrong.`,
  },
  survey: {
    zero: (zero: string) => `Its wheel reading counts from ${zero} of travel by the hard points.`,
    agrees: (rows: number) =>
      `The ${rows} rows known before agree with the hard points, each within the ± of both.`,
    differs: (count: number, rows: number, wheel: string, difference: string) =>
      `Of ${rows} rows known before ${count} ${count === 1 ? 'does' : 'do'} not agree with the hard points; furthest off in its ±: wheel ${wheel}, shock ${difference} against the points. Worked with: the points.`,
  },
  tape: {
    /** `spare` readings more than are needed. */
    agrees: (lengths: number, spare: number) =>
      spare === 0
        ? `The hard points come of ${lengths} lengths, none of them spare: a slip in one would not show.`
        : `The hard points come of ${lengths} lengths, ${spare} more than needed, which bear each other out.`,
    differs: (name: string, off: string) =>
      `The taped lengths do not bear each other out; furthest off in its ±: ${name}, ${off} against the points. Tape it again, and those that it meets.`,
  },
  verdicts: { agrees: 'agrees', differs: 'differs', 'not checked': 'nothing checks it' },
  tightest: (kind: 'chain' | 'belt', distance: string, travel: string) =>
    `The ${kind} is tightest at ${travel} of wheel travel, sprocket to axle ${distance}: set its slack there.`,
  squat:
    'Squat: on level ground, driven steadily, no drag; above 100 % thrust presses the rear down, below it lifts it.',
} as const;
