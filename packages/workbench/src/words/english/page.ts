import type { OpenedWords } from './why.ts';

/** Words that only the page has room for: tags, axis ends, short labels beside bars. */
export const page = {
  ofAllowed: (load: string, allowed: string) => `${load} of ${allowed}`,
  offset: (distance: string, behind: boolean) => `${distance} ${behind ? 'behind' : 'ahead'}`,
  offsetInSentence: (distance: string, behind: boolean) => `${distance} ${behind ? 'behind' : 'ahead of'}`,
  /** What a thing does where it lies: "330 mm behind the rear axle: 4.0 kg puts 4.8 kg on the rear wheel and lifts …". */
  effect: (offset: string, mass: string, rear: string, front: string) =>
    `${offset} the rear axle: ${mass} ${rear} and ${front}.`,
  putsOnRear: (mass: string) => `puts ${mass} on the rear wheel`,
  liftsOffRear: (mass: string) => `lifts ${mass} off the rear wheel`,
  putsOnFront: (mass: string, onBoth: boolean) => `${onBoth ? '' : 'puts '}${mass} on the front wheel`,
  liftsOffFront: (mass: string) => `lifts ${mass} off the front wheel`,
  fuel: 'fuel',
  pastBy: (short: string) => `past by ${short}`,
  shortBy: (short: string) => `too tight by ${short}`,
  sag: (standing: string, load: string) => `${load}: ${standing}`,
  turnsOf: (strut: string, turns: string) => `${strut}: ${turns}`,
  plusMinusUnknown: 'not known',
  overALimit: 'over a limit',
} as const;

const balance =
  'Balance of both ends at once, derived in docs/decisions/0004; held against an independent energy minimiser (checks/energy-minimised-machines)';

/** Figures of how a machine stands, opened up, that `why` has no entry for. */
export const standWhy = {
  travel: {
    title: 'wheel travel where it rests, from fully out',
    equation: 'z where V(u, θ, z rear, z front) is least',
    where: [['V', 'energy of gravity, tyres, springs, gas and rubber']],
    source: balance,
  },
  'wheel-load': {
    title: 'load on the wheel, as a scale reads it',
    equation: 'N front L = g Σ m x;  N rear = g Σ m - N front',
    where: [['x, L', 'forward of the rear contact point, and between both, at rest']],
    source: `Moments about the contact points. ${balance}`,
  },
  whole: {
    title: 'everything on both wheels',
    equation: 'm = (N rear + N front) / g',
    where: [['N', 'load on each wheel']],
    source: 'Sum of both scales',
  },
} as const satisfies Readonly<Record<string, OpenedWords>>;

/** Where such a figure is looked at: "rear, "Ash", as found". */
export const standPlace = (end: 'rear' | 'front' | null, load: string | null, setUp: 'asFound' | 'planned') =>
  [end, load ?? 'the machine alone', setUp === 'asFound' ? 'as found' : 'as planned']
    .filter((part) => part !== null)
    .join(', ');
