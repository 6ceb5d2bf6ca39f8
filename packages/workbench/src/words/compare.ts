import { differenceFromSI, type Unit } from '@sagwright/records/units';
import type { ComparedRow, ComparedSide, ComparedValue, Comparison } from '../compare/comparison.ts';
import { isDifference } from '../compare/comparison.ts';
import { type Compared, jobOf } from '../compare/side.ts';
import { decimalsFor, fixed, marked } from '../format/digits.ts';
import { words } from './catalogue.ts';
import { compareWords } from './english/compare.ts';
import { partName } from './partName.ts';

/** A row of a comparison in words; '' where one of the two has nothing. */
export interface ComparedLine {
  readonly path: string;
  readonly name: string;
  readonly a: string;
  readonly b: string;
  readonly says: string;
  readonly differs: boolean;
}

type Mark = '.' | ',';

export function comparedLines(
  a: Compared,
  b: Compared,
  { rows }: Comparison,
  mark: Mark,
): readonly ComparedLine[] {
  const [jobA, jobB] = [jobOf(a), jobOf(b)];
  return rows.map((row) => ({
    path: row.path,
    name: row.a === null ? partName(jobB, row.pathInB) : partName(jobA, row.path),
    a: valueWords(row.a, mark),
    b: valueWords(row.b, mark),
    says: compareWords.verdicts[row.verdict](differenceWords(row, mark)),
    differs: isDifference(row.verdict),
  }));
}

export function comparedTitle({ part, a, b }: Comparison): string {
  const name = (side: ComparedSide): string =>
    compareWords.side(words.quoted(side.name), compareWords.from[side.from]);
  return compareWords.title(compareWords.parts[part], name(a), name(b));
}

export function countWords({ rows }: Comparison): string {
  const differing = rows.filter(({ verdict }) => isDifference(verdict)).length;
  return compareWords.count(differing, rows.length - differing);
}

function valueWords(value: ComparedValue | null, mark: Mark): string {
  switch (value?.kind) {
    case undefined:
      return '';
    case 'figure':
      return `${marked(String(value.figure.typed), mark)} ${value.figure.unit}`;
    case 'part':
      return value.name === null ? compareWords.part : words.quoted(value.name);
    case 'word':
      if (typeof value.word === 'boolean') return value.word ? compareWords.yes : compareWords.no;
      return String(value.word);
  }
}

/** "+0.6 ± 0.9 N/mm (+3.5 ± 5 lbf/in)": in the unit of the first, and in that of the second where it has another. */
function differenceWords({ a, b, difference, plusMinus }: ComparedRow, mark: Mark): string | null {
  if (difference === null || a?.kind !== 'figure' || b?.kind !== 'figure') return null;
  const units = new Set([a.figure.unit, b.figure.unit].map(shownUnit));
  const [own, other] = [...units].map((unit) => marked(figureIn(unit, difference, plusMinus), mark));
  return other === undefined ? own! : compareWords.inOtherUnit(own!, other);
}

/** A motion ratio is held against another as leverage. */
function shownUnit(unit: Unit): Unit {
  return unit === 'shock/wheel' ? 'wheel/shock' : unit;
}

/** To the place that the ± supports, or finer where the difference would vanish there; without a ± to two digits. */
function figureIn(unit: Unit, difference: number, plusMinus: number | null): string {
  const by = differenceFromSI(difference, unit);
  const width = plusMinus === null ? null : differenceFromSI(plusMinus, unit);
  const twoDigits = decimalsFor(Math.abs(by)) + (/^[3-9]/.test(Math.abs(by).toExponential()) ? 1 : 0);
  const decimals =
    width === null || width === 0 ? twoDigits : Math.max(decimalsFor(width), decimalsFor(Math.abs(by)));
  const sign = by > 0 ? '+' : '';
  const value = `${sign}${fixed(by, decimals)}`;
  return width === null
    ? `${value} ${unit}`
    : `${value} ± ${width === 0 ? '0' : fixed(width, decimalsFor(width))} ${unit}`;
}
