import type { SteadyNeed } from '../../stance/document.ts';
import type { StanceFigure, StanceNeed } from '../../stance/rows.ts';
import type { OpenedWords } from './why.ts';

/** How a machine stands and steers, in words; figures arrive formatted, names quoted. */
export const stance = {
  /** What a figure is called where its value stands beside it. */
  name: {
    'seat-height': () => 'seat height',
    'peg-height': (point: string) => `height of ${point}`,
    rake: () => 'rake',
    trail: () => 'trail along the ground',
    'normal-trail': () => 'trail square to the steering axis',
    wheelbase: () => 'wheelbase, contact to contact',
    pitch: () => 'pitch, nose down is +',
    lean: (point: string) => `lean to ${point}`,
    'lean-in-bend': (point: string) => `in a bend to ${point}`,
    'stand-lean': (point: string) => `lean on ${point}`,
    'lamp-height': (point: string) => `height of ${point}`,
    'beam-drop': () => 'beam below the lamp, at its distance',
  } satisfies { readonly [F in StanceFigure]: (point: string) => string },
  /** The same without a point, where it is not known. */
  without: {
    'seat-height': 'seat height',
    'peg-height': 'height of the pegs',
    rake: 'rake',
    trail: 'trail along the ground',
    'normal-trail': 'trail square to the steering axis',
    wheelbase: 'wheelbase, contact to contact',
    pitch: 'pitch, nose down is +',
    lean: 'lean until something touches',
    'lean-in-bend': 'lean in a bend until something touches',
    'stand-lean': 'lean on the side stand',
    'lamp-height': 'height of the headlamp',
    'beam-drop': 'beam below the lamp',
  } satisfies { readonly [F in StanceFigure]: string },
  needs: {
    seat: 'figure needed: place of the seat',
    peg: 'figure needed: place of a foot peg',
    'fork offset': 'figure needed: fork offset',
    'hard part': 'figure needed: place of what touches first',
    'side stand': "figure needed: place of the side stand's foot, swung out",
    sideways: 'figure needed: how far it stands from the middle',
    headlamp: "figure needed: place of the headlamp's centre",
    beam: "figure needed: where the beam's edge falls on a wall, as found",
  } satisfies { readonly [N in StanceNeed]: string },
  asFound: 'as found',
  planned: 'planned',
  change: 'change',
  /** What a rider may feel of a change; the usual words, and no more than that. */
  felt: {
    'seat-height': {
      more: 'the ground is further from the feet',
      less: 'the feet come down more easily',
    },
    'peg-height': { more: 'touches later in a bend', less: 'touches sooner in a bend' },
    rake: { more: 'steers slower, runs straighter', less: 'steers quicker, less steady straight on' },
    trail: {
      more: 'heavier to steer, steadier straight on',
      less: 'lighter to steer, may feel nervous',
    },
    'normal-trail': { more: 'more weight in the bars', less: 'less weight in the bars' },
    wheelbase: { more: 'turns a little slower', less: 'turns a little quicker' },
    pitch: { more: 'nose lower, weight on the hands', less: 'nose higher, front feels lighter' },
    lean: { more: 'touches later in a bend', less: 'touches sooner in a bend' },
    'lean-in-bend': { more: 'touches later in a bend', less: 'touches sooner in a bend' },
    'stand-lean': {
      more: 'leans further on its stand: heavier to pick up',
      less: 'stands more upright: tips more easily, look at soft ground and slopes',
    },
    'lamp-height': { more: 'lamp higher', less: 'lamp lower' },
    'beam-drop': {
      more: 'lights less far: aim the lamp again',
      less: 'dazzles sooner: aim the lamp again',
    },
  } satisfies { readonly [F in StanceFigure]: { readonly more: string; readonly less: string } },
  noSuch: 'no such point in this job',
  never: 'not to be had here; the machine does not rest so, or it never touches',
  changeOf: (name: string) => `change of ${name}, planned less as found; what both share cancels`,
  against: 'planned against as found',
  feltNote: 'What a rider may feel is common practice, no source; within its ± nothing is said.',
  tyres: (
    end: 'rear' | 'front',
    was: string,
    wasRadius: string,
    now: string,
    nowRadius: string,
    by: string,
    isLarger: boolean,
  ) =>
    `${end === 'rear' ? 'Rear' : 'Front'} tyre: ${was} is ${wasRadius} from axle to crown, ${now} ${nowRadius}: ${by} ${isLarger ? 'more' : 'less'}. Clearance, load index, rim width and speedometer are not checked here.`,
  feltFrom: (felt: string, from: string) => `${felt} (${from})`,
  feltBy: 'What a rider may feel (common practice, no source; within its ± nothing is said):',
  thinTyres:
    'Lean: tyres taken as thin as blades, since no size says how round they are; parts touch later than told.',
  leanIs:
    'Lean: at a stand as pressed there; in a steady bend pressed as the bend does. Bumps, a turned bar and a rider hanging off are not in it.',
  standIs: 'Lean on the stand: level hard ground; what the stand bears itself is left out.',
  beam: {
    range: (least: string, most: string) => `${least} to ${most}`,
    against: (range: string, distance: string, drop: string) =>
      `Beam: ${drop} below the lamp's centre at ${distance}; the rule asks ${range}`,
    verdict: {
      within: 'within it',
      'too high': 'too high',
      'too low': 'too low',
      'within its ±': 'too near its edge to tell',
      'not checked': "not checked: figure needed, place of the headlamp's centre",
    },
    rule: (name: string, where: string, source: string) =>
      `Information only: ${name}, ${where}; from ${source}. The rules of the place where it is ridden hold.`,
    noRule: (drop: string, distance: string) =>
      `Beam: ${drop} below the lamp's centre at ${distance}; not held against a rule: figure needed, place of the headlamp's centre`,
  },
  keep: {
    title: 'KEEP THE ATTITUDE',
    note: 'by one change, then by two, each with the true balance',
    both: (first: string, second: string) => `${first} and ${second}`,
    together: (one: string, other: string) => `${one} and ${other}`,
    noTwo: 'no length and clamp height together do it, 80 mm either way',
    part: { rake: 'rake', groundTrail: 'trail', seatHeight: 'seat height' },
    by: {
      'shock length': {
        longer: (by: string) => `rear shocks ${by} longer`,
        shorter: (by: string) => `rear shocks ${by} shorter`,
      },
      'clamp height': {
        longer: (by: string) => `fork tubes ${by} up in their clamps`,
        shorter: (by: string) => `fork tubes ${by} down in their clamps`,
      },
    },
    like: (part: string, load: string) => `${part} as with ${load} as found`,
    verdict: {
      within: 'within its adjuster',
      outside: 'beyond its adjuster',
      'within its ±': 'at the end of its adjuster, too near to tell',
      'not checked': {
        'shock length': 'not checked: figure needed, how far the length adjuster goes',
        'clamp height': 'not checked: figure needed, how far the tubes may go in their clamps',
      },
      'no change does': {
        'shock length': 'no length does it, 80 mm either way',
        'clamp height': 'no clamp height does it, 80 mm either way',
      },
      'not known': 'not known',
    },
    small: 'less than can be set: leave it',
    look: 'After any change of height: side stand, belt or chain slack, headlamp, tyre to guard, hoses at full lock (common practice, no source). Both fork legs alike.',
  },
  steady: {
    title: 'BRAKED AND DRIVEN',
    note: 'held steadily on level ground, no wind',
    kind: {
      braking: (gain: string, share: string) => `braked at ${gain}, ${share} in front`,
      driving: (gain: string) => `driven at ${gain}`,
    },
    needs: {
      deceleration: 'figure needed: a deceleration and how much of it the front brake does',
      thrust: 'figure needed: an acceleration or a thrust',
      drive: 'figure needed: how the rear wheel is driven',
      pivot: 'figure needed: place of the swingarm pivot',
    } satisfies { readonly [N in SteadyNeed]: string },
    notFound: 'no steady stand was found so',
    lifts: {
      rear: 'the rear wheel comes off the ground: no stand to tell',
      front: 'the front wheel comes off the ground: no stand to tell',
    },
    end: (end: 'rear' | 'front', change: string, left: string, load: string) =>
      `${end} ${change}, ${left} left to metal, ${load} on the wheel`,
    goes: { in: (by: string) => `goes in by ${by}`, out: (by: string) => `comes out by ${by}` },
    grip: (end: 'rear' | 'front', share: string) => `${end} tyre holds ${share} of its load`,
    slides: 'more than dry roads usually give (common practice, no source): it would slide first',
    liftsFrom: (wheel: 'rear' | 'front', gain: string) =>
      `the ${wheel} wheel lifts from ${gain} on, grip permitting`,
    staysDown: (wheel: 'rear' | 'front', gain: string) => `the ${wheel} wheel stays down up to ${gain}`,
    noFork: 'The front is no telescopic fork: what its own arms do to it under the brake is not in it.',
    armUnknown: 'The rear brake is taken to push along the ground only: the swingarm pivot is not known.',
  },
} as const;

