import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Evidence } from './evidence.ts';
import { type Estimate, mostProbable, type Predict } from './mostProbable.ts';
import { type Fault, likeness, suspectsOf } from './suspects.ts';
import { covarianceOf, varianceOf } from './variance.ts';

const slopes = [
  [1, 0.2, 0],
  [1, -0.3, 0.1],
  [0.4, 1, 0],
  [0.1, 1, 0.2],
  [0.9, 0.8, 0],
];
const straight: Predict = ({ known }) => ({
  figures: slopes.map((row) => row.reduce((sum, slope, j) => sum + slope * known[j]!, 0)),
  byKnown: slopes,
  byFree: slopes.map(() => []),
});

function estimated(read: readonly number[], deviation = 0.5): Estimate {
  const evidence = read.map((value): Evidence => ({ says: 'is', value, deviation }));
  const answer = mostProbable(evidence, straight, { known: [0, 0, 0], free: [] });
  if (answer.kind !== 'estimate') throw new Error(answer.kind);
  return answer.estimate;
}

const ofReading = (i: number): Fault => ({ name: `reading ${i}`, readings: [[i, 1]], known: [] });
const ofKnown = (j: number): Fault => ({ name: `known ${j}`, readings: [], known: [[j, 1]] });
const all = [...slopes.map((_, i) => ofReading(i)), ...[0, 1, 2].map(ofKnown)];

describe('a fault by itself', () => {
  test('is found with its size, and is the worst', () => {
    for (const fault of all) {
      const shift = 7;
      const off = slopes.map((row, i) => {
        const own = fault.readings.some(([at]) => at === i) ? shift * 0.5 : 0;
        return fault.known.reduce((sum, [j, by]) => sum + row[j]! * by * shift, own);
      });
      const found = suspectsOf(estimated(off), [fault])[0];
      // The third unknown shows in two readings and faintly: √(0.1² + 0.2²)/0.5 of a deviation at most.
      expect(found!.size).toBeCloseTo(shift, 9);
      const worst = suspectsOf(estimated(off), all)[0]!;
      expect(worst.fault.name).toBe(fault.name);
    }
  });

  test('of a sound set is a standard normal number', () => {
    // Scores are linear in what is read: with readings and unknowns drawn, score = Σ w_i e_i, e of covariance S. Its variance is
    // that of the sum over unit shifts of each independent part: readings (σ each) and unknowns (1 each).
    const fault = ofReading(2);
    const scoreOf = (read: readonly number[]): number => suspectsOf(estimated(read), [fault])[0]!.score;
    const ofReadings = slopes.map((_, i) => scoreOf(slopes.map((__, k) => (k === i ? 0.5 : 0))));
    const ofUnknowns = [0, 1, 2].map((j) => scoreOf(slopes.map((row) => row[j]!)));
    const variance = [...ofReadings, ...ofUnknowns].reduce((sum, each) => sum + each * each, 0);
    expect(variance).toBeCloseTo(1, 9);
  });
});

test('faults that do the same to the readings are alike, and a fault is like itself', () => {
  const estimate = estimated([0, 0, 0, 0, 0]);
  expect(likeness(estimate, ofKnown(0), ofKnown(0))).toBeCloseTo(1, 12);
  const twice: Fault = { name: 'the other way', readings: [], known: [[0, -2]] };
  expect(likeness(estimate, ofKnown(0), twice)).toBeCloseTo(-1, 12);
  expect(Math.abs(likeness(estimate, ofReading(0), ofReading(2)))).toBeLessThan(0.9);
});

test('a fault that no reading shows is not told of', () => {
  const unseen: Fault = { name: 'nowhere', readings: [], known: [] };
  expect(suspectsOf(estimated([3, 0, 0, 0, 0]), [unseen])).toEqual([]);
});

describe('the doubt of a figure after readings', () => {
  const figure = fc.tuple(
    fc.double({ min: -3, max: 3, noNaN: true }),
    fc.double({ min: -3, max: 3, noNaN: true }),
    fc.double({ min: -3, max: 3, noNaN: true }),
  );

  test('is never more than before, and never less than nothing', () => {
    const estimate = estimated([1, 0, 2, 0, 1]);
    fc.assert(
      fc.property(figure, (g) => {
        const before = g.reduce((sum, each) => sum + each * each, 0);
        const after = varianceOf(estimate, g);
        expect(after).toBeLessThanOrEqual(before * (1 + 1e-12));
        expect(after).toBeGreaterThanOrEqual(-1e-12 * before);
        expect(covarianceOf(estimate, g, g)).toBeCloseTo(after, 12);
      }),
    );
  });

  test('one reading more never widens it', () => {
    const whole = estimated([1, 0, 2, 0, 1]);
    for (let left = 0; left < slopes.length; left += 1) {
      const kept = slopes.filter((_, i) => i !== left);
      const answer = mostProbable(
        kept.map((): Evidence => ({ says: 'is', value: 0, deviation: 0.5 })),
        ({ known }) => ({
          figures: kept.map((row) => row.reduce((sum, slope, j) => sum + slope * known[j]!, 0)),
          byKnown: kept,
          byFree: kept.map(() => []),
        }),
        { known: [0, 0, 0], free: [] },
      );
      if (answer.kind !== 'estimate') throw new Error(answer.kind);
      fc.assert(
        fc.property(figure, (g) => {
          expect(varianceOf(whole, g)).toBeLessThanOrEqual(varianceOf(answer.estimate, g) + 1e-12);
        }),
      );
    }
  });
});
