import type { Figure } from '@sagwright/model/plan/answer';
import type { Quantity } from '@sagwright/records/schema/quantity';
import {
  type Dimension,
  differenceFromSI,
  dimensionOf,
  fromSI,
  toSI,
  type Unit,
} from '@sagwright/records/units';
import type { UsedFigure } from '../inputs/take.ts';
import { decimalsFor, fixed, marked } from './digits.ts';
import { type Units, unitLike } from './units.ts';

/**
 * Puts units on, once: SI in, text out. Everything that a person reads goes through here; JSON stays SI.
 * Digits: with a ±, as many as the ± supports (`decimalsFor`); without, and at most, those of the finest place that a tool
 * of the workshop reads in that unit.
 */
export type ShownDimension = Dimension | 'frequency';

/** Decimals of the finest place worth showing, by unit. Common practice, no source. */
const finest: { readonly [U in Unit | 'Hz']: number } = {
  mm: 1,
  cm: 2,
  m: 4,
  in: 2,
  kg: 1,
  lb: 1,
  'N/mm': 1,
  'lbf/in': 0,
  'kgf/mm': 2,
  'N/mm^3': 3,
  N: 0,
  lbf: 0,
  kgf: 1,
  bar: 1,
  psi: 0,
  kPa: 0,
  deg: 1,
  l: 1,
  ml: 0,
  cm3: 0,
  'gal (US)': 2,
  N·m: 0,
  lbf·ft: 0,
  lbf·in: 0,
  kgf·m: 1,
  C: 0,
  F: 0,
  'wheel/shock': 2,
  'shock/wheel': 2,
  '%': 0,
  g: 2,
  'm/s²': 1,
  'km/h': 0,
  mph: 0,
  Hz: 2,
};

/** "23.7 mm": a value without a ±. */
export function format(value: number, dimension: ShownDimension, units: Units): string {
  return `${formatNumber(value, dimension, units)} ${unitOf(dimension, units)}`;
}

/** A distance that is there, however small: never told as 0, but as the finest place at least. */
export function formatSome(value: number, dimension: ShownDimension, units: Units): string {
  return `${formatSomeNumber(value, dimension, units)} ${unitOf(dimension, units)}`;
}

export function formatSomeNumber(value: number, dimension: ShownDimension, units: Units): string {
  const unit = unitOf(dimension, units);
  return marked(fixed(Math.max(shown(value, unit), 10 ** -finest[unit]), finest[unit]), units.decimal);
}

/** "23.7": a value for a place where the unit stands beside it. */
export function formatNumber(value: number, dimension: ShownDimension, units: Units): string {
  const unit = unitOf(dimension, units);
  return marked(fixed(shown(value, unit), finest[unit]), units.decimal);
}

/** "405": a figure that is taken as it stands (a limit on a plate), with no more decimals than it needs. */
export function formatPlainNumber(value: number, dimension: ShownDimension, units: Units): string {
  const unit = unitOf(dimension, units);
  return marked(String(Number(fixed(shown(value, unit), finest[unit]))), units.decimal);
}

/** "23.7 ± 1.8 mm". */
export function formatFigure(figure: Figure, dimension: ShownDimension, units: Units): string {
  return `${formatFigureNumber(figure, dimension, units)} ${unitOf(dimension, units)}`;
}

/** "23.7 ± 1.8". */
export function formatFigureNumber(figure: Figure, dimension: ShownDimension, units: Units): string {
  return withWidth(figure, unitOf(dimension, units), units);
}

/** "23.7" of "23.7 ± 1.8": the value alone, to the place that its ± supports. */
export function formatValueNumber(figure: Figure, dimension: ShownDimension, units: Units): string {
  const unit = unitOf(dimension, units);
  return marked(fixed(shown(figure.value, unit), decimalsOf(figure.plusMinus, unit)), units.decimal);
}

/** "1.8 mm": a ± by itself, in the digits that it has beside its value. */
export function formatWidth(plusMinus: number, dimension: ShownDimension, units: Units): string {
  const unit = unitOf(dimension, units);
  return `${widthText(plusMinus, unit, units)} ${unit}`;
}

/** "21.4 to 24.0 mm". */
export function formatRange(low: number, high: number, dimension: ShownDimension, units: Units): string {
  return `${formatNumber(low, dimension, units)} to ${format(high, dimension, units)}`;
}

