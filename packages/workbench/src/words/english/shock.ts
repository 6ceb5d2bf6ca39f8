import type { ThreadEnd } from '@sagwright/model/limits/threadLeft';

/** The rear shock by itself, in sentences; figures arrive formatted. */
export const shock = {
  title: 'REAR SHOCK',
  titleWords: 'its gas, its length adjuster, its bump rubber',
  gas: (fullyOut: string, fullStroke: string, assumed: boolean) =>
    `Its gas${assumed ? ', as assumed,' : ''} pushes the shaft out with ${fullyOut} fully out, ${fullStroke} at full stroke: it bears so much of the load without any spring.`,
  noGas: 'It holds no gas that pushes its shaft out.',
  turns: (turns: string, length: string) => `${turns} turns, ${length}`,
  /** What ends it, before the words of what is left. */
  ends: {
    range: () => 'the end of its range',
    thread: (diameters: string) => `${diameters} of thread left engaged`,
    mark: (mark: string) => mark,
  } satisfies { readonly [E in ThreadEnd]: (what: string) => string },
  mark: 'its mark or safety ring',
  diameters: (count: string) => (count === '1' ? 'one diameter' : `${count} diameters`),
  longer: (left: string, end: string) => `Length adjuster: ${left} left to make it longer, to ${end}.`,
  beyond: (back: string, end: string) =>
    `Length adjuster: it stands ${back} beyond ${end}. Turn it back so far before the machine is ridden.`,
  longerUnknown:
    'Length adjuster, longer: not checked, figure needed: the thread engaged now and its diameter, measured at the eye, or what the manual says of its range or mark.',
  shorter: (left: string) => `Shorter: ${left} left.`,
  shorterUnknown: 'Shorter: not checked, figure needed: the least that the manual allows.',
  chosen: {
    passed: (way: string, left: string) => `Chosen: ${way}; then ${left} left.`,
    'within its ±': (way: string, left: string) =>
      `Chosen: ${way}; then ${left} left, which is less than its ±. Measure the thread again before.`,
    failed: (way: string, left: string) => `Chosen: ${way}: not to be done, ${left} too far.`,
    'not checked': (way: string) => `Chosen: ${way}; whether the thread allows it is not checked.`,
  },
  chosenLonger: (length: string, turns: string | null) =>
    `${length} longer${turns === null ? '' : `, ${turns} turns out`}`,
  chosenShorter: (length: string, turns: string | null) =>
    `${length} shorter${turns === null ? '' : `, ${turns} turns in`}`,
  /** The pressures of one load; lengths and pressures arrive formatted. */
  pressure: {
    head: {
      fullyOut: 'fully out',
      alone: 'alone',
      laden: 'laden',
      wanted: 'wanted',
      band: 'in the',
      bandBelow: 'wanted band',
    },
    air: 'air',
    reach: 'reach',
    column: (unit: string) => `; air, ${unit}, fully out; edge, past: see below`,
    title: 'AIR OF THE SHOCK',
    instead: (spring: string) => `with ${spring} and the collar where it was found, instead of turning it`,
    planned: 'what sets the rear',
    edge: (short: string) => `only at the end of its range: ${short} past`,
    beyond: (short: string) => `out of its range by ${short}`,
    /** In place of a wanted pressure below that of the air outside. */
    none: 'none',
    loss: (loss: string) =>
      `A gauge takes up to ${loss} of what it shows: the ± holds that. Read once, with the same gauge as it was set by.`,
    /** What speaks for and against a spring beside it, and what would help where none reaches. */
    reaches: (load: string, pressure: string) => `${load}: ${pressure} in its air`,
    atTheEdge: (load: string, pressure: string, end: string, travel: string) =>
      `${load}: only at the edge; it needs ${pressure}, the unit's range ends at ${end}, and there the wheel rests at ${travel}, still in the wanted band`,
    pastMost: (load: string, pressure: string, end: string, short: string) =>
      `${load}: needs ${pressure}, the unit may hold ${end} at most; ${short} short even of the wanted band`,
    pastLeast: (load: string, pressure: string, end: string, short: string) =>
      `${load}: needs only ${pressure}, the unit must hold ${end} at least; ${short} too much even for the wanted band`,
    otherCoil: (range: string) => `another coil beside the air: ${range}, as long as the fitted one`,
    otherPressures: (range: string, spring: string) =>
      `another unit: one that may hold ${range}, with ${spring}`,
    noRemedy: 'no load left at home, other coil or other range of pressure alone would cure it',
    state:
      'Fully out: wheel in the air. Alone: on both wheels, nobody and nothing aboard. Laden: with the load. They are one setting, read in three states.',
  },
  lockNut:
    'Loosen the lock nut before the eye is turned, tighten it after, and see that both eyes stand in line. Torque as the manual says.',
} as const;
