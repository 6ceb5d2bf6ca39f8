import { type Origin, origins, type Quantity } from '@sagwright/records/schema/quantity';
import { type Unit, unitsOf } from '@sagwright/records/units';
import { plainDecimal, plainFraction } from '@sagwright/workbench/format/plainNumber';
import { readNumber } from '@sagwright/workbench/format/readNumber';
import {
  type Entry,
  entryOf,
  type FieldRules,
  type FieldState,
  type LastUse,
  type Sure,
  sameEntry,
} from './draft.ts';
import { outOfBounds } from './judge.ts';
import { readEntry } from './readEntry.ts';
import { stepIn } from './steps.ts';

export type FieldAction =
  /** Opens the sheet; a text is what was typed onto the closed field. */
  | { readonly kind: 'open'; readonly last: LastUse; readonly text?: string }
  | { readonly kind: 'type'; readonly text: string }
  /** Reads the same number in another unit: 160 was typed, lbf/in was meant. */
  | { readonly kind: 'unit'; readonly unit: Unit }
  | { readonly kind: 'next unit' }
  | { readonly kind: 'sure'; readonly sure: Sure }
  | { readonly kind: 'origin'; readonly origin: Origin | undefined }
  | { readonly kind: 'next origin' }
  | { readonly kind: 'step'; readonly times: number }
  /** Adds a sixteenth in inches, a half in any other unit. */
  | { readonly kind: 'fraction' }
  | { readonly kind: 'write' }
  | { readonly kind: 'close' }
  /** Takes back what was typed since the sheet opened; where nothing was, what was last written here. */
  | { readonly kind: 'undo' }
  /** One step on the closed field, written at once. */
  | { readonly kind: 'nudge'; readonly times: number }
  /** The job brought another figure: a colleague's, or an undo elsewhere. What is being typed stays. */
  | { readonly kind: 'arrived'; readonly quantity: Quantity | null };

/** A closed field with the figure that counts. */
export function fieldAt(rules: FieldRules, committed: Quantity | null): FieldState {
  return { rules, committed, before: undefined, entry: null, opened: null };
}

/** What a field becomes by an action. The figure that counts changes by write, undo, nudge and arrived, and by nothing else. */
export function fieldState(state: FieldState, action: FieldAction): FieldState {
  switch (action.kind) {
    case 'open':
      return opened(state, action.last, action.text);
    case 'close':
      return { ...state, entry: null, opened: null };
    case 'nudge':
      return nudged(state, action.times);
    case 'arrived':
      return { ...state, committed: action.quantity, before: undefined };
    case 'write':
      return state.entry === null ? state : written(state, state.entry);
    case 'undo':
      return state.entry === null ? state : undone(state, state.entry);
    default:
      return state.entry === null ? state : { ...state, entry: edited(state.entry, action, state.rules) };
  }
}

type Edit = Exclude<FieldAction, { kind: 'open' | 'close' | 'nudge' | 'arrived' | 'write' | 'undo' }>;

function edited(entry: Entry, action: Edit, { dimension, step }: FieldRules): Entry {
  switch (action.kind) {
    case 'type':
      return { ...entry, text: action.text };
    case 'unit':
      return inUnit(entry, action.unit);
    case 'next unit':
      return inUnit(entry, after(unitsOf(dimension), entry.unit));
    case 'sure':
      return { ...entry, sure: action.sure };
    case 'origin':
      return { ...entry, origin: action.origin };
    case 'next origin':
      return { ...entry, origin: after(origins, entry.origin) };
    case 'step':
      return stepped(entry, action.times * stepIn(step, entry.unit));
    case 'fraction':
      return withFraction(entry);
  }
}

function opened(state: FieldState, last: LastUse, text: string | undefined): FieldState {
  const entry = entryOf(state.committed, last);
  return { ...state, entry: text === undefined ? entry : { ...entry, text }, opened: entry };
}

/** The figure is written as typed; an empty line takes it away; what cannot be read stays open. */
function written(state: FieldState, entry: Entry): FieldState {
  const read = readEntry(entry, state.rules);
  if (read.kind === 'refused') return state;
  const committed = read.kind === 'figure' ? read.quantity : null;
  return { ...fieldAt(state.rules, committed), before: state.committed };
}

function undone(state: FieldState, entry: Entry): FieldState {
  if (!sameEntry(entry, state.opened)) return { ...state, entry: state.opened };
  if (state.before === undefined) return state;
  const back = entryOf(state.before, { unit: entry.unit, ...(entry.origin && { origin: entry.origin }) });
  return { ...state, committed: state.before, before: undefined, entry: back, opened: back };
}

function nudged(state: FieldState, times: number): FieldState {
  const { committed, rules } = state;
  if (committed === null) return state;
  const quantity = { ...committed, value: plus(committed.value, times * stepIn(rules.step, committed.unit)) };
  if (rules.bound !== undefined && outOfBounds(quantity, rules.bound) !== null) return state;
  return { ...fieldAt(rules, quantity), before: committed };
}

/** The number stays, its unit changes; so does a ± of its own in the same unit. A ± from the last use is what it is. */
function inUnit(entry: Entry, unit: Unit): Entry {
  const { sure } = entry;
  const follows = sure.kind === 'width' && sure.own && sure.unit === entry.unit;
  return { ...entry, unit, sure: follows ? { ...sure, unit } : sure };
}

function stepped(entry: Entry, by: number): Entry {
  const read = readNumber(entry.text);
  if (read.kind !== 'number') return entry;
  const value = plus(read.value, by);
  const text = entry.text.includes('/') ? plainFraction(value, 64) : plainDecimal(value);
  return { ...entry, text };
}

function withFraction(entry: Entry): Entry {
  const read = readNumber(entry.text);
  if (read.kind === 'unclear' || read.kind === 'not a number') return entry;
  const parts = partsIn(entry.unit);
  const value = read.kind === 'empty' ? 0 : read.value;
  return { ...entry, text: plainFraction(plus(value, (value < 0 ? -1 : 1) / parts), parts) };
}

/** How fine the fraction key is. */
export function partsIn(unit: Unit): 16 | 2 {
  return unit === 'in' ? 16 : 2;
}

/** A sum without binary noise: 0.1 + 0.2 is 0.3. */
function plus(value: number, by: number): number {
  return Number((value + by).toPrecision(12)) + 0;
}

function after<T>(list: readonly T[], current: T | undefined): T {
  return list[(list.indexOf(current as T) + 1) % list.length]!;
}
