import fc from 'fast-check';
import { expect, test } from 'vitest';
import { between } from '../testing/arbitraryStrut.ts';
import { leastSquares } from './leastSquares.ts';

const number = between(-3, 3);
const system = fc
  .record({ columns: fc.integer({ min: 1, max: 5 }), more: fc.integer({ min: 0, max: 4 }) })
  .chain(({ columns, more }) => {
    const rows = columns + more;
    return fc.record({
      a: fc.array(fc.array(number, { minLength: columns, maxLength: columns }), {
        minLength: rows,
        maxLength: rows,
      }),
      b: fc.array(number, { minLength: rows, maxLength: rows }),
    });
  });

test('what is left over stands square on every column', () => {
  fc.assert(
    fc.property(system, ({ a, b }) => {
      const solved = leastSquares(a, b);
      if (solved === null || solved.independence < 1e-3) return;
      const left = a.map((row, i) => b[i]! - row.reduce((sum, each, j) => sum + each * solved.x[j]!, 0));
      const size = Math.max(1, ...solved.x.map(Math.abs));
      for (let j = 0; j < a[0]!.length; j += 1) {
        const along = a.reduce((sum, row, i) => sum + row[j]! * left[i]!, 0);
        expect(Math.abs(along)).toBeLessThan(1e-10 * size);
      }
    }),
    { seed: 841, numRuns: 500 },
  );
});

test('the gain says how the solution follows each right side', () => {
  // A mean of three, and a line through (0, 1), (1, 2), (2, 4): slope 1.5, start 5/6.
  expect(leastSquares([[1], [1], [1]], [1, 2, 6])?.x[0]).toBeCloseTo(3, 12);
  const line = leastSquares(
    [
      [1, 0],
      [1, 1],
      [1, 2],
    ],
    [1, 2, 4],
  );
  expect(line?.x[0]).toBeCloseTo(5 / 6, 12);
  expect(line?.x[1]).toBeCloseTo(1.5, 12);
  const slope = line?.gain[1] ?? [];
  [-0.5, 0, 0.5].forEach((each, i) => {
    expect(slope[i]).toBeCloseTo(each, 12);
  });
});

test('columns that say the same do not tell what each is worth', () => {
  expect(
    leastSquares(
      [
        [1, 2],
        [2, 4],
        [3, 6],
      ],
      [1, 1, 1],
    ),
  ).toBeNull();
  expect(
    leastSquares(
      [
        [1, 0],
        [2, 0],
      ],
      [1, 1],
    ),
  ).toBeNull();
  expect(leastSquares([[1, 2]], [1])).toBeNull();
  expect(leastSquares([], [])).toBeNull();
});
