import type { LimitResult } from '@sagwright/model/limits/limits';
import { formatPlainNumber, formatValueNumber } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import type { LimitView } from './shapes.ts';

/** A load against each of its limits, as the drawing shows it. */
export function limitViews(limits: readonly LimitResult[], units: Units): readonly LimitView[] {
  return limits.map((limit) => ({
    of: limit.of.kind,
    load: formatValueNumber({ value: limit.load, plusMinus: limit.plusMinus }, 'mass', units),
    allowed: limit.allowed === null ? null : formatPlainNumber(limit.allowed, 'mass', units),
    verdict: limit.verdict,
  }));
}
