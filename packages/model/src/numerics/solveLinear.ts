/**
 * Solves A x = b by elimination with the largest pivot of each column, for a handful of unknowns.
 * A  rows;  both are overwritten, x is returned. Null where a column has nothing left: the rows depend on one another.
 * Source: Gaussian elimination with partial pivoting (any textbook of numerical mathematics).
 */
export function solveLinear(rows: number[][], b: number[]): number[] | null {
  const count = b.length;
  for (let column = 0; column < count; column += 1) {
    let best = column;
    for (let i = column + 1; i < count; i += 1) {
      if (Math.abs(rows[i]![column]!) > Math.abs(rows[best]![column]!)) best = i;
    }
    [rows[column], rows[best]] = [rows[best]!, rows[column]!];
    [b[column], b[best]] = [b[best]!, b[column]!];
    const pivot = rows[column]![column]!;
    if (!(Math.abs(pivot) > Number.MIN_VALUE)) return null;
    for (let i = column + 1; i < count; i += 1) {
      const share = rows[i]![column]! / pivot;
      for (let k = column; k < count; k += 1) rows[i]![k] = rows[i]![k]! - share * rows[column]![k]!;
      b[i] = b[i]! - share * b[column]!;
    }
  }
  for (let i = count - 1; i >= 0; i -= 1) {
    for (let k = i + 1; k < count; k += 1) b[i] = b[i]! - rows[i]![k]! * b[k]!;
    b[i] = b[i]! / rows[i]![i]!;
  }
  return b;
}
