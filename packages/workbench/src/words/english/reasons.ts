import type { EndStanding } from '@sagwright/model/statics/rest';

/** What speaks for and against a spring. Figures arrive formatted, names quoted; `adjuster` is "collar", "cam", … */
export const reasons = {
  fitted: () => 'on the machine now',
  reaches: (load: string, setting: string, left: string) => `${load}: ${setting}, ${left} left to tighten`,
  reachesLast: (load: string, setting: string) => `${load}: ${setting}, the tightest there is`,
  reachesAsItIs: (load: string, travel: string, band: string) =>
    `${load}: the wheel rests at ${travel}, wanted ${band}`,
  reachesAll: (count: number, left: string, load: string) =>
    `reaches ${count === 1 ? 'its load' : count === 2 ? 'both loads' : `all ${count} loads`}; least left to tighten ${left}, with ${load}`,
  reachesSome: (loads: string) => `reaches ${loads}`,
  edgeTightest: (load: string, preload: string, adjuster: string, end: string, travel: string) =>
    `${load}: only at the edge; it needs ${preload} of preload, the ${adjuster} ends at ${end}, and there the wheel rests at ${travel}, still in the wanted band`,
  edgeLoosest: (load: string, preload: string, adjuster: string, end: string, travel: string) =>
    `${load}: only at the edge; it needs ${preload} of preload, the ${adjuster} begins at ${end}, and there the wheel rests at ${travel}, still in the wanted band`,
  pastTightest: (load: string, preload: string, adjuster: string, end: string, short: string) =>
    `${load}: needs ${preload} of preload, the ${adjuster} ends at ${end}; ${short} short even of the wanted band`,
  pastLoosest: (load: string, preload: string, adjuster: string, end: string, short: string) =>
    `${load}: needs only ${preload} of preload, the ${adjuster} begins at ${end}; ${short} too much even for the wanted band`,
  /** Several loads that fail alike; the one that fails most is told with its distance. */
  edgeTightestTogether: (loads: string, worst: string, short: string) =>
    `only at the tightest edge with ${loads}; ${worst} wants ${short} more`,
  edgeLoosestTogether: (loads: string, worst: string, short: string) =>
    `only at the loosest edge with ${loads}; ${worst} wants ${short} less`,
  pastTightestTogether: (loads: string, worst: string, short: string) =>
    `past the tightest end with ${loads}; ${worst} by ${short}`,
  pastLoosestTogether: (loads: string, worst: string, short: string) =>
    `past the loosest end with ${loads}; ${worst} by ${short}`,
  stepTooTight: (load: string, miss: string) =>
    `${load}: no step lies in the wanted band; the nearest is ${miss} of preload too tight`,
  stepTooLoose: (load: string, miss: string) =>
    `${load}: no step lies in the wanted band; the nearest is ${miss} of preload too loose`,
  noSpringWanted: (load: string, wanted: string) =>
    `${load}: gas and rubber alone hold the wheel higher than the ${wanted} wanted`,
  noAdjuster: (load: string, travel: string, band: string) =>
    `${load}: the wheel rests at ${travel}, wanted ${band}, and nothing can be set`,
  targetOutsideTravel: (load: string, wanted: string, most: string) =>
    `${load}: the ${wanted} wanted lie outside the travel of ${most}`,
  noRest: (load: string, residual: string) =>
    `${load}: no rest was found with this end where it is wanted; ${residual} were left over`,
  restsElsewhere: (load: string, travel: string, band: string) =>
    `${load}: set there the wheel comes to rest at ${travel}, wanted ${band}; this spring does not hold it where it is wanted`,
  clearOfCoilBind: (room: string) => `${room} of spring stroke left before the coils touch at full bump`,
  coilBind: (missing: string) => `its coils touch ${missing} before full bump on the tightest setting`,
  nearCoilBind: (room: string, keep: string) =>
    `only ${room} left before its coils touch at full bump; ${keep} must be left`,
  coilBindNotChecked: (needed: string) => `coil bind, figure needed: ${needed}`,
  keepsPreload: (left: string) => `${left} of preload left at full extension`,
  looseAtExtension: (gap: string) => `loose by ${gap} at full extension`,
  littlePreload: (left: string, keep: string) =>
    `only ${left} of preload left at full extension; ${keep} must be left`,
  aloneToppedOut: (loads: string) => `set for ${loads}, the machine alone stands fully out`,
  restsOnRubber: (load: string, travel: string) =>
    `${load}: rests on the bump rubber, at ${travel} of wheel travel`,
  restsOnMetal: (load: string, travel: string) =>
    `${load}: rests metal to metal, at ${travel} of wheel travel`,
  rubberNotChecked: (end: 'rear' | 'front') =>
    `travel left to the rubber, figure needed: where the ${end} bump rubber begins`,
  /** Added where the miss, or what is left, is less than its ±. */
  lessThanItsDoubt: (reason: string, plusMinus: string) => `${reason} (less than its ± of ${plusMinus})`,
} as const;

/** Where an end stands, short. */
export const standings = {
  free: 'free',
  'topped out': 'fully out',
  'on top-out spring': 'on the top-out spring',
  'on rubber': 'on the rubber',
  bottomed: 'metal to metal',
} as const satisfies { readonly [S in EndStanding]: string };

/** How an adjuster reaches what is wanted, short. */
export const reaches = {
  reached: () => 'in reach',
  'at the edge': () => 'only at the edge',
  'out of reach': (short: string) => `past its end by ${short}`,
  'between steps': () => 'between two steps',
  'no spring wanted': () => 'no spring wanted',
  'no adjuster': () => 'nothing to set',
} as const;

/** The same in a column of a wide table, whose heading tells what they mean. */
export const reachesShort = {
  reached: () => 'ok',
  'at the edge': () => 'edge',
  'out of reach': (short: string) => `past ${short}`,
  'between steps': () => 'between',
  'no spring wanted': () => 'none',
  'no adjuster': () => 'fixed',
} as const;

/** Why a cell of the plan is empty, short. */
export const emptyCells = {
  refused: 'over a limit: not planned',
  'not wanted': 'no sag wanted here',
  'target outside travel': 'wanted sag outside the travel',
  'no rest': 'no rest found',
} as const;

/** The same in a column. */
export const emptyCellsShort = {
  refused: 'over a limit',
  'not wanted': 'not wanted',
  'target outside travel': 'no travel',
  'no rest': 'no rest',
} as const;

/** The verdict on one spring. */
export const verdicts = {
  fits: () => 'fits',
  'fits, with less left than its ±': () => 'fits, but with less left than its ±',
  'misses by less than its ±': () => 'does not fit, but misses by less than its ±',
  'does not fit': () => 'does not fit',
  'nothing asked of it': () => 'nothing is asked of it',
} as const;
