/**
 * NumPy, numpy.polyfit with cov='unscaled', an independent weighted fit; beside it the same fit in exact fractions.
 * Versions and the script that made the numbers are in numpy-polyfit.json.
 */
import { polynomialFit } from '@sagwright/model/numerics/polynomialFit';
import { describe, expect, test } from 'vitest';
import reference from './numpy-polyfit.json' with { type: 'json' };

/**
 * Against exact fractions: the fit far from zero has x = 1000 ± 8, so c0 is the difference of numbers (1000/8)² = 16 000
 * times as great, and rounding of 1e-16 may grow to a few 1e-12.
 */
const relativeToExact = 1e-11;
/**
 * Against NumPy: it works in powers of x itself. Far from zero its own distance from the exact fractions is 4e-12 in the
 * coefficients and 1.8e-6 in the covariance, and that distance is what is left between it and us.
 */
const relativeToNumpy = { coefficients: 1e-11, covariance: 1e-5 };

function worst(ours: readonly number[], theirs: readonly number[]): number {
  expect(ours).toHaveLength(theirs.length);
  return Math.max(...theirs.map((value, i) => Math.abs(ours[i]! / value - 1)));
}

test('the reference has its two cases', () => {
  expect(reference.cases).toHaveLength(2);
});

describe.each(reference.cases)('quadratic fit: $name', ({ x, y, sigma, numpy, exact }) => {
  const fit = polynomialFit(
    x,
    y,
    sigma.map((s) => 1 / s ** 2),
    2,
  );

  test('has the coefficients and covariance of exact fractions', () => {
    expect(worst(fit.coefficients, exact.coefficients)).toBeLessThan(relativeToExact);
    expect(worst(fit.covariance, exact.covariance)).toBeLessThan(relativeToExact);
  });

  test('has those of NumPy', () => {
    expect(worst(fit.coefficients, numpy.coefficients)).toBeLessThan(relativeToNumpy.coefficients);
    expect(worst(fit.covariance, numpy.covariance)).toBeLessThan(relativeToNumpy.covariance);
  });
});
