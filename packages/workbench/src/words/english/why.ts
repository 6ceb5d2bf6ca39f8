import type { UsedFigure } from '../../inputs/take.ts';
import type { FigureName } from '../../why/figures.ts';

export interface OpenedWords {
  readonly title: string;
  readonly equation: string;
  /** Each symbol that the equation does not name in full. */
  readonly where: readonly (readonly [symbol: string, meaning: string])[];
  readonly source: string;
}

const balance =
  'Balance of both ends at once, derived in docs/decisions/0004; held against an independent energy minimiser (checks/energy-minimised-machines)';
const virtualWork = 'Virtual work at the wheel, F_w dz = F ds (any textbook of mechanics)';
const geometry = 'Plane geometry of the machine at rest';
const travelSource =
  'Travel as it was told: one ratio, a curve through rows or points, or hard points by exact loop closure (docs/decisions/0009, checks/energy-minimised-machines)';
const squatSource =
  'V. Cossalter, Motorcycle Dynamics, 2nd ed., squat ratio (from memory); level ground, steady thrust, no drag; checks/squat-ratio';

/** What a figure is, how it comes about, and whose equation that is. */
export const why: { readonly [F in FigureName]: OpenedWords } = {
  collar: {
    title: 'where the adjuster meets the wanted sag',
    equation: 'reading = r0 ± (x(F) - s - p0)',
    where: [
      ['F', 'what each spring must bear: ((N - m g) c / MR - gas - rubber + top-out) / n'],
      ['x(F)', 'how far that compresses the spring'],
      ['s', 'stroke of the shock or fork at the wanted sag'],
      ['p0, r0', 'preload and reading at the loosest end; ± as the reading grows or shrinks'],
    ],
    source: `${virtualWork}. ${balance}`,
  },
  preload: {
    title: 'preload that meets the wanted sag',
    equation: 'p = x(F) - s',
    where: [
      ['F', 'what each spring must bear: ((N - m g) c / MR - gas - rubber + top-out) / n'],
      ['x(F)', 'how far that compresses the spring'],
      ['s', 'stroke of the shock or fork at the wanted sag'],
    ],
    source: `${virtualWork}. ${balance}`,
  },
  'spring-length': {
    title: 'installed length of the spring, fully out, at the planned setting',
    equation: 'length = free length - (p0 + a)',
    where: [
      ['p0', 'preload with the adjuster at its loosest end'],
      ['a', 'how far the adjuster squeezes the spring from there'],
    ],
    source: 'Definition of preload (docs/conventions.md)',
  },
  sag: {
    title: 'sag with the load, at the planned setting, along the wheel',
    equation: 'sag = z - z hanging;  z where V(u, θ, z rear, z front) is least',
    where: [['V', 'energy of gravity, tyres, springs, gas and rubber']],
    source: balance,
  },
  'free-sag': {
    title: 'sag of the machine alone, at the planned setting, along the wheel',
    equation: 'sag = z - z hanging;  z where V(u, θ, z rear, z front) is least',
    where: [['V', 'energy of gravity, tyres, springs, gas and rubber']],
    source: balance,
  },
  'travel-left': {
    title: 'wheel travel left to metal',
    equation: 'left = z max - z',
    where: [['z max', 'wheel travel at the full stroke of the damper']],
    source: balance,
  },
  'rubber-left': {
    title: 'wheel travel left to the bump rubber',
    equation: 'left = z rubber - z',
    where: [['z rubber', 'wheel travel at the stroke where the rubber begins']],
    source: balance,
  },
  'rubber-force': {
    title: 'force of each bump rubber at full bump',
    equation: 'F = F(d);  d = stroke - start',
    where: [
      ['F(d)', 'as pressed on a tester, straight between the rows; by two figures: k1 d + k3 d³'],
      ['start', 'stroke at which the rubber is met'],
    ],
    source: "Common practice, no source; a rubber's own damping and set are left out",
  },
  'coil-bind': {
    title: 'spring stroke left before its coils touch at full bump',
    equation: 'room = free length - solid length - (stroke + p)',
    where: [['p', 'preload at the planned setting']],
    source: 'Lengths of the fitted spring (docs/conventions.md)',
  },
  'wheel-rate': {
    title: 'wheel rate, springs, gas and rubber together',
    equation: 'k w = Σ (k MR² + F MR′)',
    where: [
      ['k', 'rate of each strut there: spring, gas, rubber, top-out'],
      ['MR, MR′', 'motion ratio ds/dz, and how it changes with travel'],
      ['F', 'force of each strut'],
    ],
    source: `${virtualWork}, differentiated once more`,
  },
  'motion-ratio': {
    title: 'motion ratio: stroke of the shock or fork for each mm of wheel, where it rests',
    equation: 'MR = ds/dz',
    where: [['s, z', 'stroke of the strut, travel of the wheel, both from fully out']],
    source: travelSource,
  },
  leverage: {
    title: 'leverage ratio: mm of wheel for each mm of the shock or fork, where it rests',
    equation: 'leverage = 1 / MR = dz/ds',
    where: [['s, z', 'stroke of the strut, travel of the wheel, both from fully out']],
    source: travelSource,
  },
  'arm-angle': {
    title: 'how steeply the swingarm falls from its pivot to the axle, against the body',
    equation: 'angle = atan((Z pivot - Z axle) / (X pivot - X axle))',
    where: [['X, Z', 'places in the body, at the travel where it rests']],
    source: geometry,
  },
  'squat-angle': {
    title: 'squat line of the driven rear wheel, against the ground, where it rests',
    equation: 'tan σ = height of A / distance of A, from the contact point',
    where: [['A', 'where the upper run and the line from axle to pivot meet; with a shaft, the pivot']],
    source: squatSource,
  },
  'squat-ratio': {
    title: 'squat ratio: above 100 % thrust presses the rear down, below 100 % it lifts it',
    equation: 'ratio = tan τ / tan σ;  tan τ = h / p',
    where: [
      ['σ', 'squat line, as for squat-angle'],
      ['h, p', "height of the whole machine's mass centre, wheelbase at rest"],
    ],
    source: squatSource,
  },
  'ride-frequency': {
    title: 'ride frequency of this end, with the tyre',
    equation: 'f = √(k r / m) / 2π;  k r = k w k t / (k w + k t);  m = N / g - m u',
    where: [
      ['k w, k t', 'wheel rate, tyre rate'],
      ['N, m u', 'load on the wheel, mass that moves with it'],
    ],
    source: 'One mass on a spring (any textbook of vibrations)',
  },
  pitch: {
    title: 'pitch of the body, nose-down positive',
    equation: 'θ where V(u, θ, z rear, z front) is least',
    where: [['V', 'energy of gravity, tyres, springs, gas and rubber']],
    source: balance,
  },
  rake: {
    title: 'rake at rest, from the vertical',
    equation: 'rake = ε - θ',
    where: [['ε', 'rake with the body level']],
    source: geometry,
  },
  trail: {
    title: 'trail along the ground',
    equation: 'trail = (R sin(ε - θ) - d) / cos(ε - θ)',
    where: [
      ['R', 'height of the front axle at rest'],
      ['d', 'fork offset'],
    ],
    source:
      'Meijaard, Papadopoulos, Ruina, Schwab, Proc. R. Soc. A 463 (2007), in its form R sin ε - trail cos ε = d',
  },
  wheelbase: {
    title: 'wheelbase at rest, between the contact points',
    equation: 'x front axle - x rear axle, along the ground',
    where: [],
    source: geometry,
  },
  'seat-height': {
    title: 'height of the seat above the ground',
    equation: 'u - X sin θ + Z cos θ',
    where: [['X, Z', 'place of the seat, body level']],
    source: geometry,
  },
  'axle-load': {
    title: 'load on the wheel as a scale reads it, as found, tank full',
    equation: 'N front L = g Σ m x;  N rear = g Σ m - N front',
    where: [['x, L', 'forward of the rear contact point, and between both, at rest']],
    source: `Moments about the contact points. ${balance}`,
  },
  pressure: {
    title: 'pressure that meets the wanted sag, shock fully out',
    equation: 'P = ((F - F coil) / A + P atm) (V - A s) / V - P atm',
    where: [
      ['F', 'what coil and air of each shock must bear: ((N - m g) c / MR - gas - rubber + top-out) / n'],
      ['F coil', 'what the coil bears there, at the preload that it has'],
      ['A, V', 'area that the air pushes on, its volume fully out'],
      ['s', 'stroke of the shock at the wanted sag'],
    ],
    source: `p V = const, the air at rest and as warm as when it was read. ${virtualWork}. ${balance}`,
  },
  'longer-left': {
    title: 'how much longer the shock can still be made',
    equation: 'left = least of: most - now;  engaged - diameters × diameter;  to the mark',
    where: [
      ['now, most', 'where its length adjuster stands, and the longest of its range'],
      ['engaged', 'thread that is screwed in now'],
      ['diameters', 'of the thread that must stay in: one where nobody said'],
    ],
    source:
      "Common practice, no source: one diameter of thread engaged, steel in steel; the maker's own mark goes before it",
  },
  'shorter-left': {
    title: 'how much shorter the shock can still be made',
    equation: 'left = now - least',
    where: [['now, least', 'where its length adjuster stands, and the shortest of its range']],
    source: 'Range as the manual or a tape has it',
  },
  'spring-rate': {
    title: 'rate of one spring, where the load ridden most presses it',
    equation: 'k = G d⁴ / (8 D³ n)',
    where: [
      ['G', 'shear modulus of the wire; tables disagree, and the ± holds that'],
      ['d, D', 'wire, mean diameter of the coils'],
      ['n', 'coils that give; of several pitches, those not closed yet'],
      ['k', 'taken as it stands where it is marked; of a tested table, the slope of its rows'],
    ],
    source:
      "Shigley's Mechanical Engineering Design, 10th ed., eq. 10-9, also EN 13906-1 (from memory); checks/shigley-helical-springs; coils that close, derived as springs in series",
  },
  'kg-per-turn': {
    title: 'kilograms on the wheel that one turn of every adjuster answers',
    equation: 'n k MR lead / g',
    where: [
      ['n, k', 'springs of this end, rate of each at the load ridden most'],
      ['MR', 'motion ratio there'],
    ],
    source: virtualWork,
  },
};

