import type { Origin, Quantity } from '@sagwright/records/schema/quantity';
import type { Dimension, Unit } from '@sagwright/records/units';
import { plainDecimal } from '@sagwright/workbench/format/plainNumber';
import type { BoundName } from './judge.ts';

/** What a field is about; it does not change while the field is on the page. */
export interface FieldRules {
  readonly dimension: Dimension;
  /** The name of the bound in records that the figure is judged by. */
  readonly bound: BoundName | undefined;
  /** How far one step goes, in SI. */
  readonly step: number;
}

/** How sure the figure is: as chosen, or as it is being typed. A ± that came from the last use is not the figure's own. */
export type Sure =
  | { readonly kind: 'not said' }
  | { readonly kind: 'width'; readonly value: number; readonly unit: Unit | '%'; readonly own: boolean }
  | { readonly kind: 'typed'; readonly text: string };

/** What is being typed: nothing of it counts before it is written. */
export interface Entry {
  readonly text: string;
  readonly unit: Unit;
  readonly sure: Sure;
  readonly origin: Origin | undefined;
}

/** Unit, ± and origin as they were last written for this kind of reading. */
export type LastUse = Pick<Quantity, 'unit' | 'plusMinus' | 'origin'>;

/** A field: the figure that counts, what it replaced here, and what is being typed, if anything. */
export interface FieldState {
  readonly rules: FieldRules;
  readonly committed: Quantity | null;
  /** What the last writing in this field replaced; undefined where there is nothing to undo. */
  readonly before: Quantity | null | undefined;
  readonly entry: Entry | null;
  /** The entry as the sheet opened, to go back to. */
  readonly opened: Entry | null;
}

/** What the sheet begins with: the figure that counts, or an empty line in the unit, ± and origin of the last use. */
export function entryOf(committed: Quantity | null, last: LastUse): Entry {
  const { unit, plusMinus, origin } = committed ?? last;
  const sure: Sure =
    plusMinus === undefined ? { kind: 'not said' } : { kind: 'width', ...plusMinus, own: committed !== null };
  return { text: committed === null ? '' : plainDecimal(committed.value), unit, sure, origin };
}

export function sameEntry(one: Entry | null, other: Entry | null): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

export function sameQuantity(one: Quantity | null, other: Quantity | null): boolean {
  return (
    one?.value === other?.value &&
    one?.unit === other?.unit &&
    one?.origin === other?.origin &&
    one?.plusMinus?.value === other?.plusMinus?.value &&
    one?.plusMinus?.unit === other?.plusMinus?.unit
  );
}
