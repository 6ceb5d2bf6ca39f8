import { capital } from '../capital.ts';

/** What was left out of the sum, and cautions: one function for each code, the part of the machine first where it is one. */
export const notes = {
  'rubber not known': (end: 'rear' | 'front') =>
    `${capital(end)} bump rubber: not known, left out of the sum.`,
  'rubber carried on': (end: 'rear' | 'front') =>
    `${capital(end)} bump rubber: full bump presses it past its last row; its last slope is taken to hold there.`,
  'top-out not known': (end: 'rear' | 'front') =>
    `${capital(end)} top-out spring: not known, left out; sag counts from the hard stop.`,
  'axle path straight': () => 'Swingarm pivot: not known; the rear axle is taken to move straight up.',
  'front path straight': () =>
    'The front is no telescopic fork: its axle is taken to move straight along the body, and no anti-dive is told.',
  'travel carried on': () =>
    'Rear travel: the table does not reach from fully out to full bump; beyond its rows the ratio at its end is taken to hold.',
  'taped point left out': (wheel: string, off: string) =>
    `Taped point at wheel ${wheel}: left out, it lies ${off} off the curve through the others. Read it again.`,
  'points beyond shock': () =>
    'Hard points: where they were read the eyes stand where the shock does not reach. With the shock off that may be so; else read them again.',
  'sideways not known': () =>
    'Hard points: whether the shock leans sideways is not known; it is taken to stand in the plane of the wheel.',
  'places only looked for': () =>
    'Hard points by tape: places without a ± only tell where each part was looked for, to tell it from its mirrored place; the lengths say where it is.',
  'place found elsewhere': (part: string, away: string) =>
    `Hard points by tape: the ${part} was found ${away} from where it was looked for. If that is its mirrored place, mend where it is looked for.`,
  'drive without pivot': () =>
    'Final drive: no squat and no tightest point without the place of the swingarm pivot.',
  'one diameter for bore and seal': () =>
    'Fork air: one diameter stands for bore and seal; near full travel its force can be 20 % off.',
  'spring volume not known': () =>
    'Fork air: what the spring displaces is not known; without it the air counts as more than it is, and softer.',
  'stack read relaxed': () =>
    'Fork stack: read in a leg at rest, whose top-out spring is not known; so far as it has one, the spring is pressed less than told.',
  'bushes and pivot friction zero': () => 'Rubber bushes and pivot friction are taken as nothing.',
  'target set shipped': (name: string, origin: string) =>
    `No target set in the job: ${name} stands in (${origin}).`,
  'no target': (load: string, end: 'rear' | 'front') => `No sag is wanted at the ${end} with ${load}.`,
  'fuel not known': () =>
    'Tank: not known; every load carries the fuel of the weighing, and limits are not held against a full tank.',
  'riding height control': {
    'self-levelling': () =>
      "Self-levelling: this holds only for the state in which it was weighed; the maker's procedure comes first.",
    electronic: () =>
      "Electronic dampers: springs are planned, damping is not; the dealer's procedure holds for the rest.",
  },
  'sides differ': (end: 'rear' | 'front', found: string) =>
    `Left and right ${end} were found to differ (${found}). The sum takes both; the plan sets both alike.`,
  'locked as measured': {
    plain: () =>
      'Mass centre height: by the raised wheel, its suspension taken to be locked where the machine was measured, tyres hard.',
    told: (height: string, mass: string, by: string) =>
      `Mass centre height: ${height}, by the raised wheel; ${mass} on that scale moves it by ${by}. Its suspension is taken to be locked where the machine was measured, tyres hard.`,
  },
  'position not known': (end: 'rear' | 'front') =>
    `Where the ${end} adjuster stood was not read: turns from as found cannot be told.`,
  'places not checked': (load: string) =>
    `What lies at which place with ${load} is not known, since it was weighed aboard: the places' own limits are not checked.`,
} as const;

/** The standing caution, under every plan. */
export const caution =
  'The service manual, local rules and a qualified technician come first. Work with the wheel in the air, the shock fully out and the machine held: springs and gas hold energy.';
