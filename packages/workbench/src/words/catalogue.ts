import { assumed } from './english/assumed.ts';
import { fields } from './english/fields.ts';
import { fork } from './english/fork.ts';
import { limits } from './english/limits.ts';
import { caution, notes } from './english/notes.ts';
import { page, standPlace, standWhy } from './english/page.ts';
import { rearMotion } from './english/rearMotion.ts';
import {
  emptyCells,
  emptyCellsShort,
  reaches,
  reachesShort,
  reasons,
  standings,
  verdicts,
} from './english/reasons.ts';
import { settings } from './english/settings.ts';
import { suggestion } from './english/suggestion.ts';
import { lengthNames, placeNames, tapeGuide } from './english/tape.ts';
import { notToBeHad, origins, why, whyNot, whyPlace } from './english/why.ts';

/**
 * Every sentence that is made of a plan, in English. One function for each code; it takes figures already formatted and names
 * already quoted, and puts them where its language wants them. No sentence is cut up or glued afterwards, so that another
 * language is another set of these functions and nothing else.
 */
export const words = {
  quoted: (name: string) => `"${name}"`,
  /** "a, b and c" */
  list: (items: readonly string[]) =>
    items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`,
  /** An enumeration that may be long: "a; b; c". */
  inSection: (field: string, section: number) => `${field}, section ${section}`,
  inRow: (field: string, row: number) => `${field}, row ${row}`,
  listed: (items: readonly string[]) => items.join('; '),
  reasons,
  standings,
  reaches,
  reachesShort,
  emptyCells,
  emptyCellsShort,
  verdicts,
  suggestion,
  rearMotion,
  tape: { lengths: lengthNames, places: placeNames, guide: tapeGuide },
  fork,
  limits,
  settings,
  notes,
  assumed,
  fields,
  page,
  standWhy,
  standPlace,
  caution,
  why,
  whyPlace,
  whyNot,
  notToBeHad,
  origins,
} as const;
