import { dot } from '../numerics/dot.ts';
import type { Estimate } from './mostProbable.ts';

/** Variance of a figure after the readings: |g|² − |K g|²; g are its slopes by each known unknown, in deviations. */
export function varianceOf(estimate: Pick<Estimate, 'ties'>, slopes: readonly number[]): number {
  return covarianceOf(estimate, slopes, slopes);
}

/** Covariance of two figures after the readings. */
export function covarianceOf(
  { ties }: Pick<Estimate, 'ties'>,
  one: readonly number[],
  other: readonly number[],
): number {
  return dot(one, other) - ties.reduce((sum, row) => sum + dot(row, one) * dot(row, other), 0);
}