/** Why a figure cannot be opened. */
export const notToBeHad = {
  'no loads': () => 'the job lists no load',
  'no springs': () => 'the job lists no spring of this end',
  'no such load': (found: string) => `no load ${found}`,
  'no such spring': (found: string) => `no spring ${found} of this end`,
  'not planned': () => 'nothing is planned for this spring with this load',
  'no rest': () => 'the machine finds no rest there',
  'nothing swings': () => 'the wheel stands on a stop there, or its springs do not bring it back',
  'nothing to set': () => 'nothing can be set at this end',
  'nothing is turned': () => 'nothing is turned at this end',
  'no coil': () => 'there is no coil: air bears the load alone',
  'lengths not known': () => 'figure needed: free and solid length of the spring',
  'fork offset not known': () => 'figure needed: fork offset',
  'seat not known': () => 'figure needed: place of the seat',
  'rubber not known': () => 'figure needed: where the bump rubber begins',
  'no air': () => 'the shock has no air that is set',
  'no length adjuster': () => 'the job knows of no length adjuster',
  'length not checked': () => 'figure needed: range, thread or mark of the length adjuster',
  'rear only': () => 'it is a figure of the rear',
  'pivot not known': () => 'figure needed: place of the swingarm pivot',
  'drive not known': () => 'figure needed: how the rear wheel is driven',
  'arm upright': () => 'the swingarm stands nearly upright there',
  'squat line level': () => 'the squat line is level there, and thrust does not lift it at all',
} as const;

export const whyNot = (figure: string, because: string) => `${figure}: not to be had; ${because}.`;

/** Where a figure is looked at: "rear, "Ash", "to work"". */
export const whyPlace = (end: 'rear' | 'front', spring: string | null, load: string | null) =>
  [end, spring, load].filter((part) => part !== null).join(', ');

/** Where an input comes from. */
export const origins: { readonly [O in UsedFigure['origin']]: string } = {
  plate: 'plate',
  manual: 'manual',
  'own scale': 'own scale',
  'own tape': 'own tape',
  'own log': 'own log',
  marked: 'marked',
  catalogue: 'catalogue',
  told: 'told',
  memory: 'memory',
  usual: 'usual figure',
  assumed: 'assumed',
  'not said': 'not said',
};
