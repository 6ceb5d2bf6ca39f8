import type { Direction } from './inputs.ts';

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
  /** 90 % half-width that this input alone gives the figure; its share of the whole variance, 0 to 1. */
  readonly halfWidth: number;
  readonly share: number;
}

/** The ± of one figure: 90 % half-width, inputs independent, √Σ(slope·σ)². `place` of `count` figures for each direction. */
export function halfWidthAt(
  directions: readonly Direction[],
  derivatives: Float64Array,
  place: number,
  count: number,
): number {
  let variance = 0;
  for (let j = 0; j < directions.length; j += 1) {
    const part = derivatives[count * j + place]! * directions[j]!.input.deviation;
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
  const parts = directions.map((direction, j) => {
    const slope = derivatives[count * j + place]!;
    return {
      input: direction.input.name,
      slope,
      halfWidth: halfWidthOf(Math.abs(slope) * direction.input.deviation),
    };
  });
  const whole = parts.reduce((sum, part) => sum + part.halfWidth ** 2, 0);
  return parts
    .map((part) => ({ ...part, share: whole > 0 ? part.halfWidth ** 2 / whole : 0 }))
    .sort((a, b) => b.halfWidth - a.halfWidth);
}
