import type { Direction, UncertainInput } from './inputs.ts';

/** Half-width that holds 90 % of a normal spread, in standard deviations: Φ⁻¹(0.95) (any table of the normal law). */
export const HALF_WIDTH_90 = 1.6448536269514722;

/**
 * Standard deviation from a half-width that holds 90 %: normal, or rectangular for a plate or a stepped reading,
 * where ±h of a flat band of half-width a holds h/a = 0.9, so σ = a/√3 = h/(0.9·√3).
 */
export function deviationOf(halfWidth: number, law: 'normal' | 'rectangular'): number {
  return law === 'normal' ? halfWidth / HALF_WIDTH_90 : halfWidth / (0.9 * Math.sqrt(3));
}

/** Half-width that holds 90 % of a normal spread of this standard deviation. */
export function halfWidthOf(deviation: number): number {
  return deviation * HALF_WIDTH_90;
}

/** How much one input adds to the doubt of a figure. */
export interface Contribution {
  readonly input: string;
  /** d(figure)/d(input). */
  readonly slope: number;
  /** 90 % half-width that this input alone gives the figure: what would go if it were known for certain. */
  readonly halfWidth: number;
  /** Of the whole variance, 0 to 1. Shares make up the whole where inputs are independent; where they hang together (`tied`) they overlap. */
  readonly share: number;
}

/** How a figure moves with one input. */
export interface SpreadPart {
  readonly input: UncertainInput;
  /** d(figure)/d(input). */
  readonly slope: number;
}

/** The ± of a figure, 90 % half-width, and what it is made of, the greatest first. */
export interface Spread {
  readonly plusMinus: number;
  readonly contributions: readonly Contribution[];
}

/** The ± of a sum of parts, an input coming once; of what adds nothing nothing is told. */
export function spreadOf(parts: readonly SpreadPart[]): Spread {
  return {
    plusMinus: halfWidthOfSum(parts),
    contributions: contributionsOf(parts).filter((part) => part.halfWidth > 0),
  };
}

/** The ± of one figure: 90 % half-width. `place` of `count` figures for each direction. */
export function halfWidthAt(
  directions: readonly Direction[],
  derivatives: Float64Array,
  place: number,
  count: number,
): number {
  // Asked for each figure of each load: with nothing tied the sum is taken as it stands, without a list of parts.
  let variance = 0;
  for (let j = 0; j < directions.length; j += 1) {
    const { deviation, tied } = directions[j]!.input;
    if (tied !== undefined) return halfWidthOfSum(partsAt(directions, derivatives, place, count));
    const part = derivatives[count * j + place]! * deviation;
    variance += part * part;
  }
  return halfWidthOf(Math.sqrt(variance));
}

/** What makes up the ± of one figure, the greatest first. */
export function contributionsAt(
  directions: readonly Direction[],
  derivatives: Float64Array,
  place: number,
  count: number,
): readonly Contribution[] {
  return contributionsOf(partsAt(directions, derivatives, place, count));
}

/** part of j = |(g − KᵀK g)_j|/√(1 − |K_j|²),  g_j = slope·σ, K_j = `tied` of j, or nothing. */
function contributionsOf(parts: readonly SpreadPart[]): readonly Contribution[] {
  const known = knownOf(parts);
  const whole = halfWidthOf(Math.sqrt(varianceOf(parts, known)));
  return parts
    .map(({ input, slope }) => {
      const halfWidth = halfWidthOf(alone(input, slope, known));
      return { input: input.name, slope, halfWidth, share: whole > 0 ? (halfWidth / whole) ** 2 : 0 };
    })
    .sort((a, b) => b.halfWidth - a.halfWidth);
}

function halfWidthOfSum(parts: readonly SpreadPart[]): number {
  return halfWidthOf(Math.sqrt(varianceOf(parts, knownOf(parts))));
}

function partsAt(
  directions: readonly Direction[],
  derivatives: Float64Array,
  place: number,
  count: number,
): readonly SpreadPart[] {
  return directions.map(({ input }, j) => ({ input, slope: derivatives[count * j + place]! }));
}

/** K g: what readings know of the figure already; null where nothing ties the inputs together. */
function knownOf(parts: readonly SpreadPart[]): Float64Array | null {
  const length = parts.find(({ input }) => input.tied !== undefined)?.input.tied?.length;
  if (length === undefined) return null;
  const known = new Float64Array(length);
  for (const { input, slope } of parts) {
    if (input.tied === undefined) continue;
    const part = slope * input.deviation;
    for (let i = 0; i < length; i += 1) known[i] = known[i]! + input.tied[i]! * part;
  }
  return known;
}

/** |g|² − |K g|². */
function varianceOf(parts: readonly SpreadPart[], known: Float64Array | null): number {
  let variance = 0;
  for (const { input, slope } of parts) variance += (slope * input.deviation) ** 2;
  if (known === null) return variance;
  for (const each of known) variance -= each * each;
  // What readings know is never more than there was to know, but for rounding.
  return Math.max(0, variance);
}

/** Deviation that knowing this input would take away. */
function alone({ deviation, tied }: UncertainInput, slope: number, known: Float64Array | null): number {
  let part = slope * deviation;
  if (tied === undefined || known === null) return Math.abs(part);
  let left = 1;
  for (let i = 0; i < tied.length; i += 1) {
    part -= tied[i]! * known[i]!;
    left -= tied[i]! * tied[i]!;
  }
  return left > 0 ? Math.abs(part) / Math.sqrt(left) : 0;
}
