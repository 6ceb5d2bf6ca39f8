import type { Quantity } from '@sagwright/records/schema/quantity';
import { type Dimension, differenceToSI, dimensionOf, toSI, type Unit } from '@sagwright/records/units';
import type { UsedFigure } from '../inputs/take.ts';
import type { ComparedFigure, ComparedRow } from './comparison.ts';

/** A typed quantity with its ±: as typed, else the usual one that the sum takes for that reading. */
export function comparedFigure(typed: Quantity, used: UsedFigure | undefined): ComparedFigure {
  const plusMinus = typed.plusMinus === undefined ? usualOf(typed, used) : widthOf(typed, typed.plusMinus);
  return { typed: typed.value, unit: typed.unit, value: inSI(typed), plusMinus };
}

/** What kind of figure it is held against: ratios are all leverages here. */
export function comparedDimension(unit: Unit): Dimension {
  return unit === 'shock/wheel' ? 'leverage' : dimensionOf(unit);
}

/** SI; a motion ratio as the leverage that it is, since either may be typed for the other. */
function inSI({ value, unit }: Pick<Quantity, 'value' | 'unit'>): number {
  return unit === 'shock/wheel' ? 1 / value : toSI(value, unit);
}

/** A small width beside a value in SI; |d(1/m)| = dm / m². */
function widthInSI(width: number, { value, unit }: Pick<Quantity, 'value' | 'unit'>): number {
  return unit === 'shock/wheel' ? width / value ** 2 : differenceToSI(width, unit);
}

function widthOf(typed: Quantity, { value, unit }: NonNullable<Quantity['plusMinus']>): number {
  if (unit === '%') return (Math.abs(inSI(typed)) * value) / 100;
  return unit === typed.unit ? widthInSI(value, typed) : differenceToSI(value, unit);
}

/** The usual ± of this very figure: what was worked out in its place has another; what is taken as it stands (a rating, a tank) has none. */
function usualOf(typed: Quantity, used: UsedFigure | undefined): number | null {
  const isIt = used?.typed?.value === typed.value && used.typed.unit === typed.unit;
  if (!isIt || used.halfWidth === 0) return null;
  return typed.unit === 'shock/wheel' ? widthInSI(used.halfWidth, typed) : used.halfWidth;
}

type Judged = Pick<ComparedRow, 'verdict' | 'difference' | 'plusMinus'>;

/** Two figures of one kind, held against each other in SI. */
export function judge(a: ComparedFigure, b: ComparedFigure): Judged {
  if (a.typed === b.typed && a.unit === b.unit) return { verdict: 'same', difference: null, plusMinus: null };
  const difference = b.value - a.value;
  if (Math.abs(difference) <= roundingOf(a, b))
    return { verdict: 'equal', difference: null, plusMinus: null };
  if (a.plusMinus === null || b.plusMinus === null)
    return { verdict: 'differs', difference, plusMinus: null };
  const plusMinus = Math.hypot(a.plusMinus, b.plusMinus);
  return { verdict: Math.abs(difference) <= plusMinus ? 'within' : 'beyond', difference, plusMinus };
}

/**
 * How far the same figure, told in two units, may lie apart [SI]: half the last digit of the finer one. So 8.9 N/mm is 50.8 lbf/in
 * (8.897 N/mm), a lead of 1 mm is not 0.05 in (1.27 mm), and in one unit no two figures are ever one.
 */
function roundingOf(a: ComparedFigure, b: ComparedFigure): number {
  // What a conversion leaves in the last digits, and of numbers too small to be held in full.
  const noise = 1e-12 * Math.max(Math.abs(a.value), Math.abs(b.value)) + 1e-300;
  return Math.min(halfDigit(a), halfDigit(b)) * (1 + 1e-9) + noise;
}

function halfDigit({ typed, unit }: ComparedFigure): number {
  const [digits = '', exponent = '0'] = String(typed).split('e');
  const decimals = (digits.split('.')[1] ?? '').length - Number(exponent);
  return widthInSI(0.5 * 10 ** -decimals, { value: typed, unit });
}
