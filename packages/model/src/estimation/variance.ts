import type { Estimate } from './mostProbable.ts';

/** Variance of a figure after the readings: |g|² − |K g|²; g are its slopes by each known unknown, in deviations. */
export function varianceOf({ ties }: Pick<Estimate, 'ties'>, slopes: readonly number[]): number {
  return dot(slopes, slopes) - ties.reduce((sum, row) => sum + dot(row, slopes) ** 2, 0);
}

/** Covariance of two figures after the readings. */
export function covarianceOf(
  { ties }: Pick<Estimate, 'ties'>,
  one: readonly number[],
  other: readonly number[],
): number {
  return dot(one, other) - ties.reduce((sum, row) => sum + dot(row, one) * dot(row, other), 0);
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, each, i) => sum + each * b[i]!, 0);
}
