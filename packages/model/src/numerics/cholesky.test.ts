import fc from 'fast-check';
import { expect, test } from 'vitest';
import { backward, cholesky, forward } from './cholesky.ts';

const rows = fc.integer({ min: 1, max: 6 }).chain((count) =>
  fc.array(fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: count, maxLength: count }), {
    minLength: count,
    maxLength: count,
  }),
);

/** B Bᵀ + 1: positive whatever B is. */
function positive(b: readonly (readonly number[])[]): number[][] {
  return b.map((row, i) =>
    b.map((other, j) => row.reduce((sum, each, k) => sum + each * other[k]!, i === j ? 1 : 0)),
  );
}

test('the triangle times itself is the matrix, and what is solved by it solves the matrix', () => {
  fc.assert(
    fc.property(rows, (b) => {
      const a = positive(b);
      const lower = cholesky(a)!;
      const wanted = a.map((_, i) => i + 1);
      const x = backward(lower, forward(lower, wanted));
      for (let i = 0; i < a.length; i += 1) {
        const again = a[i]!.reduce((sum, each, j) => sum + each * x[j]!, 0);
        expect(again).toBeCloseTo(wanted[i]!, 9);
        for (let j = 0; j <= i; j += 1) {
          const product = lower[j]!.reduce((sum, each, k) => sum + each * lower[i]![k]!, 0);
          expect(product).toBeCloseTo(a[i]![j]!, 10);
        }
      }
    }),
  );
});

test('a matrix that is not positive has none', () => {
  expect(
    cholesky([
      [1, 2],
      [2, 1],
    ]),
  ).toBeNull();
});
