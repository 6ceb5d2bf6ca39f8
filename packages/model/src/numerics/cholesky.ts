/**
 * Lower triangle L of a symmetric matrix A = L Lᵀ, by rows (row i has i + 1 numbers). Null where A is not positive.
 * A  rows; only what lies on and below the diagonal is read
 * Source: Cholesky's factorisation (any textbook of numerical mathematics).
 */
export function cholesky(a: readonly (readonly number[])[]): number[][] | null {
  const lower: number[][] = [];
  for (let i = 0; i < a.length; i += 1) {
    const row: number[] = [];
    for (let j = 0; j <= i; j += 1) {
      const other = j === i ? row : lower[j]!;
      let left = a[i]![j]!;
      for (let k = 0; k < j; k += 1) left -= row[k]! * other[k]!;
      if (j < i) row.push(left / other[j]!);
      else if (left > 0) row.push(Math.sqrt(left));
      else return null;
    }
    lower.push(row);
  }
  return lower;
}

/** y of L y = b, from the first on. */
export function forward(lower: readonly (readonly number[])[], b: readonly number[]): number[] {
  const y: number[] = [];
  for (let i = 0; i < b.length; i += 1) {
    let left = b[i]!;
    for (let k = 0; k < i; k += 1) left -= lower[i]![k]! * y[k]!;
    y.push(left / lower[i]![i]!);
  }
  return y;
}

/** x of Lᵀ x = y, from the last on. */
export function backward(lower: readonly (readonly number[])[], y: readonly number[]): number[] {
  const x = [...y];
  for (let i = x.length - 1; i >= 0; i -= 1) {
    for (let k = i + 1; k < x.length; k += 1) x[i] = x[i]! - lower[k]![i]! * x[k]!;
    x[i] = x[i]! / lower[i]![i]!;
  }
  return x;
}
