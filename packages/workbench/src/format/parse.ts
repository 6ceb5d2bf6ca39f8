import type { Quantity } from '@sagwright/records/schema/quantity';
import { type Dimension, dimensionOf, type UnitOf, unitsOf } from '@sagwright/records/units';

/** What a person typed as a quantity; or why it is none, as a code that the catalogue words. */
export type Typed<D extends Dimension> = { readonly ok: true; readonly quantity: Quantity<D> } | Fault;

export interface Fault {
  readonly ok: false;
  readonly why: 'no number' | 'thousands or decimals' | 'other dimension' | 'unknown unit';
  readonly found: string;
}

/**
 * Reads "160 lbf/in", "28,5", "13 3/4 in", "1625 ± 5 mm", "28 N/mm +- 5 %". Comma and point are both a decimal mark. What
 * could be a decimal or a thousand ("1,234", "1.234,5", "1 234") is refused, never guessed. Without a unit it is `usual`.
 */
export function parseQuantity<D extends Dimension>(text: string, dimension: D, usual: UnitOf<D>): Typed<D> {
  const [mainText = '', widthText] = text.replaceAll('−', '-').split(/±|\+\s*\/?\s*-/u, 2);
  const main = readPart(mainText, dimension);
  if (!main.ok) return main;
  if (widthText === undefined) {
    return { ok: true, quantity: { value: main.value, unit: main.unit ?? usual } };
  }
  const percent = /^(.*)%\s*$/su.exec(widthText)?.[1];
  const width = readPart(percent ?? widthText, dimension);
  if (!width.ok) return width;
  const unit = main.unit ?? width.unit ?? usual;
  const plusMinus = { value: width.value, unit: percent === undefined ? (width.unit ?? unit) : '%' } as const;
  return { ok: true, quantity: { value: main.value, unit, plusMinus } };
}

/** A number as typed, or why it is none. */
export function parseNumber(text: string): number | 'no number' | 'thousands or decimals' {
  const plain = text.trim();
  const decimal = /^-?(\d*)(?:([.,])(\d*))?$/.exec(plain);
  if (decimal !== null && /\d/.test(plain)) {
    const [, whole = '', mark, decimals = ''] = decimal;
    const couldBeThousands = mark === ',' && decimals.length === 3 && /^[1-9]\d{0,2}$/.test(whole);
    return couldBeThousands ? 'thousands or decimals' : Number(plain.replace(',', '.'));
  }
  const fraction = /^(-?)(?:(\d+)\s+)?(\d+)\/([1-9]\d*)$/.exec(plain);
  if (fraction === null) return /\d[.,' ]\d/.test(plain) ? 'thousands or decimals' : 'no number';
  const [, sign, whole = '0', top, bottom] = fraction;
  const size = Number(whole) + Number(top) / Number(bottom);
  return sign === '-' ? -size : size;
}

type Part<D extends Dimension> =
  | { readonly ok: true; readonly value: number; readonly unit: UnitOf<D> | null }
  | Fault;

function readPart<D extends Dimension>(text: string, dimension: D): Part<D> {
  const [, number = '', unitText = ''] = /^\s*(-?[\d.,'/ ]*)(.*?)\s*$/su.exec(text) ?? [];
  const value = parseNumber(number);
  if (typeof value !== 'number') return { ok: false, why: value, found: text.trim() };
  if (unitText === '') return { ok: true, value, unit: null };
  const name = nameOf(unitText);
  const unit = unitsOf(dimension).find((each) => each === name);
  if (unit !== undefined) return { ok: true, value, unit };
  const why = dimensionOf(name) === undefined ? 'unknown unit' : 'other dimension';
  return { ok: false, why, found: unitText };
}

/** Other spellings of our units that the workshop writes. */
const spellings: ReadonlyMap<string, string> = new Map([
  ['"', 'in'],
  ['inch', 'in'],
  ['inches', 'in'],
  ['lbs', 'lb'],
  ['n/mm', 'N/mm'],
  ['lb/in', 'lbf/in'],
  ['lbs/in', 'lbf/in'],
  ['kg/mm', 'kgf/mm'],
  ['kpa', 'kPa'],
  ['°', 'deg'],
  ['degrees', 'deg'],
  ['litre', 'l'],
  ['litres', 'l'],
  ['liter', 'l'],
  ['liters', 'l'],
  ['gal', 'gal (US)'],
]);

function nameOf(unit: string): string {
  if (dimensionOf(unit) !== undefined) return unit;
  const lower = unit.toLowerCase();
  return spellings.get(lower) ?? lower;
}
