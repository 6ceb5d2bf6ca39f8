import { verdictOf } from '@sagwright/model/limits/limits';
import type { Figure } from '@sagwright/model/plan/answer';
import { type Contribution, halfWidthOf } from '@sagwright/model/uncertainty/spread';
import { sharesIn } from '../why/standing.ts';
import type { LimitNeeded, LimitRowDocument } from './document.ts';

/** A row with what its margin's ± is made of, worked out when it is asked for. */
export interface LimitRow {
  readonly told: LimitRowDocument;
  readonly contributions: () => readonly Contribution[];
}

/** What names a row. */
export type RowName = Pick<LimitRowDocument, 'id' | 'kind' | 'end' | 'of' | 'dimension'>;

/** One load held against a limit. */
export interface Held {
  readonly loadCase: string | null;
  readonly found: Figure;
  readonly allowed: Figure | null;
  readonly margin: Figure;
  readonly contributions: () => readonly Contribution[];
}

/** A checked row: the worst of what was held against it. */
export function checkedRow(
  name: RowName,
  held: readonly Held[],
  notes: LimitRowDocument['notes'] = [],
  leftOut: LimitRowDocument['leftOut'] = [],
): LimitRow {
  const worst = held.reduce((a, b) => (isWorse(b, a) ? b : a));
  const { loadCase, found, allowed, margin, contributions } = worst;
  const verdict = verdictOf(margin.value, margin.plusMinus);
  return {
    told: { ...name, verdict, loadCase, found, allowed, margin, needs: [], notes, leftOut },
    contributions,
  };
}

/** A row that lacks a figure: never passed. */
export function neededRow(
  name: RowName,
  needs: readonly LimitNeeded[],
  notes: LimitRowDocument['notes'] = [],
  leftOut: LimitRowDocument['leftOut'] = [],
): LimitRow {
  return {
    told: {
      ...name,
      verdict: 'not checked',
      loadCase: null,
      found: null,
      allowed: null,
      margin: null,
      needs,
      notes,
      leftOut,
    },
    contributions: () => [],
  };
}

/** What is over a limit has failed, whatever else is not known; what lacks a figure is never passed. */
export function judgedRow(
  name: RowName,
  held: readonly Held[],
  needs: readonly LimitNeeded[],
  notes: LimitRowDocument['notes'] = [],
  leftOut: LimitRowDocument['leftOut'] = [],
): LimitRow {
  const row = held.length === 0 ? null : checkedRow(name, held, notes, leftOut);
  if (row !== null && (row.told.verdict === 'over' || needs.length === 0)) return row;
  return neededRow(name, needs, notes, leftOut);
}

/** Exceeded beats close, close beats passed; of alike ones the least margin, its ± taken off. */
function isWorse(a: Held, b: Held): boolean {
  return leastLeft(a) < leastLeft(b);
}

/** Nobody knows how little is left where nobody knows the ±: that comes right after what is exceeded. */
function leastLeft({ margin: { value, plusMinus } }: Held): number {
  if (value < 0) return value - EXCEEDED;
  return plusMinus === null ? value - EXCEEDED / 2 : value - plusMinus;
}

/** Puts what is exceeded before all that is not. */
const EXCEEDED = 1e6;

/** A figure from a sum of inputs, given by ∂(figure)/∂(input) times the input's standard deviation. */
export function spreadOf(
  value: number,
  parts: ReadonlyMap<string, number>,
): {
  readonly figure: Figure;
  readonly contributions: readonly Contribution[];
} {
  const whole = halfWidthOf(Math.hypot(...parts.values()));
  const each = [...parts].map(([input, slope]) => ({
    input,
    slope,
    halfWidth: halfWidthOf(Math.abs(slope)),
  }));
  return { figure: { value, plusMinus: whole }, contributions: sharesIn(whole, each) };
}
