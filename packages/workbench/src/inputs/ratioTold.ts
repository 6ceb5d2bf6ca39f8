import type { Origin, Quantity } from '@sagwright/records/schema/quantity';
import { siOf } from '@sagwright/records/schema/quantity';

/** The trade's leverage, or the motion ratio: each its own way round. */
export type RatioUnit = 'wheel/shock' | 'shock/wheel';

/** A place along the travel: how far the wheel has risen, and the shock's length there. */
export interface TravelRow {
  readonly wheel: Quantity<'length'>;
  readonly shock: Quantity<'length'>;
}

/** A ratio as a document holds it. */
export interface RatioTold {
  readonly value: number;
  readonly unit: RatioUnit;
  readonly plusMinus?: { readonly value: number; readonly unit: '%' };
  readonly origin?: Origin;
}

/** Lengths read off a machine give no ratio that is surer than this [%]: common practice, no source. */
const SUREST = 1;

/** The same ratio told the other way round. It keeps its share of doubt and its origin. */
export function turnedOver(ratio: Quantity<'leverage'> | Quantity<'motion'>, unit: RatioUnit): RatioTold {
  const { value, plusMinus, origin } = ratio;
  const share = plusMinus?.unit === '%' ? plusMinus.value : (100 * (plusMinus?.value ?? 0)) / value;
  return {
    value: digits(1 / value, 5),
    unit,
    ...(plusMinus && { plusMinus: { value: digits(share, 2), unit: '%' } }),
    ...(origin && { origin }),
  };
}

/**
 * One ratio for rows in the order in which the wheel rises: that of the whole travel, with a ± that holds the ratio of either
 * half of it, and at least `SUREST`; of the rows' origin where they share one. Null where the rows give no ratio.
 */
export function meanRatio(rows: readonly TravelRow[], unit: RatioUnit): RatioTold | null {
  const [first, middle, last] = [rows[0], rows[Math.floor(rows.length / 2)], rows.at(-1)];
  if (first === undefined || middle === undefined || last === undefined) return null;
  const ratio = (from: TravelRow, to: TravelRow): number => {
    const [wheel, stroke] = [siOf(to.wheel) - siOf(from.wheel), siOf(from.shock) - siOf(to.shock)];
    return unit === 'wheel/shock' ? wheel / stroke : stroke / wheel;
  };
  const [mean, lower, upper] = [ratio(first, last), ratio(first, middle), ratio(middle, last)];
  if (![mean, lower, upper].every((each) => each > 0 && Number.isFinite(each))) return null;
  const share = Math.max(SUREST, ...[lower, upper].map((each) => Math.abs(100 * (each / mean - 1))));
  const { origin } = first.shock;
  const shared = rows.every(({ shock }) => shock.origin === origin);
  return {
    value: digits(mean, 4),
    unit,
    plusMinus: { value: digits(share, 2), unit: '%' },
    ...(shared && origin && { origin }),
  };
}

function digits(value: number, count: number): number {
  return Number(value.toPrecision(count));
}