/** "+2.1", "-0.3", "0.0": a change, with its sign. */
export function formatChange(value: number, dimension: ShownDimension, units: Units): string {
  const text = formatNumber(value, dimension, units);
  return value > 0 && /[1-9]/.test(text) ? `+${text}` : text;
}

/** "160 lbf/in": exactly as it was typed, with the ± that was typed. */
export function formatTyped(typed: Quantity, units: Units): string {
  const { value, unit, plusMinus } = typed;
  const text = `${marked(String(value), units.decimal)} ${unit}`;
  if (plusMinus === undefined) return text;
  const width = marked(String(plusMinus.value), units.decimal);
  return plusMinus.unit === unit
    ? `${marked(String(value), units.decimal)} ± ${width} ${unit}`
    : `${text} ± ${width} ${plusMinus.unit}`;
}

/** A typed quantity without its ±: as it was typed where units are as typed, else in the units chosen. */
export function formatQuantity({ value, unit }: Quantity, units: Units): string {
  return units.choice === 'typed'
    ? formatTyped({ value, unit }, units)
    : format(toSI(value, unit), dimensionOf(unit), units);
}

/**
 * A figure that went into the sum, with its ±: as typed where units are as typed, else in the units chosen. It is told in the
 * digits of its ± alone; an assumed one keeps one digit more where that tells it exactly.
 */
export function formatUsed(figure: UsedFigure, units: Units): string {
  const { typed, assumed, dimension, value, halfWidth } = figure;
  const asTyped = typed !== null && units.choice === 'typed';
  if (asTyped && (typed.plusMinus !== undefined || halfWidth === 0)) return formatTyped(typed, units);
  const own = assumed === null ? units.unit[dimension] : unitLike(assumed.unit, dimension, units);
  const unit = asTyped ? typed.unit : own;
  const width = shownWidth(halfWidth, unit);
  const decimals = width > 0 ? Math.min(decimalsFor(width), MOST_DECIMALS) : finest[unit];
  const number = asTyped ? String(typed.value) : usedNumber(shown(value, unit), decimals, assumed !== null);
  return `${marked(`${number} ± ${width > 0 ? fixed(width, decimals) : '0'}`, units.decimal)} ${unit}`;
}

/** No reading has more; a ± finer than that comes of a figure that is next to nothing. */
const MOST_DECIMALS = 12;

/** "1.5 %": the ± alone of a figure that went into the sum. */
export function formatUsedWidth({ dimension, halfWidth }: UsedFigure, units: Units): string {
  const unit = units.unit[dimension];
  const width = shownWidth(halfWidth, unit);
  return `${marked(width > 0 ? fixed(width, decimalsFor(width)) : '0', units.decimal)} ${unit}`;
}

function usedNumber(value: number, decimals: number, oneMore: boolean): string {
  const text = fixed(value, decimals);
  const finer = fixed(value, decimals + 1);
  const tells = (number: string): boolean => Math.abs(Number(number) - value) < 1e-9 * Math.abs(value);
  return oneMore && !tells(text) && tells(finer) ? finer : text;
}

export function unitOf(dimension: ShownDimension, units: Units): Unit | 'Hz' {
  return dimension === 'frequency' ? 'Hz' : units.unit[dimension];
}

function withWidth({ value, plusMinus }: Figure, unit: Unit | 'Hz', units: Units): string {
  const text = marked(fixed(shown(value, unit), decimalsOf(plusMinus, unit)), units.decimal);
  return plusMinus === null ? text : `${text} ± ${widthText(plusMinus, unit, units)}`;
}

/** A ± in its own digits; one that is finer than the finest place is told as that place, never as 0. */
function widthText(plusMinus: number, unit: Unit | 'Hz', units: Units): string {
  if (plusMinus === 0) return '0';
  const decimals = decimalsOf(plusMinus, unit);
  return marked(fixed(Math.max(shownWidth(plusMinus, unit), 10 ** -decimals), decimals), units.decimal);
}

function decimalsOf(plusMinus: number | null, unit: Unit | 'Hz'): number {
  if (plusMinus === null || plusMinus === 0) return finest[unit];
  return Math.min(finest[unit], decimalsFor(shownWidth(plusMinus, unit)));
}

function shown(value: number, unit: Unit | 'Hz'): number {
  return unit === 'Hz' ? value : fromSI(value, unit);
}

function shownWidth(width: number, unit: Unit | 'Hz'): number {
  return unit === 'Hz' ? width : differenceFromSI(width, unit);
}
