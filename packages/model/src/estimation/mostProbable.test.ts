import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solveLinear } from '../numerics/solveLinear.ts';
import type { Evidence } from './evidence.ts';
import { type Estimate, mostProbable, type Predict, type Unknowns } from './mostProbable.ts';

const is = (value: number, deviation: number): Evidence => ({ says: 'is', value, deviation });

function found(evidence: readonly Evidence[], predict: Predict, start: Unknowns): Estimate {
  const answer = mostProbable(evidence, predict, start);
  if (answer.kind !== 'estimate') throw new Error(answer.kind);
  return answer.estimate;
}

/** Figures that are straight lines in the unknowns. */
function straight(
  byKnown: readonly (readonly number[])[],
  byFree: readonly (readonly number[])[],
  offset: readonly number[],
): Predict {
  return ({ known, free }) => ({
    figures: offset.map(
      (each, i) =>
        each +
        known.reduce((sum, u, j) => sum + u * byKnown[i]![j]!, 0) +
        free.reduce((sum, c, j) => sum + c * byFree[i]![j]!, 0),
    ),
    byKnown,
    byFree,
  });
}

test('one reading and one thing known meet at their weighted mean', () => {
  // Known: 0 ± 1; read: 3 ± 2. Weights 1 and 1/4: mean 3·(1/4)/(5/4) = 0.6, variance 1/(5/4) = 0.8; misfit 9/(1 + 4).
  const { unknowns, ties, misfit, surprise } = found([is(3, 2)], straight([[1]], [[]], [0]), {
    known: [0],
    free: [],
  });
  expect(unknowns.known[0]).toBeCloseTo(0.6, 12);
  expect(1 - ties[0]![0]! ** 2).toBeCloseTo(0.8, 12);
  expect(misfit).toBeCloseTo(1.8, 12);
  expect(surprise[0]! ** 2).toBeCloseTo(1.8, 12);
});

const count = { readings: 5, known: 3, free: 2 };
const numbers = (length: number) =>
  fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: length, maxLength: length });
const rowsOf = (length: number) =>
  fc.array(numbers(length), { minLength: count.readings, maxLength: count.readings });
const problem = fc
  .record({
    byKnown: rowsOf(count.known),
    byFree: rowsOf(count.free),
    read: numbers(count.readings),
    deviations: fc.array(fc.double({ min: 0.2, max: 3, noNaN: true }), {
      minLength: count.readings,
      maxLength: count.readings,
    }),
  })
  // Free unknowns that readings hardly tell apart make both ways round off.
  .filter(({ byFree }) => {
    const product = (j: number, k: number): number => byFree.reduce((sum, row) => sum + row[j]! * row[k]!, 0);
    const [first, second, both] = [product(0, 0), product(1, 1), product(0, 1)];
    return Math.min(first, second) > 0.1 && both ** 2 < 0.99 * first * second;
  });

describe('against the long form: all rows stacked, normal equations', () => {
  test('unknowns, covariance and misfit are the same', () => {
    fc.assert(
      fc.property(problem, ({ byKnown, byFree, read, deviations }) => {
        const estimate = found(
          read.map((value, i) => is(value, deviations[i]!)),
          straight(byKnown, byFree, [0, 0, 0, 0, 0]),
          { known: [0, 0, 0], free: [0, 0] },
        );
        const size = count.known + count.free;
        const stacked = [
          ...byKnown.map((row, i) => [...row, ...byFree[i]!].map((each) => each / deviations[i]!)),
          ...[0, 1, 2].map((j) => Array.from({ length: size }, (_, k) => (k === j ? 1 : 0))),
        ];
        const right = [...read.map((value, i) => value / deviations[i]!), 0, 0, 0];
        const normal = (): number[][] =>
          Array.from({ length: size }, (_, j) =>
            Array.from({ length: size }, (__, k) => stacked.reduce((sum, row) => sum + row[j]! * row[k]!, 0)),
          );
        const solution = solveLinear(
          normal(),
          Array.from({ length: size }, (_, j) =>
            stacked.reduce((sum, row, i) => sum + row[j]! * right[i]!, 0),
          ),
        )!;
        const ours = [...estimate.unknowns.known, ...estimate.unknowns.free];
        for (let j = 0; j < size; j += 1) {
          expect(ours[j]).toBeCloseTo(solution[j]!, 6);
          const unit = Array.from({ length: size }, (_, k) => (k === j ? 1 : 0));
          const variance = solveLinear(normal(), unit)![j]!;
          const own =
            j < count.known
              ? 1 - estimate.ties.reduce((sum, row) => sum + row[j]! ** 2, 0)
              : estimate.freeCovariance[j - count.known]![j - count.known]!;
          expect(own).toBeCloseTo(variance, 6);
        }
        const misfit = stacked.reduce(
          (sum, row, i) =>
            sum + (right[i]! - row.reduce((inner, each, j) => inner + each * solution[j]!, 0)) ** 2,
          0,
        );
        expect(estimate.misfit).toBeCloseTo(misfit, 6);
        expect(estimate.surprise.reduce((sum, each) => sum + each * each, 0)).toBeCloseTo(misfit, 6);
      }),
    );
  });
});

test('a reading that was cut off and is met says next to nothing; one that is missed pulls towards it', () => {
  const cut = (value: number): Evidence => ({ says: 'at least', value, deviation: 1 });
  const at = (evidence: Evidence): number =>
    found([evidence], straight([[1]], [[]], [0]), { known: [0], free: [] }).unknowns.known[0]!;
  expect(Math.abs(at(cut(-8)))).toBeLessThan(1e-10);
  // At the answer the pull of what was known is that of the reading: u = φ(t)/Φ(t) with t = u − 2, so u·Φ(u − 2) = φ(u − 2).
  const pulled = at(cut(2));
  const step = 1e-5;
  const misfitAt = (u: number): number => {
    // Φ by summing the density from far below: independent of the law in use.
    let below = 0;
    for (let t = u - 12; t < u - 2; t += step)
      below += (step * Math.exp(-0.5 * (t + step / 2) ** 2)) / Math.sqrt(2 * Math.PI);
    return u * u - 2 * Math.log(below);
  };
  expect(misfitAt(pulled)).toBeLessThan(misfitAt(pulled - 0.01));
  expect(misfitAt(pulled)).toBeLessThan(misfitAt(pulled + 0.01));
  const other = found([{ says: 'at most', value: -2, deviation: 1 }], straight([[1]], [[]], [0]), {
    known: [0],
    free: [],
  });
  expect(other.unknowns.known[0]).toBeCloseTo(-pulled, 9);
});

test('free unknowns that readings do not tell apart are told as such', () => {
  const answer = mostProbable(
    [is(1, 1), is(2, 1)],
    straight(
      [[], []],
      [
        [1, 1],
        [2, 2],
      ],
      [0, 0],
    ),
    {
      known: [],
      free: [0, 0],
    },
  );
  expect(answer.kind).toBe('not told');
});

test('where nothing can be predicted nothing is found', () => {
  expect(mostProbable([is(1, 1)], () => null, { known: [0], free: [] })).toEqual({
    kind: 'not found',
    misfit: null,
  });
});

test('a deviation of nothing is refused', () => {
  expect(() => mostProbable([is(1, 0)], straight([[1]], [[]], [0]), { known: [0], free: [] })).toThrow(
    'must be > 0',
  );
});
