/** What something may bear [kg], with the 90 % half-width of that: 0 where it is taken as it stands, as a plate is. */
export interface Rating {
  readonly value: number;
  readonly plusMinus: number;
  /** It may bear less, and nobody knows how much: a tyre whose air is not known to be enough. Only what exceeds it is judged. */
  readonly isAtBest?: boolean;
}

/** A rating that is taken as it stands. */
export function stated(value: number): Rating {
  return { value, plusMinus: 0 };
}

/** Figures that the maker sets; `null` where nobody has read it. */
export interface LimitsSI {
  readonly gross: Rating | null;
  readonly frontAxle: Rating | null;
  readonly rearAxle: Rating | null;
  readonly frontTyre: Rating | null;
  readonly rearTyre: Rating | null;
}

/** A place that bears things, with what lies on it in one load [kg]; a place may stand on another one. */
export interface PlaceLoad {
  readonly id: string;
  readonly limit: Rating | null;
  /** What the limit counts that lies there, and on places that this one carries. */
  readonly onIt: number;
  readonly plusMinus: number;
}

/** What limits are about; a place by its id. */
export type LimitOf =
  | { readonly kind: 'gross' | 'front axle' | 'rear axle' | 'front tyre' | 'rear tyre' }
  | { readonly kind: 'place'; readonly place: string };

/**
 * A load against its limit. An unknown limit is not checked, never passed; nor is one that is only known at best, unless the load
 * is over even that.
 */
export interface LimitResult {
  readonly of: LimitOf;
  /** [kg], with its 90 % half-width. */
  readonly load: number;
  readonly plusMinus: number;
  /** Null where nobody has read it. Where it is known but not checked it is what may be borne at best. */
  readonly allowed: number | null;
  /** Half-width of what is allowed; 0 where that is taken as it stands, or not known. */
  readonly allowedPlusMinus: number;
  readonly verdict: 'within' | 'over' | 'within its ±' | 'not checked';
  /** Kilograms over (positive) or left (negative); null where not checked. */
  readonly over: number | null;
}

/** Wheel loads of one load, as masses [kg] with 90 % half-widths. */
export interface AxleLoads {
  readonly front: number;
  readonly frontPlusMinus: number;
  readonly rear: number;
  readonly rearPlusMinus: number;
  readonly total: number;
  readonly totalPlusMinus: number;
}

/**
 * Each load against its limit: gross, axles, tyres, places. An axle's load is compared with its own tyre, never the sum
 * of both. 'within its ±' says that the load is below its limit, but by less than its doubt.
 * Definitions of axle and gross ratings: 49 CFR 571.3, as quoted in NHTSA interpretation letters (checks/axle-ratings.test.ts).
 */
export function limitsOf(
  loads: AxleLoads,
  limits: LimitsSI,
  places: readonly PlaceLoad[],
): readonly LimitResult[] {
  return [
    result({ kind: 'gross' }, loads.total, loads.totalPlusMinus, limits.gross),
    result({ kind: 'rear axle' }, loads.rear, loads.rearPlusMinus, limits.rearAxle),
    result({ kind: 'front axle' }, loads.front, loads.frontPlusMinus, limits.frontAxle),
    result({ kind: 'rear tyre' }, loads.rear, loads.rearPlusMinus, limits.rearTyre),
    result({ kind: 'front tyre' }, loads.front, loads.frontPlusMinus, limits.frontTyre),
    ...places.map((place) =>
      result({ kind: 'place', place: place.id }, place.onIt, place.plusMinus, place.limit),
    ),
  ];
}

function result(of: LimitOf, load: number, plusMinus: number, rating: Rating | null): LimitResult {
  if (rating === null)
    return { of, load, plusMinus, allowed: null, allowedPlusMinus: 0, verdict: 'not checked', over: null };
  const { value: allowed, plusMinus: allowedPlusMinus } = rating;
  const over = load - allowed;
  const verdict = verdictOf(-over, Math.hypot(plusMinus, allowedPlusMinus));
  if (rating.isAtBest && verdict !== 'over')
    return { of, load, plusMinus, allowed, allowedPlusMinus, verdict: 'not checked', over: null };
  return { of, load, plusMinus, allowed, allowedPlusMinus, verdict, over };
}

/**
 * What is left of a limit, below 0 by how much it is exceeded, and what the ± of that leaves open: all of it where nobody knows the
 * ± (null), since nothing tells how far off it may be.
 */
export function verdictOf(
  left: number,
  plusMinus: number | null,
): Exclude<LimitResult['verdict'], 'not checked'> {
  if (left < 0) return 'over';
  return plusMinus === null || left < plusMinus ? 'within its ±' : 'within';
}
