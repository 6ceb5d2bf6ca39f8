import type { Quantity } from '@sagwright/records/schema/quantity';
import { type Dimension, unitsOf } from '@sagwright/records/units';
import { found } from '@sagwright/records/wording/found';
import { sentences } from '@sagwright/records/wording/sentences';
import { sentence } from '../words/fields.ts';

/** What a job file has where a figure belongs, and no field can show as one: it stays as it was typed until it is mended. */
export interface Unread {
  /** As it was typed. */
  readonly typed: string;
  /** Its number, to begin mending with; '' where it has none. */
  readonly number: string;
  /** What was found, what is allowed. */
  readonly why: string;
}

/** Null where it can be read as a figure of its dimension, or where there is nothing. */
export function unreadIn(value: unknown, dimension: Dimension): Unread | null {
  if (value === undefined) return null;
  if (!isRecord(value)) {
    const why = sentences.wrongKind(found(value), 'a figure with its unit');
    return { typed: String(value), number: numberIn(value), why: sentence(why) };
  }
  const units: readonly string[] = unitsOf(dimension);
  const { plusMinus } = value as { readonly plusMinus?: unknown };
  const ownFault = faultIn(value, dimension, units);
  const widthFault = plusMinus === undefined ? null : faultIn(plusMinus, dimension, [...units, '%']);
  const why = ownFault ?? (widthFault && `The ±: ${widthFault}`);
  if (why === null) return null;
  const width = plusMinus === undefined ? '' : ` ± ${asTyped(plusMinus)}`;
  return { typed: `${asTyped(value)}${width}`, number: numberIn(value.value), why: sentence(why) };
}

/** What is wrong with a number and its unit; null where nothing is. */
function faultIn(value: unknown, dimension: Dimension, units: readonly string[]): string | null {
  if (!isRecord(value)) return sentences.wrongKind(found(value), 'a number with its unit');
  const { value: number, unit } = value as Partial<Record<keyof Quantity, unknown>>;
  if (number === undefined) return sentences.missing('a number');
  if (typeof number !== 'number') return sentences.wrongKind(found(number), 'a number');
  if (unit === undefined) return sentences.missing('a unit');
  if (typeof unit !== 'string') return sentences.wrongKind(found(unit), 'a unit');
  return units.includes(unit) ? null : sentences.wrongUnit(unit, dimension, units, undefined);
}

function asTyped(value: unknown): string {
  if (!isRecord(value)) return String(value);
  const { value: number = '', unit = '' } = value as Partial<Record<keyof Quantity, unknown>>;
  return [number, unit]
    .map((part) => (isRecord(part) ? found(part) : String(part)))
    .filter((part) => part !== '')
    .join(' ');
}

function numberIn(value: unknown): string {
  return typeof value === 'number' || typeof value === 'string' ? String(value) : '';
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
