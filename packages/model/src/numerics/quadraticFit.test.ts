import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { quadraticFit } from './quadraticFit.ts';
import { seededRandom } from './random.ts';

const number = fc.double({ min: -5, max: 5, noNaN: true });
const places = fc
  .array(fc.integer({ min: -20, max: 20 }), { minLength: 3, maxLength: 12 })
  .filter((x) => new Set(x).size >= 3);

describe('quadratic fit', () => {
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
          const fit = quadraticFit(x, y, [...stream.take(x.length)]);
          for (const place of x) {
            const [f0, f1, f2] = fit.coefficients;
            // Values reach 2000; a few roundings of that, times the spread of the weights.
            expect(
              Math.abs(f0 + f1 * place + f2 * place * place - (c0 + c1 * place + c2 * place * place)),
            ).toBeLessThan(1e-8);
          }
        },
      ),
      { seed: 51 },
    );
  });

  test('through three points has the covariance of the three values it goes through', () => {
    // Lagrange through −1, 0, 1: c0 = y0, c1 = (y+ − y−)/2, c2 = (y+ + y−)/2 − y0, each y with variance 4.
    const { covariance } = quadraticFit([-1, 0, 1], [2, 3, 5], [1 / 4, 1 / 4, 1 / 4]);
    const expected = [4, 0, -4, 0, 2, 0, -4, 0, 6];
    expected.forEach((value, i) => {
      expect(covariance[i]).toBeCloseTo(value, 12);
    });
  });

  test('keeps its digits far from zero', () => {
    // y = (x − 1000)² at x = 1000 … 1004: c0 = 10^6, c1 = −2000, c2 = 1.
    const x = [1000, 1001, 1002, 1003, 1004];
    const fit = quadraticFit(x, [0, 1, 4, 9, 16], [1, 1, 1, 1, 1]);
    expect(fit.coefficients[0] / 1e6).toBeCloseTo(1, 9);
    expect(fit.coefficients[1] / -2000).toBeCloseTo(1, 9);
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
      const [, c1, c2] = quadraticFit(
        x,
        sigma.map((s) => s * normal()),
        weight,
      ).coefficients;
      square += (c1 * c1) / count;
      cross += (c1 * c2) / count;
    }
    const { covariance } = quadraticFit(x, x, weight);
    // A variance from `count` draws is good to √(2/count) = 1 %; four of these.
    expect(Math.abs(square / covariance[4]! - 1)).toBeLessThan(0.04);
    expect(Math.abs(cross / covariance[5]! - 1)).toBeLessThan(0.04);
  });

  test('refuses what it cannot fit', () => {
    expect(() => quadraticFit([0, 1, 1], [0, 1, 2], [1, 1, 1])).toThrow('2 different x');
    expect(() => quadraticFit([0, 1, 2], [0, 1], [1, 1, 1])).toThrow(RangeError);
    expect(() => quadraticFit([0, 1, 2], [0, 1, 2], [1, 0, 1])).toThrow('weight 0');
    expect(() => quadraticFit([0, 1, 2], [0, Number.NaN, 2], [1, 1, 1])).toThrow(RangeError);
  });
});
