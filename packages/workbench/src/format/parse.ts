import type { Quantity } from '@sagwright/records/schema/quantity';
import { type Dimension, dimensionOf, type UnitOf, unitsOf } from '@sagwright/records/units';
import { readNumber } from './readNumber.ts';

/** What a person typed as a quantity; or why it is none. */
export type Typed<D extends Dimension> = { readonly ok: true; readonly quantity: Quantity<D> } | Fault;

export type Fault =
  | { readonly ok: false; readonly fault: 'empty' }
  /** `why` is the sentence of `readNumber`. */
  | { readonly ok: false; readonly fault: 'number'; readonly why: string }
  | { readonly ok: false; readonly fault: 'other dimension' | 'unknown unit'; readonly found: string };

/**
 * Reads "160 lbf/in", "28,5", "13 3/4 in", "1625 ± 5 mm", "28 N/mm +- 5 %": a number as `readNumber` takes it, a unit or
 * another spelling of it, and a ± where one was typed. Without a unit it is `usual`.
 */
export function parseQuantity<D extends Dimension>(text: string, dimension: D, usual: UnitOf<D>): Typed<D> {
  const [mainText = '', widthText] = text.split(/±|\+\s*\/?\s*[-−]/u, 2);
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

type Part<D extends Dimension> =
  | { readonly ok: true; readonly value: number; readonly unit: UnitOf<D> | null }
  | Fault;

function readPart<D extends Dimension>(text: string, dimension: D): Part<D> {
  const [, number = '', unitText = ''] = NUMBER_FIRST.exec(text) ?? [];
  const read = readNumber(number);
  if (read.kind === 'empty') return unitText === '' ? { ok: false, fault: 'empty' } : noNumber(unitText);
  if (read.kind !== 'number') return { ok: false, fault: 'number', why: read.why };
  const { value } = read;
  if (unitText === '') return { ok: true, value, unit: null };
  const name = nameOf(unitText);
  const unit = unitsOf(dimension).find((each) => each === name);
  if (unit !== undefined) return { ok: true, value, unit };
  const fault = dimensionOf(name) === undefined ? 'unknown unit' : 'other dimension';
  return { ok: false, fault, found: unitText };
}

/** All that can belong to a number as `readNumber` takes it, then the unit. */
const NUMBER_FIRST = /^\s*([\d.,'’ʼ\s/⁄∕¼-¾⅐-⅞+\-−‐-–]*)(.*?)\s*$/su;

function noNumber(text: string): Fault {
  const read = readNumber(text);
  return { ok: false, fault: 'number', why: 'why' in read ? read.why : text };
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
