import { describe, expect, test } from 'vitest';
import { seededRandom } from './random.ts';

const count = 200_000;

function moments(draw: () => number): { mean: number; variance: number; fourth: number } {
  let [one, two, four] = [0, 0, 0];
  for (let i = 0; i < count; i += 1) {
    const value = draw();
    one += value;
    two += value * value;
    four += value ** 4;
  }
  return { mean: one / count, variance: two / count - (one / count) ** 2, fourth: four / count };
}

describe('seeded random numbers', () => {
  test('are the same for the same seed, others for another', () => {
    const [one, again, other] = [seededRandom(7), seededRandom(7), seededRandom(8)];
    const draws = (random: typeof one) =>
      Array.from({ length: 6 }, () => [random.uniform(), random.normal()]);
    const first = draws(one);
    expect(draws(again)).toEqual(first);
    expect(draws(other)).not.toEqual(first);
  });

  test('uniform: within 0 and 1, mean 1/2 and variance 1/12', () => {
    const { uniform } = seededRandom(1);
    const { mean, variance } = moments(() => {
      const u = uniform();
      if (!(u >= 0 && u < 1)) throw new Error(`uniform gave ${u}`);
      return u;
    });
    // Four standard errors: 4 · √(1/12/count) for the mean, 4 · √(1/180/count) for the variance.
    expect(Math.abs(mean - 1 / 2)).toBeLessThan(4 * Math.sqrt(1 / 12 / count));
    expect(Math.abs(variance - 1 / 12)).toBeLessThan(4 * Math.sqrt(1 / 180 / count));
  });

  test('uniform: all sixteenths as often', () => {
    const { uniform } = seededRandom(2);
    const hits = new Array<number>(16).fill(0);
    for (let i = 0; i < count; i += 1) hits[Math.floor(uniform() * 16)]! += 1;
    const chiSquare = hits.reduce((sum, n) => sum + (n - count / 16) ** 2 / (count / 16), 0);
    // Chi-square with 15 degrees of freedom passes 37.70 once in 1000 (any table).
    expect(chiSquare).toBeLessThan(37.7);
  });

  test('normal: mean 0, variance 1, fourth moment 3, and no tie from one draw to the next', () => {
    const { normal } = seededRandom(3);
    let before = 0;
    let product = 0;
    const { mean, variance, fourth } = moments(() => {
      const value = normal();
      product += value * before;
      before = value;
      return value;
    });
    // Four standard errors each: variances of the estimates 1, 2, 96 and 1 over the count.
    expect(Math.abs(mean)).toBeLessThan(4 * Math.sqrt(1 / count));
    expect(Math.abs(variance - 1)).toBeLessThan(4 * Math.sqrt(2 / count));
    expect(Math.abs(fourth - 3)).toBeLessThan(4 * Math.sqrt(96 / count));
    expect(Math.abs(product / count)).toBeLessThan(4 * Math.sqrt(1 / count));
  });

  test('normal: 90 % lie within 1.645', () => {
    const { normal } = seededRandom(4);
    let within = 0;
    for (let i = 0; i < count; i += 1) if (Math.abs(normal()) < 1.6448536) within += 1;
    expect(Math.abs(within / count - 0.9)).toBeLessThan(4 * Math.sqrt((0.9 * 0.1) / count));
  });

  test('neighbouring seeds do not follow each other', () => {
    const sums = Array.from({ length: 1000 }, (_, seed) => seededRandom(seed).uniform());
    const mean = sums.reduce((sum, u) => sum + u, 0) / sums.length;
    const tie =
      sums.slice(1).reduce((sum, u, i) => sum + (u - 0.5) * (sums[i]! - 0.5), 0) / (sums.length - 1);
    expect(Math.abs(mean - 0.5)).toBeLessThan(4 * Math.sqrt(1 / 12 / 1000));
    expect(Math.abs(tie)).toBeLessThan((4 / 12) * Math.sqrt(1 / 999));
  });

  test('a seed that is no whole number of 32 bits is refused', () => {
    for (const seed of [-1, 0.5, 2 ** 32, Number.NaN]) expect(() => seededRandom(seed)).toThrow(RangeError);
  });
});
