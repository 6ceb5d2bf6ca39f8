/**
 * NIST Statistical Reference Datasets, linear regression, Norris (a line) and Pontius (a parabola): measured data with certified
 * estimates and standard deviations. Data and origin in nist-linear-regression.json.
 */
import { polynomialFit } from '@sagwright/model/numerics/polynomialFit';
import { describe, expect, test } from 'vitest';
import reference from './nist-linear-regression.json' with { type: 'json' };

/**
 * Printed to 15 digits. The constant of Pontius is the difference of terms 3000 times as great, so rounding of 1e-16 may
 * grow to some 1e-12; a covariance takes it twice.
 */
const relative = 2e-12;

test('the reference has its two sets', () => {
  expect(reference.cases.map(({ name, x, y }) => [name, x.length, y.length])).toEqual([
    ['Norris', 36, 36],
    ['Pontius', 40, 40],
  ]);
});

describe.each(reference.cases)('$name', ({ x, y, order, estimate, deviation, residualDeviation }) => {
  const fit = polynomialFit(
    x,
    y,
    x.map(() => 1),
    order,
  );
  const variance = fit.misfit / (x.length - order - 1);

  test('has the certified estimates', () => {
    const worst = Math.max(...estimate.map((value, i) => Math.abs(fit.coefficients[i]! / value - 1)));
    expect(fit.coefficients).toHaveLength(estimate.length);
    expect(worst).toBeLessThan(relative);
  });

  test('has the certified standard deviations', () => {
    const own = deviation.map((_, i) => Math.sqrt(variance * fit.covariance[(order + 2) * i]!));
    expect(Math.max(...deviation.map((value, i) => Math.abs(own[i]! / value - 1)))).toBeLessThan(relative);
    expect(Math.abs(Math.sqrt(variance) / residualDeviation - 1)).toBeLessThan(relative);
  });
});
