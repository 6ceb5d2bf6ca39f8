import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { polynomialFit } from './polynomialFit.ts';
import { seededRandom } from './random.ts';

const number = fc.double({ min: -5, max: 5, noNaN: true });
const places = fc
  .array(fc.integer({ min: -20, max: 20 }), { minLength: 3, maxLength: 12 })
  .filter((x) => new Set(x).size >= 3);

describe('polynomial fit', () => {
  test('finds the parabola that its points lie on, whatever their weights', () => {
    fc.assert(
      fc.property(
        places,
        number,
        number,
        number,
        fc.infiniteStream(fc.double({ min: 0.1, max: 10, noNaN: true })),
        (x, c0, c1, c2, stream) => {
          const y = x.map((place) => c0 + c1 * place + c2 * place * place);
          const fit = polynomialFit(x, y, [...stream.take(x.length)], 2);
          for (const place of x) {
            const [f0, f1, f2] = fit.coefficients;
            // Values reach 2000; a few roundings of that, times the spread of the weights.
            expect(
              Math.abs(f0! + f1! * place + f2! * place * place - (c0 + c1 * place + c2 * place * place)),
            ).toBeLessThan(1e-8);
          }
        },
      ),
      { seed: 51 },
    );
  });

  test('through three points has the covariance of the three values it goes through', () => {
    // Lagrange through −1, 0, 1: c0 = y0, c1 = (y+ − y−)/2, c2 = (y+ + y−)/2 − y0, each y with variance 4.
    const { covariance } = polynomialFit([-1, 0, 1], [2, 3, 5], [1 / 4, 1 / 4, 1 / 4], 2);
    const expected = [4, 0, -4, 0, 2, 0, -4, 0, 6];
    expected.forEach((value, i) => {
      expect(covariance[i]).toBeCloseTo(value, 12);
    });
  });

  test('keeps its digits far from zero', () => {
    // y = (x − 1000)² at x = 1000 … 1004: c0 = 10^6, c1 = −2000, c2 = 1.
    const x = [1000, 1001, 1002, 1003, 1004];
    const fit = polynomialFit(x, [0, 1, 4, 9, 16], [1, 1, 1, 1, 1], 2);
    expect(fit.coefficients[0]! / 1e6).toBeCloseTo(1, 9);
    expect(fit.coefficients[1]! / -2000).toBeCloseTo(1, 9);
    expect(fit.coefficients[2]).toBeCloseTo(1, 9);
  });

  test('scatters as its covariance says', () => {
    const { normal } = seededRandom(52);
    const x = [0, 0.02, 0.04, 0.06, 0.08, 0.1];
    const sigma = [0.5e-3, 0.5e-3, 1e-3, 0.5e-3, 0.5e-3, 2e-3];
    const weight = sigma.map((s) => 1 / s ** 2);
    const count = 20_000;
    let square = 0;
    let cross = 0;
    for (let i = 0; i < count; i += 1) {
      const [, c1, c2] = polynomialFit(
        x,
        sigma.map((s) => s * normal()),
        weight,
        2,
      ).coefficients;
      square += (c1! * c1!) / count;
      cross += (c1! * c2!) / count;
    }
    const { covariance } = polynomialFit(x, x, weight, 2);
    // A variance from `count` draws is good to √(2/count) = 1 %; four of these.
    expect(Math.abs(square / covariance[4]! - 1)).toBeLessThan(0.04);
    expect(Math.abs(cross / covariance[5]! - 1)).toBeLessThan(0.04);
  });

  test('follows each point by its leverage: left out, it is off by residual/(1 − leverage)', () => {
    const [x, y, weight] = [
      [0, 1, 2, 4, 7, 9],
      [1, 3, 2, 6, 5, 8],
      [1, 2, 1, 0.5, 1, 3],
    ];
    const { residuals, leverages } = polynomialFit(x, y, weight, 2);
    // As many as the coefficients: the trace of the projection.
    expect(leverages.reduce((sum, h) => sum + h, 0)).toBeCloseTo(3, 12);
    x.forEach((place, i) => {
      const without = (list: readonly number[]): number[] => list.filter((_, j) => j !== i);
      const [c0, c1, c2] = polynomialFit(without(x), without(y), without(weight), 2).coefficients;
      const off = y[i]! - (c0! + c1! * place + c2! * place * place);
      expect(residuals[i]! / (1 - leverages[i]!)).toBeCloseTo(off, 9);
    });
  });

  test('refuses what it cannot fit', () => {
    expect(() => polynomialFit([0, 1, 1], [0, 1, 2], [1, 1, 1], 2)).toThrow('2 different x');
    expect(() => polynomialFit([0, 1, 2], [0, 1], [1, 1, 1], 2)).toThrow(RangeError);
    expect(() => polynomialFit([0, 1, 2], [0, 1, 2], [1, 0, 1], 2)).toThrow('weight 0');
    expect(() => polynomialFit([0, 1, 2], [0, Number.NaN, 2], [1, 1, 1], 2)).toThrow(RangeError);
  });
});
