import { describe, expect, test } from 'vitest';
import { parametersOf } from '../statics/parameters.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { directionsOf, type UncertainInput } from './inputs.ts';
import { contributionsAt, deviationOf, HALF_WIDTH_90, halfWidthAt, halfWidthOf, spreadOf } from './spread.ts';

/** Simpson's rule over n pairs of strips: error (b − a) h⁴ f⁗/180. */
function integral(f: (x: number) => number, from: number, to: number, n: number): number {
  const h = (to - from) / (2 * n);
  let sum = f(from) + f(to);
  for (let i = 1; i < 2 * n; i += 1) sum += (i % 2 === 1 ? 4 : 2) * f(from + i * h);
  return (sum * h) / 3;
}

/** Density of the normal law of standard deviation 1. */
function density(x: number): number {
  return Math.exp(-0.5 * x * x) / Math.sqrt(2 * Math.PI);
}

describe('a half-width', () => {
  test('holds 90 % of a normal law with the deviation that it stands for', () => {
    const halfWidth = 0.7;
    const deviation = deviationOf(halfWidth, 'normal');
    // 200 pairs of strips: h = 0.008, f⁗ at most 3/√2π: 4e-11.
    expect(integral(density, -halfWidth / deviation, halfWidth / deviation, 200)).toBeCloseTo(0.9, 9);
  });

  test('holds 90 % of a flat band with the deviation that it stands for', () => {
    const halfWidth = 0.7;
    const deviation = deviationOf(halfWidth, 'rectangular');
    // A flat band of half-width a has the variance ∫ x²/2a = a²/3, and h of it holds h/a.
    const a = deviation * Math.sqrt(3);
    const flat = (x: number): number => (x * x) / (2 * a);
    expect(integral(flat, -a, a, 1)).toBeCloseTo(deviation ** 2, 12);
    expect(halfWidth / a).toBeCloseTo(0.9, 12);
  });

  test('and deviation of a normal law undo each other', () => {
    expect(halfWidthOf(deviationOf(3.2, 'normal'))).toBeCloseTo(3.2, 12);
    expect(halfWidthOf(1)).toBe(HALF_WIDTH_90);
  });
});

describe('the ± of a figure', () => {
  const parameters = parametersOf(levelMachine(plainStrut(40_000, 0.01)));
  const inputs: readonly UncertainInput[] = [
    { name: 'one', deviation: 0.3, moves: [] },
    { name: 'two', deviation: 2, moves: [] },
    { name: 'three', deviation: 0, moves: [] },
  ];
  const directions = directionsOf(parameters, inputs);
  /** Two figures of each input: the second is the one asked for. */
  const derivatives = Float64Array.from([9, 10, 9, -2, 9, 100]);

  test('is the root of the summed squares of what each input gives it', () => {
    // 3, 4 and 0 standard deviations' worth.
    expect(halfWidthAt(directions, derivatives, 1, 2)).toBeCloseTo(5 * HALF_WIDTH_90, 12);
  });

  test('is told by input, the greatest first, with shares that add up to 1', () => {
    const parts = contributionsAt(directions, derivatives, 1, 2);
    expect(parts.map((part) => part.input)).toEqual(['two', 'one', 'three']);
    expect(parts.map((part) => part.slope)).toEqual([-2, 10, 100]);
    expect(parts.map((part) => part.share)).toEqual([
      expect.closeTo(16 / 25, 12),
      expect.closeTo(9 / 25, 12),
      0,
    ]);
    expect(parts[0]!.halfWidth).toBeCloseTo(4 * HALF_WIDTH_90, 12);
  });

  test('has no shares where nothing is uncertain', () => {
    expect(contributionsAt(directions, new Float64Array(6), 1, 2).map((part) => part.share)).toEqual([
      0, 0, 0,
    ]);
  });
});

describe('inputs that readings tied together', () => {
  const input = (name: string, deviation: number, tied: readonly number[]): UncertainInput => ({
    name,
    deviation,
    moves: [],
    tied,
  });

  test('have the ± of their covariance, and each the part that knowing it would take away', () => {
    // One reading of a·x + b·y, x and y of deviation 1, the reading's own σ: K = (a, b)/√(a² + b² + σ²).
    const [a, b, sigma] = [2, 1, 0.5];
    const length = Math.sqrt(a * a + b * b + sigma * sigma);
    const [ka, kb] = [a / length, b / length];
    const parts = [
      { input: input('x', 3, [ka]), slope: 5 / 3 },
      { input: input('y', 0.1, [kb]), slope: -20 },
    ];
    const g = [5, -2];
    const covariance = [
      [1 - ka * ka, -ka * kb],
      [-ka * kb, 1 - kb * kb],
    ];
    const variance = g.reduce(
      (sum, one, i) => g.reduce((inner, other, j) => inner + one * other * covariance[i]![j]!, sum),
      0,
    );
    const { plusMinus, contributions } = spreadOf(parts);
    expect(plusMinus).toBeCloseTo(HALF_WIDTH_90 * Math.sqrt(variance), 12);
    // With x known the variance is g_y²·var(y | x) = g_y²·(C_yy − C_xy²/C_xx).
    const withoutX = g[1]! ** 2 * (covariance[1]![1]! - covariance[0]![1]! ** 2 / covariance[0]![0]!);
    const ofX = contributions.find((each) => each.input === 'x')!;
    expect(ofX.halfWidth).toBeCloseTo(HALF_WIDTH_90 * Math.sqrt(variance - withoutX), 12);
    expect(ofX.share).toBeCloseTo(1 - withoutX / variance, 12);
  });

  test('stand for themselves where nothing ties them', () => {
    const { plusMinus } = spreadOf([
      { input: input('x', 3, [0, 0]), slope: 1 },
      { input: { name: 'y', deviation: 4, moves: [] }, slope: 1 },
    ]);
    expect(plusMinus).toBeCloseTo(HALF_WIDTH_90 * 5, 12);
  });
});
