/** Every word of the springs in the Choose tab. English; figures go in as text. */
export const choose = {
  pages: 'Pages of Choose',
  page: { rear: 'Rear springs', front: 'Fork springs', wanted: 'Wanted sag' },
  rates: (count: number) => (count === 0 ? 'none listed' : count === 1 ? '1 rate' : `${count} rates`),
  softestFirst: 'softest first',
  reaches: (title: string, from: string, to: string) => `${title}: ${from} to ${to}`,
  past: 'past its end',
  suggested: 'suggested',
  suggestedWhy: 'Suggested:',
  plannedBy: { choice: 'planned by hand', suggestion: 'planned', 'as found': 'stays for now' },
  fitted: 'fitted now',
  notAtHand: 'not at hand',
  typed: (figure: string) => `typed ${figure}`,
  why: 'Why',
  planThis: 'Plan this one',
  holdThis: 'Hold on to this one',
  backToSuggested: 'Back to what is suggested',
  planAct: (spring: string) => `plan ${spring}`,
  backAct: 'plan what is suggested',
  open: (spring: string) => `More about ${spring}`,
  fold: (spring: string) => `Less about ${spring}`,
  for: 'For',
  against: 'Against',
  notChecked: 'Not checked',
  whatWould: 'What would:',
  whereToAdd: 'Add one under Machine, This machine, Springs.',
  nothingFits: 'nothing fits',
  by: { choice: 'picked', suggestion: 'suggested' },
} as const;

/** What hands set, and what the machine does there. */
export const hands = {
  title: {
    rear: 'What hands set: machine held, wheel in the air, shock fully out',
    front: 'What hands set: machine held, wheel in the air, fork fully out',
  },
  load: 'Load',
  setting: (adjuster: string, unit: string) => (unit === '' ? adjuster : `${adjuster}, ${unit}`),
  springLength: (unit: string) => `spring length, ${unit}`,
  turns: 'turns from as found',
  rests: (unit: string) => `then rests at, ${unit}`,
  restsAt: (travel: string, share: string) => `${travel}, ${share}`,
  bounces: 'Hz (without tyre)',
  bouncesAt: (withTyre: string, without: string | null) =>
    without === null ? withTyre : `${withTyre} (${without})`,
} as const;
