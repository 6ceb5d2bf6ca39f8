import type { Quantity } from '@sagwright/records/schema/quantity';
import type { Unit } from '@sagwright/records/units';
import { readNumber } from '@sagwright/workbench/format/readNumber';
import * as words from '../words/fields.ts';
import type { Entry, FieldRules, Sure } from './draft.ts';
import { type Broken, outOfBounds } from './judge.ts';

/** What an entry says: a figure exactly as typed, nothing, or why it cannot be written and what may have been meant. */
export type EntryRead =
  | { readonly kind: 'figure'; readonly quantity: Quantity }
  | { readonly kind: 'empty' }
  | ({ readonly kind: 'refused'; readonly either: readonly string[] } & Broken);

export function readEntry(entry: Entry, { bound }: FieldRules): EntryRead {
  const number = readNumber(entry.text);
  if (number.kind === 'empty') return number;
  if (number.kind === 'unclear') return refused('figure', number.why, number.either);
  if (number.kind === 'not a number') return refused('figure', number.why);
  const sure = readSure(entry.sure, entry.unit);
  if (typeof sure === 'string') return refused('sure', sure);
  const quantity = {
    value: number.value,
    unit: entry.unit,
    ...(sure && { plusMinus: sure }),
    ...(entry.origin && { origin: entry.origin }),
  } as Quantity;
  const broken = bound === undefined ? null : outOfBounds(quantity, bound);
  return broken === null ? { kind: 'figure', quantity } : refused(broken.about, broken.why);
}

/** The typed number with its unit, whether it may be written or not: to show it in every unit. */
export function readFigure(entry: Entry): Quantity | null {
  const number = readNumber(entry.text);
  return number.kind === 'number' ? ({ value: number.value, unit: entry.unit } as Quantity) : null;
}

/** The ± of an entry; undefined where none is said; a text where what was typed is none. "5 %" is of the value. */
export function readSure(sure: Sure, unit: Unit): Quantity['plusMinus'] | string {
  if (sure.kind === 'not said') return undefined;
  if (sure.kind === 'width') return { value: sure.value, unit: sure.unit } as Quantity['plusMinus'];
  const [, number = '', percent = ''] = /^([^%]*)(%?)\s*$/.exec(sure.text) ?? [undefined, sure.text];
  const read = readNumber(number);
  if (read.kind === 'empty') return undefined;
  if (read.kind !== 'number') return words.sureUnclear(read.why);
  if (read.value < 0) return words.sureNegative(number);
  return { value: read.value, unit: percent === '%' ? '%' : unit } as Quantity['plusMinus'];
}

function refused(about: Broken['about'], why: string, either: readonly string[] = []): EntryRead {
  return { kind: 'refused', about, why, either };
}
