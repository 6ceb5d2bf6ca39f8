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
    agrees: (leverage: string, byPoints: string) =>
      `The leverage known before, ${leverage}, agrees with the hard points over the whole travel, ${byPoints}.`,
    differs: (leverage: string, byPoints: string, difference: string) =>
      `The leverage known before, ${leverage}, is not that of the hard points over the whole travel, ${byPoints}: they are ${difference} apart, more than both ±. One of the readings is wrong; worked with: the points.`,
  },
  tightest: (kind: 'chain' | 'belt', distance: string, travel: string) =>
    `The ${kind} is tightest at ${travel} of wheel travel, sprocket to axle ${distance}: set its slack there.`,
  squat:
    'Squat: on level ground, driven steadily, no drag; above 100 % thrust presses the rear down, below it lifts it.',
} as const;