const geometry = 'Plane geometry of the machine at rest';

/** What a figure is, how it comes about, and whose equation that is; those that `why` has already are left out. */
export const stanceWhy: {
  readonly [F in Exclude<
    StanceFigure,
    'seat-height' | 'rake' | 'trail' | 'wheelbase' | 'pitch'
  >]: OpenedWords;
} = {
  'normal-trail': {
    title: 'trail square to the steering axis',
    equation: 'normal trail = R sin(ε - θ) - d',
    where: [
      ['R', 'height of the front axle at rest'],
      ['d', 'fork offset'],
    ],
    source:
      'Meijaard, Papadopoulos, Ruina, Schwab, Proc. R. Soc. A 463 (2007), in its form R sin ε - trail cos ε = d',
  },
  'peg-height': {
    title: 'height of a point above the ground',
    equation: 'u - X sin θ + Z cos θ',
    where: [['X, Z', 'place of the point, body level']],
    source: geometry,
  },
  'lamp-height': {
    title: 'height of the lamp above the ground',
    equation: 'u - X sin θ + Z cos θ',
    where: [['X, Z', "place of the lamp's centre, body level"]],
    source: geometry,
  },
  lean: {
    title: 'lean at which a part touches, as the machine stands',
    equation: 'φ = atan2(h - ρ, y) + asin(ρ / √((h - ρ)² + y²))',
    where: [
      ['h, y', 'height of the part with the machine upright, and its distance from the middle'],
      ['ρ', "round of the tyres' crowns"],
    ],
    source: geometry,
  },
  'lean-in-bend': {
    title: 'lean at which a part touches in a steady bend',
    equation: 'φ = touch(rest under 1 / cos φ times the weight)',
    where: [['touch', 'as for lean, at the rest that the bend makes']],
    source: 'Moments in the leaning plane, load g / cos φ (any textbook of vehicle dynamics). Plane geometry',
  },
  'stand-lean': {
    title: 'lean on the side stand',
    equation: 'φ = atan2(h - ρ, y) + asin(ρ / √((h - ρ)² + y²))',
    where: [
      ['h, y', "height of the stand's foot with the machine upright, and its distance from the middle"],
      ['ρ', "round of the tyres' crowns"],
    ],
    source: geometry,
  },
  'beam-drop': {
    title: "how far below the lamp's centre the beam's edge falls, at the distance where it was read",
    equation: 'drop = D tan(atan(drop read / D) + θ - θ read)',
    where: [
      ['D', 'distance'],
      ['θ, θ read', 'pitch now, and as it was read'],
    ],
    source: geometry,
  },
};
