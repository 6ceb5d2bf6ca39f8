import type { Bound } from '../schema/bounds.ts';
import { type Dimension, dimensionOf, type Unit } from '../units.ts';
import { anyOf, dimensionInWords, quoted } from './found.ts';
import { otherUnit, rangeInWords, widestInWords } from './range.ts';

/**
 * Every sentence that a problem may say, by its code. The place goes before it and is not part of it. What arrives as
 * text (`found`, a quantity as typed) is already worded.
 */
export const sentences = {
  // The file
  fileTooLong: (characters: number, most: number) =>
    `found ${Math.ceil(characters / 1e5) / 10} million characters; a file of ours has ${most / 1e6} million at most. It was not read.`,
  notJson: (line: number, column: number, found: string, needed: string) =>
    `no JSON from line ${line}, column ${column} on: found ${found} where ${needed} is needed. Take an unharmed copy, or mend that place in a text editor.`,
  nameTwice: (name: string, line: number) =>
    `${quoted(name)} is there twice, the second time in line ${line}; one of the two would be lost. Rename or remove one.`,
  tooDeep: (most: number) =>
    `fields within fields more than ${most} deep; no file of ours is. This is some other file.`,
  forbiddenName: (name: string) => `${quoted(name)} cannot be the name of anything here. Rename it.`,
  notAJob: (found: string) =>
    `found ${found}; a job begins with "format": "sagwright-job". This is some other file; nothing was changed.`,
  notATemplate: (found: string) =>
    `found ${found}; a template begins with "format": "sagwright-template". This is some other file; nothing was changed.`,
  newerVersion: (found: number, reads: number) =>
    `made by a newer Sagwright (version ${found}); this one reads ${reads}; nothing was changed. Open it with the newer one.`,
  wrongVersion: (found: string, reads: number) =>
    `found ${found}; this Sagwright reads version ${reads}. Was the file changed by hand?`,
  moreProblems: (count: number) => `${count} more problems are not listed. Mend these first.`,

  // The shape
  missing: (needed: string) => `missing; ${needed} is needed. Add it.`,
  wrongKind: (found: string, needed: string) => `found ${found}; ${needed} is needed.`,
  notFinite: () => 'found a number too large to be held. Correct it.',
  unknownField: (meant: string | undefined) =>
    `no such field${meant ? `; did you mean ${quoted(meant)}?` : '. Remove it, or see docs/job-file.md for the field that is meant.'}`,
  wrongWord: (found: string, allowed: readonly string[], meant: string | undefined) =>
    `found ${found}; allowed: ${anyOf(allowed)}.${meant ? ` Did you mean ${meant}?` : ''}`,
  wrongUnit: (found: string, dimension: Dimension, allowed: readonly string[], meant: string | undefined) => {
    const other = dimensionOf(found);
    const what = other && other !== dimension ? `, the unit of ${dimensionInWords[other]}` : '';
    const hint = meant ? ` Did you mean ${meant}?` : '';
    return `found ${quoted(found)}${what}; for ${dimensionInWords[dimension]} it is ${anyOf(allowed)}.${hint}`;
  },
  outOfBounds: (value: number, unit: Unit, bound: Bound) => {
    const other = otherUnit(value, unit, bound);
    const hint = other ? `Was it ${value} ${other}?` : 'Correct the figure or its unit.';
    return `found ${value} ${unit}; allowed: ${rangeInWords(bound, unit)}. ${hint}`;
  },
  plusMinusOutOfBounds: (value: number, unit: Unit, bound: Bound) =>
    `found ± ${value} ${unit}; allowed: 0 to ${widestInWords(bound, unit)}. Correct it, or leave it out where it is unknown.`,
  tooSmall: (found: string, least: number) => `found ${found}; at least ${least}.`,
  tooLarge: (found: string, most: number) => `found ${found}; at most ${most}.`,
  badId: () =>
    'cannot be an id; an id is 1 to 64 small letters, digits and hyphens, and begins with a letter or digit. Rename it.',
  /** `found` is null where it has nothing of any choice. */
  noneFits: (found: string | null, choices: readonly string[]) =>
    `${found === null ? 'nothing of it is there yet' : `found ${found}`}; just one is needed of: ${choices.join('; ')}.`,

  // One part against another
  notBelow: (found: string, what: string, limit: string) =>
    `found ${found}; it must be less than ${what}, ${limit}. One of the two is wrong.`,
  notAtMost: (found: string, what: string, limit: string) =>
    `found ${found}; it may not be more than ${what}, ${limit}. One of the two is wrong.`,
  notRising: (found: string, before: string) =>
    `found ${found} after ${before}; each must be larger than the one before. Correct it, or put the rows in order.`,
  notFalling: (found: string, before: string) =>
    `found ${found} after ${before}; as the wheel goes up the shock must get shorter. Correct it, or put the rows in order.`,
  notFromZero: (found: string) => `found ${found}; the first one must be 0.`,
  outsideEnds: (found: string, end: string, otherEnd: string) =>
    `found ${found}; allowed: ${end} to ${otherEnd}. Read it again, or correct the ends.`,
  noRange: (found: string) => `found ${found} at both ends; they must differ, or there is nothing to set.`,
  noSuch: (what: string, id: string, ids: readonly string[], meant: string | undefined) => {
    const there = ids.length === 0 ? 'there is none yet' : `there is ${anyOf(ids.slice(0, 8).map(quoted))}`;
    const hint = meant === undefined ? 'Add it, or pick another.' : `Did you mean ${quoted(meant)}?`;
    return `found ${quoted(id)}, but no such ${what}; ${there}${ids.length > 8 ? ' and others' : ''}. ${hint}`;
  },

  noForkHere: () =>
    'the front is no telescopic fork, so that there is no fork to keep or to change. Keep the whole machine.',
  nothingToKeep: () => 'missing; nothing is told of the fork yet. Tell of it first.',
  onlyOfFork: () =>
    'only a telescopic fork has it, and how this front moves is told by its travel. Remove one of the two.',
  forcesAlready: () =>
    'the forces at the wheel tell of all springs already, and nothing of them is set. Remove it, or tell the travel by a ratio.',
  spacerTwice: () =>
    'the spacer is what sets the preload, and stands with the set-up as found. Remove it from the stack.',
  unsprungTwice: (whole: string) =>
    `what moves with the front wheel stands here in parts, and as ${whole} in all. Remove one of the two.`,
  springLengthTwice: () =>
    'the stack says how long the installed spring is, and this says it too. Remove one of the two.',
  tooFewTaped: (count: number, heights: number) =>
    `found ${count} taped points at ${heights} heights; at least 4 at 3 different heights are needed. Tape more.`,
  tapedBackwards: (found: string, before: string, wheel: string) =>
    `found ${found} at wheel ${wheel}, after ${before} lower down; as the wheel goes up the shock must get shorter. Tape it again.`,
  beyondStroke: (longest: string, shortest: string, stroke: string) =>
    `the shock goes from ${longest} to ${shortest}, which is more than its stroke of ${stroke} allows. One of them is wrong.`,
  beyondLength: (longest: string, length: string) =>
    `the shock is up to ${longest} long, but fully out it is ${length} eye to eye. One of the two is wrong.`,
  pointsNeed: (what: string) =>
    `missing; hard points need ${what}. Add it, or give the travel as a ratio or by rows.`,
  sameEnds: (part: string) =>
    `found ${quoted(part)} at both ends; a length goes from one part to another. Correct one.`,
  followsFromPoints: () =>
    "the hard points and the shock's length already say at which wheel travel they were read. Remove it.",
  tooMuchTravel: (travel: string, range: string) =>
    `stroke and ratio together give ${travel} of wheel travel; allowed: ${range}. Is it wheel per shock (leverage) or shock per wheel (motion)?`,
  gasTooSmall: (volume: string, swept: string) =>
    `found ${volume}; the shaft alone takes up ${swept} over the stroke, and some gas must be left. One of the figures is wrong.`,
  airTooSmall: (volume: string, swept: string) =>
    `found ${volume}; the stroke alone takes up ${swept}, and some air must be left. Is it the volume fully out?`,
  oneRubber: (told: number) =>
    `found ${told} of "rate", "rows" and "assumed"; just one tells the force of a bump rubber.`,
  hardeningOfRate: () => 'is of a rubber told by its rate. Give the rate too, or remove it.',
  rubberStartNeeded: () =>
    'missing; a rubber that was measured needs the stroke at which it is met. Press the shock in without its spring until it touches, and read it.',
  coilMissing: () =>
    'the spring is "none", but nothing tells of air in the shock that bears the load. Tell of the air, or of the spring.',
  softerIsStiffer: (soft: string, stiff: string) =>
    `found ${soft}, stiffer than the stiff one's ${stiff}. Swapped?`,
  oneDiameter: (given: string) => `found ${given} of outside and mean diameter; just one is needed.`,
  coilTooTight: (diameter: string, wire: string) =>
    `found ${diameter} for a wire of ${wire}; wound so tight there is no room inside. One of the two is wrong.`,
  insideOfFork: () =>
    'a fork spring stands within its tube, and nothing is held against its inside. Remove it.',
  spacerOfFork: () => "a fork's spacers are told in its stack, or by what sets its preload. Remove it here.",
  countsUnmarked: () =>
    'the marked rate is to count, but none is given. Type the rate that is marked on the spring.',
  sectionCount: (count: number, most: number) =>
    `found ${count} sections; 1 to ${most} are allowed. Take together what looks alike.`,
  onePitch: (given: string) =>
    `found ${given} of pitch and length; just one is needed: the pitch, or the length over the coils counted.`,
  pitchWithinWire: (pitch: string, wire: string) =>
    `${pitch} from coil to coil; with a wire of ${wire} such coils touch already, or nearly, and give nothing. Leave them out, or measure again.`,
  pitchesAlike: (pitch: string, apart: string) =>
    `${pitch} from coil to coil, less than ${apart} apart from another section's. Count both as one section.`,
  tooFewCoils: (coils: number, ends: string, least: number) =>
    `found ${coils} in all; with ${ends} ends at least ${least}, or none is left to give. Count again, ends included.`,

  heightTwice: (height: string) =>
    `found ${height} beside the scale's reading with a wheel raised, which gives it too. Remove one of the two.`,
  rimOfOther: (rim: number) =>
    `found a rim of ${rim} in; motorcycle rims have 8 to 23 in. Read the tyre's wall again, or give its radius.`,
  badSize: () =>
    'is no metric tyre size; such a size is 130/80-17: width in mm, height in %, rim in inches. For any other marking give the radius.',
  nothingRead: (kind: string) =>
    kind === 'sag'
      ? 'no length was read; it needs hanging, afterPush or afterLift.'
      : 'no scale was read; it needs front or rear.',
  adjustersWithoutFound: (end: string) =>
    `the ${end} has no setting as found that this could stand against; tell it in setups.asFound.${end} first.`,
  noOtherTyre: (end: string) =>
    `there is no radius and no size of the ${end} tyre as found to compare with. Give one of them first.`,

  torqueFromManual: (origin: string) =>
    `found ${quoted(origin)}; a torque is kept only as somebody read it from this machine's manual. Read it there, or leave it out.`,

  carriedInCircle: (id: string) =>
    `${quoted(id)} ends up carried by itself. Let the lowest one be carried by nothing.`,
  aboardTwice: (id: string) =>
    `${quoted(id)} is already aboard in this load case. Remove one, or add a second thing.`,
  sharesOverWhole: (sum: number) =>
    `the shares come to ${Number(sum.toPrecision(4))} %; at most 100 (100.5 when rounded). Lower some.`,
  wantedMixed: (low: string, aim: string, high: string) =>
    `found ${low}, ${aim} and ${high}; all three in %, or all three as lengths.`,
  wantedOrder: (low: string, aim: string, high: string) =>
    `found low ${low}, aim ${aim}, high ${high}; they must go up in that order.`,

  springOfOtherEnd: (id: string, its: string, end: string) =>
    `${quoted(id)} is a ${its} spring; this is the ${end}. Pick another, or correct the spring.`,
  sidesOfOneShock: () => 'the machine has one shock; give it as "single".',
  oneSideOfTwo: () => 'the machine has two shocks; give them as "both", or as "left" and "right".',
  settingOfOtherAdjuster: (given: string, adjuster: string, needed: string) =>
    `found ${quoted(given)}, but the adjuster is of the kind ${quoted(adjuster)}; needed: ${quoted(needed)}${needed === 'preload' ? '' : ' or "preload"'}.`,
} as const;
