import type { ForkForce } from '../../fork/fork.ts';
import type { OpenedWords } from './why.ts';

/** What works in the fork, in sentences; figures arrive formatted. */
export const fork = {
  title: 'both legs together, along the tubes, settled',
  bareGap: (leg: string, gap: string) => `Air gap with neither spring nor spacer in it, ${leg}: ${gap}.`,
  settled:
    'Air, settled (p V = const): heat has had its time, so it holds for sag and for all that is read standing.',
  quick: (exponent: string, load: string, stroke: string) =>
    `Air, quick (p V^${exponent} = const): no heat gets away, so it holds for bumps and for the first moment of braking, about ${load} at rest, ${stroke} into the stroke. What lasts a few seconds lies between the two.`,
  moreOil: (step: string, more: string, whole: string) =>
    `An oil level ${step} higher in both legs adds ${more} at full travel, to ${whole} in all.`,
  locks: (step: string) =>
    `An oil level ${step} higher leaves no air: the oil would lock the legs before they are in.`,
  growth: (leg: string, relaxed: string, pressed: string, preload: string) =>
    `Top-out spring, ${leg}: ${relaxed} short of the hard stop with no spring in the leg, ${pressed} with it; the spring is then pressed by ${preload}.`,
  leg: { left: 'left leg', right: 'right leg', both: 'each leg', single: 'the leg with the spring' },
  noFork: 'The front of this machine is no telescopic fork',
  noAir: 'There is no air in the legs, or no rest for a quick stroke to be about',
  noRest: 'The machine alone has no rest, so nothing tells the ±',
  place: (share: string, stroke: string, about: string) =>
    `both legs together, along the tubes, at ${share} of the stroke (${stroke}), ${about}`,
  alone: 'as found',
  about: (load: string) => `about ${load} at rest, as found`,
} as const;

const gasLaw = 'p V^n = const with absolute pressures (any textbook of physics); checks/fork-air-spring';

/** What each force of the fork is, how it comes about, and whose equation that is. */
export const forkWhy: { readonly [F in ForkForce]: OpenedWords } = {
  springs: {
    title: 'force of the fork springs',
    equation: 'F = Σ k (p + s)',
    where: [
      ['k', "rate of each leg's spring; a table or coils that close up by their own curve"],
      ['p', 'preload at the hard stop'],
      ['s', 'stroke'],
    ],
    source: "Definition of a spring's rate and of preload (docs/conventions.md)",
  },
  air: {
    title: 'force of the air above the oil, settled',
    equation: 'F = Σ A (P0 V0 / (V0 - A s) - Pa);  V0 = B g - Vs + A s max',
    where: [
      ['A, B', 'section that the seal sweeps; bore that the oil stands in'],
      ['g', 'air gap, leg fully in, bare; Vs: what stands in the leg'],
      ['P0, Pa', 'pressure of the air fully out; of the air outside'],
    ],
    source: gasLaw,
  },
  airQuick: {
    title: 'force of the air above the oil in a quick stroke',
    equation: 'F = Σ A (P(s0) (V(s0) / V(s))^1.4 - Pa)',
    where: [
      ['s0', 'stroke of the rest that it is about: there the air has settled'],
      ['V', 'V0 - A s, as for the air settled'],
      ['1.4', 'adiabatic exponent of dry air at 20 °C'],
    ],
    source: `${gasLaw}; exponent from Lange's Handbook of Chemistry, 10th ed., p. 1524, as tables cite it`,
  },
  whole: {
    title: 'force of the fork in all, settled',
    equation: 'F = springs + air + rubber - top-out spring',
    where: [],
    source: 'Sum of the forces along a leg (docs/conventions.md)',
  },
};
