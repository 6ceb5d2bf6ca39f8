import { dot } from './dot.ts';

/** A linear least squares problem solved: the least Σ (b − A x)², and how x follows b. */
export interface LeastSquares {
  readonly x: readonly number[];
  /** x = gain · b: row i, column j is dx_i/db_j. */
  readonly gain: readonly (readonly number[])[];
  /** Least length of a column left by those before it, of unit length itself: near 0, the columns do not hold x. */
  readonly independence: number;
}

/**
 * Least squares by orthogonal columns (modified Gram–Schmidt, each column cleaned twice).
 * rows  of A, at least as many as columns;  b  right side
 *   A D⁻¹ = Q R,  x = D⁻¹ R⁻¹ Qᵀ b        D lengths of the columns
 * Null where the columns depend on one another: nothing then tells x.
 * Source: Å. Björck, Solving linear least squares problems by Gram–Schmidt orthogonalization, BIT 7, 1–21 (1967).
 */
export function leastSquares(
  rows: readonly (readonly number[])[],
  b: readonly number[],
): LeastSquares | null {
  const count = rows[0]?.length ?? 0;
  if (rows.length < count || count === 0) return null;
  const q: number[][] = [];
  const r: number[][] = [];
  const lengths: number[] = [];
  let independence = 1;
  for (let j = 0; j < count; j += 1) {
    const column = rows.map((row) => row[j]!);
    const length = Math.hypot(...column);
    if (!(length > SMALLEST)) return null;
    const left = column.map((each) => each / length);
    const shares = new Array<number>(count).fill(0);
    for (const pass of [0, 1]) {
      for (let k = 0; k < j; k += 1) {
        const share = dot(q[k]!, left);
        shares[k] = (pass === 0 ? 0 : shares[k]!) + share;
        for (let i = 0; i < left.length; i += 1) left[i] = left[i]! - share * q[k]![i]!;
      }
    }
    const remains = Math.hypot(...left);
    independence = Math.min(independence, remains);
    if (!(remains > DEPENDENT)) return null;
    shares[j] = remains;
    q.push(left.map((each) => each / remains));
    r.push(shares);
    lengths.push(length);
  }
  const gain = backSubstituted(q, r, lengths);
  return { x: gain.map((row) => dot(row, b)), gain, independence };
}

/** Squares and inverses of what is smaller leave the range of doubles. */
const SMALLEST = 1e-150;
/** A column of unit length of which less than this is new depends on the others, as far as doubles can tell. */
const DEPENDENT = 1e-12;

/** D⁻¹ R⁻¹ Qᵀ, the last row first; r[j] is the j-th column of R. */
function backSubstituted(
  q: readonly number[][],
  r: readonly number[][],
  lengths: readonly number[],
): number[][] {
  const scaled = q.map((row) => [...row]);
  for (let i = q.length - 1; i >= 0; i -= 1) {
    const row = scaled[i]!;
    for (let k = i + 1; k < q.length; k += 1) {
      for (let j = 0; j < row.length; j += 1) row[j] = row[j]! - r[k]![i]! * scaled[k]![j]!;
    }
    for (let j = 0; j < row.length; j += 1) row[j] = row[j]! / r[i]![i]!;
  }
  return scaled.map((row, i) => row.map((each) => each / lengths[i]!));
}
