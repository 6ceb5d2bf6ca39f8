/**
 * NIST Statistical Reference Datasets, nonlinear regression, Misra1a (D. Misra, dental research in monomolecular
 * adsorption, 1978): y = b1·(1 − exp(−b2·x)), both prescribed starts.
 * Certified values as NIST gives them, read in open copies of the set (the page itself was not seen).
 */
import type { Evidence } from '@sagwright/model/estimation/evidence';
import {
  type Estimate,
  mostProbable,
  type Predict,
  type Unknowns,
} from '@sagwright/model/estimation/mostProbable';
import { describe, expect, test } from 'vitest';

const x = [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0];
const y = [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78];
const certified = {
  b1: 2.3894212918e2,
  b2: 5.5015643181e-4,
  deviationB1: 2.7070075241,
  deviationB2: 7.2668688436e-6,
  sumOfSquares: 1.2455138894e-1,
  deviation: 1.018787633e-1,
};

/** The curve and its slopes by b1 and b2. */
function curve(b1: number, b2: number): { figures: number[]; slopes: number[][] } {
  return {
    figures: x.map((each) => b1 * (1 - Math.exp(-b2 * each))),
    slopes: x.map((each) => [1 - Math.exp(-b2 * each), b1 * each * Math.exp(-b2 * each)]),
  };
}

function found(evidence: readonly Evidence[], predict: Predict, start: Unknowns): Estimate {
  const answer = mostProbable(evidence, predict, start);
  if (answer.kind !== 'estimate') throw new Error(answer.kind);
  return answer.estimate;
}

describe.each([{ start: [500, 0.0001] }, { start: [250, 0.0005] }])(
  'with nothing known before, from $start',
  ({ start }) => {
    const evidence = y.map((value): Evidence => ({ says: 'is', value, deviation: 1 }));
    const predict: Predict = ({ free: [b1, b2] }) => {
      const { figures, slopes } = curve(b1!, b2!);
      return { figures, byKnown: x.map(() => []), byFree: slopes };
    };
    const { unknowns, misfit, freedom, freeCovariance } = found(evidence, predict, {
      known: [],
      free: start,
    });
    const variance = misfit / freedom;

    // NIST certifies 11 digits, reached by 500-digit arithmetic; doubles leave 1e-9 of them.
    test('has the certified estimates', () => {
      expect(unknowns.free[0]! / certified.b1).toBeCloseTo(1, 9);
      expect(unknowns.free[1]! / certified.b2).toBeCloseTo(1, 9);
    });

    test('has the certified residual', () => {
      expect(freedom).toBe(12);
      expect(misfit / certified.sumOfSquares).toBeCloseTo(1, 9);
      expect(Math.sqrt(variance) / certified.deviation).toBeCloseTo(1, 9);
    });

    test('has the certified deviations of the estimates', () => {
      expect(Math.sqrt(freeCovariance[0]![0]! * variance) / certified.deviationB1).toBeCloseTo(1, 6);
      expect(Math.sqrt(freeCovariance[1]![1]! * variance) / certified.deviationB2).toBeCloseTo(1, 6);
    });
  },
);

/**
 * The same readings, each ± 0.1, with something known before: b1 230 ± 2, b2 5.6e-4 ± 1e-5 (standard deviations). The values
 * to meet were worked out with SciPy (least_squares, data and what was known stacked), apart from this program.
 */
test('with something known before, stands where another program finds the most probable', () => {
  const before = { b1: 230, b2: 5.6e-4, deviationB1: 2, deviationB2: 1e-5 };
  const evidence = y.map((value): Evidence => ({ says: 'is', value, deviation: 0.1 }));
  const predict: Predict = ({ known: [u1, u2] }) => {
    const { figures, slopes } = curve(
      before.b1 + u1! * before.deviationB1,
      before.b2 + u2! * before.deviationB2,
    );
    const byKnown = slopes.map(([by1, by2]) => [by1! * before.deviationB1, by2! * before.deviationB2]);
    return { figures, byKnown, byFree: x.map(() => []) };
  };
  const { unknowns, ties } = found(evidence, predict, { known: [0, 0], free: [] });
  const left = (j: number): number => Math.sqrt(1 - ties.reduce((sum, row) => sum + row[j]! ** 2, 0));
  // As many digits as the reference was noted with.
  expect(before.b1 + unknowns.known[0]! * before.deviationB1).toBeCloseTo(233.704324, 5);
  expect(before.b2 + unknowns.known[1]! * before.deviationB2).toBeCloseTo(5.6456229e-4, 11);
  expect(left(0) * before.deviationB1).toBeCloseTo(1.434233, 5);
  expect(left(1) * before.deviationB2).toBeCloseTo(4.06116964e-6, 12);
});
