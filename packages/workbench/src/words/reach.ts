import type { Reach } from '@sagwright/model/plan/answer';
import { formatSome, formatSomeNumber } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import { words } from './catalogue.ts';

/** How an adjuster reaches what is wanted, short enough for a table. */
export function reachWords(reach: Reach, units: Units): string {
  if (reach.kind === 'out of reach')
    return words.reaches[reach.kind](formatSome(reach.short, 'length', units));
  return words.reaches[reach.kind]();
}

/** The same in a column of a wide table: "edge", "past 5.6". */
export function shortReachWords(reach: Reach, units: Units): string {
  if (reach.kind === 'out of reach') {
    return words.reachesShort[reach.kind](formatSomeNumber(reach.short, 'length', units));
  }
  return words.reachesShort[reach.kind]();
}
