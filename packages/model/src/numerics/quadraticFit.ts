/** A parabola fitted to measured points. */
export interface QuadraticFit {
  /** c0, c1, c2 of y = c0 + c1 x + c2 x². */
  readonly coefficients: readonly [number, number, number];
  /** Covariance of the three, row by row: [3 i + j] is that of ci and cj. */
  readonly covariance: readonly number[];
}

/**
 * Weighted least squares: c0, c1, c2 with the least Σ w (y − c0 − c1 x − c2 x²)², and their covariance.
 *   t = (x − middle)/halfWidth;  fitted in polynomials of t that are orthogonal over the points, so that no matrix
 *   is inverted:  p0 = 1, p1 = t − α0, p2 = (t − α1) p1 − β;  a_k = Σ w y p_k/Σ w p_k², var a_k = 1/Σ w p_k²
 *   c = M a,  cov c = M diag(var a) Mᵀ
 * weight  1/σ² of each y, > 0; the covariance takes these σ as they are, not scaled to the misfit found
 * Throws RangeError for unequal lengths, fewer than 3 different x, a number not finite, or a weight not above 0.
 * Source: G. E. Forsythe, Generation and use of orthogonal polynomials for data-fitting with a digital computer,
 * J. SIAM 5(2), 74–88 (1957). Checked: checks/numpy-polyfit.test.ts.
 */
export function quadraticFit(
  x: readonly number[],
  y: readonly number[],
  weight: readonly number[],
): QuadraticFit {
  requirePoints(x, y, weight);
  const [low, high] = [Math.min(...x), Math.max(...x)];
  const middle = 0.5 * (low + high);
  const halfWidth = 0.5 * (high - low);
  const t = x.map((place) => (place - middle) / halfWidth);
  const sum = (term: (i: number) => number): number => weight.reduce((total, w, i) => total + w * term(i), 0);

  const norm0 = sum(() => 1);
  const alpha0 = sum((i) => t[i]!) / norm0;
  const p1 = t.map((place) => place - alpha0);
  const norm1 = sum((i) => p1[i]! ** 2);
  const alpha1 = sum((i) => t[i]! * p1[i]! ** 2) / norm1;
  const beta = norm1 / norm0;
  const p2 = t.map((place, i) => (place - alpha1) * p1[i]! - beta);
  const norm2 = sum((i) => p2[i]! ** 2);

  /** Columns of M: p0, p1, p2 written out in powers of x. */
  const columns = [
    inPowersOfX(1, 0, 0, middle, halfWidth),
    inPowersOfX(-alpha0, 1, 0, middle, halfWidth),
    inPowersOfX(alpha0 * alpha1 - beta, -(alpha0 + alpha1), 1, middle, halfWidth),
  ];
  const norms = [norm0, norm1, norm2];
  const loads = [sum((i) => y[i]!), sum((i) => y[i]! * p1[i]!), sum((i) => y[i]! * p2[i]!)];
  const coefficient = (i: number) =>
    columns.reduce((c, column, k) => c + (column[i]! * loads[k]!) / norms[k]!, 0);
  const covariance = (i: number, j: number) =>
    columns.reduce((c, column, k) => c + (column[i]! * column[j]!) / norms[k]!, 0);
  return {
    coefficients: [coefficient(0), coefficient(1), coefficient(2)],
    covariance: [0, 1, 2].flatMap((i) => [0, 1, 2].map((j) => covariance(i, j))),
  };
}

/** q0 + q1 t + q2 t² with t = (x − m)/h, as the coefficients of 1, x and x². */
function inPowersOfX(q0: number, q1: number, q2: number, m: number, h: number): readonly number[] {
  const s1 = q1 / h;
  const s2 = q2 / (h * h);
  return [q0 - s1 * m + s2 * m * m, s1 - 2 * s2 * m, s2];
}

function requirePoints(x: readonly number[], y: readonly number[], weight: readonly number[]): void {
  if (x.length !== y.length || x.length !== weight.length) {
    throw new RangeError(
      `quadraticFit: ${x.length} x, ${y.length} y, ${weight.length} weights; as many of each`,
    );
  }
  const different = new Set(x).size;
  if (different < 3)
    throw new RangeError(`quadraticFit: ${different} different x; a parabola needs 3 or more`);
  for (let i = 0; i < x.length; i += 1) {
    const [place, value, w] = [x[i]!, y[i]!, weight[i]!];
    if (!Number.isFinite(place) || !Number.isFinite(value) || !(w > 0 && Number.isFinite(w))) {
      throw new RangeError(
        `quadraticFit: point ${i} is (${place}, ${value}), weight ${w}; finite, weight above 0`,
      );
    }
  }
}
