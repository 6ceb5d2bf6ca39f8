/** A polynomial fitted to measured points. */
export interface PolynomialFit {
  /** c0, c1, … of y = c0 + c1 x + c2 x² …, one more than the order. */
  readonly coefficients: readonly number[];
  /** Covariance of them, row by row: [(order + 1) i + j] is that of ci and cj. */
  readonly covariance: readonly number[];
  /** By how much each y lies above the curve. */
  readonly residuals: readonly number[];
  /** How far the curve follows each y: 0 not at all, 1 wherever it goes. */
  readonly leverages: readonly number[];
  /** Σ w residual². */
  readonly misfit: number;
}

/**
 * Weighted least squares: the c with the least Σ w (y − c0 − c1 x − c2 x² …)², and their covariance.
 *   t = (x − middle)/halfWidth;  fitted in polynomials of t that are orthogonal over the points, so that no matrix
 *   is inverted:  p0 = 1, p_{k+1} = (t − α_k) p_k − β_k p_{k−1},  α_k = Σ w t p_k²/N_k, β_k = N_k/N_{k−1}, N_k = Σ w p_k²
 *   a_k = Σ w y p_k/N_k, var a_k = 1/N_k;   c = M a,  cov c = M diag(var a) Mᵀ,   h_i = w_i Σ p_k(t_i)²/N_k
 * weight  1/σ² of each y, > 0; the covariance takes these σ as they are, not scaled to the misfit found
 * Throws RangeError for unequal lengths, fewer different x than coefficients, a number not finite, or a weight not above 0.
 * Source: G. E. Forsythe, Generation and use of orthogonal polynomials for data-fitting with a digital computer,
 * J. SIAM 5(2), 74–88 (1957). Checked: checks/numpy-polyfit.test.ts, checks/nist-linear-regression.test.ts.
 */
export function polynomialFit(
  x: readonly number[],
  y: readonly number[],
  weight: readonly number[],
  order: number,
): PolynomialFit {
  requirePoints(x, y, weight, order);
  const [low, high] = [Math.min(...x), Math.max(...x)];
  const middle = 0.5 * (low + high);
  const halfWidth = high > low ? 0.5 * (high - low) : 1;
  const t = x.map((place) => (place - middle) / halfWidth);
  const terms = orthogonalTerms(t, weight, order);
  const shares = projections(terms, y, weight);
  /** Column k of M: p_k written out in powers of x. */
  const columns = terms.map(({ powers }) => inPowersOfX(powers, middle, halfWidth));
  const count = order + 1;
  const all = Array.from({ length: count }, (_, i) => i);
  const covariance = (i: number, j: number): number =>
    columns.reduce((c, column, k) => c + (column[i]! * column[j]!) / terms[k]!.norm, 0);
  const residuals = residualsOf(terms, shares, y);
  return {
    coefficients: all.map((i) => columns.reduce((c, column, k) => c + column[i]! * shares[k]!, 0)),
    covariance: all.flatMap((i) => all.map((j) => covariance(i, j))),
    residuals,
    leverages: x.map((_, i) =>
      terms.reduce((sum, { values, norm }) => sum + (weight[i]! * values[i]! ** 2) / norm, 0),
    ),
    misfit: residuals.reduce((sum, each, i) => sum + weight[i]! * each * each, 0),
  };
}

/** One of the orthogonal polynomials: in powers of t, at each point, and its norm N. */
interface Term {
  readonly powers: readonly number[];
  readonly values: readonly number[];
  readonly norm: number;
}

function orthogonalTerms(t: readonly number[], weight: readonly number[], order: number): readonly Term[] {
  const sum = (of: (i: number) => number): number => weight.reduce((total, w, i) => total + w * of(i), 0);
  const zeros = new Array<number>(order + 1).fill(0);
  const terms: Term[] = [{ powers: [1, ...zeros.slice(1)], values: t.map(() => 1), norm: sum(() => 1) }];
  for (let k = 0; k < order; k += 1) {
    const term = terms[k]!;
    const before = terms[k - 1];
    const alpha = sum((i) => t[i]! * term.values[i]! ** 2) / term.norm;
    const beta = before === undefined ? 0 : term.norm / before.norm;
    const values = term.values.map((p, i) => (t[i]! - alpha) * p - beta * (before?.values[i] ?? 0));
    const powers = zeros.map(
      (_, i) =>
        (i === 0 ? 0 : term.powers[i - 1]!) - alpha * term.powers[i]! - beta * (before?.powers[i] ?? 0),
    );
    terms.push({ powers, values, norm: sum((i) => values[i]! ** 2) });
  }
  return terms;
}

/** a_k, each from what the terms before it left over: rounding of a large mean does not spoil a small bend. */
function projections(
  terms: readonly Term[],
  y: readonly number[],
  weight: readonly number[],
): readonly number[] {
  const left = [...y];
  const shares = terms.map(() => 0);
  // Twice: the second time over what rounding left.
  for (const _ of [0, 1]) {
    terms.forEach(({ values, norm }, k) => {
      const share = weight.reduce((total, w, i) => total + w * left[i]! * values[i]!, 0) / norm;
      shares[k] = shares[k]! + share;
      for (let i = 0; i < left.length; i += 1) left[i] = left[i]! - share * values[i]!;
    });
  }
  return shares;
}

function residualsOf(
  terms: readonly Term[],
  shares: readonly number[],
  y: readonly number[],
): readonly number[] {
  return y.map((value, i) => terms.reduce((left, { values }, k) => left - shares[k]! * values[i]!, value));
}

/** Σ q_k t^k with t = (x − m)/h, as the coefficients of 1, x, x² …: multiplied out by Horner's scheme. */
function inPowersOfX(powers: readonly number[], m: number, h: number): readonly number[] {
  let out: number[] = powers.map(() => 0);
  for (let k = powers.length - 1; k >= 0; k -= 1) {
    out = out.map((each, i) => ((i === 0 ? 0 : out[i - 1]!) - m * each) / h);
    out[0] = out[0]! + powers[k]!;
  }
  return out;
}

function requirePoints(
  x: readonly number[],
  y: readonly number[],
  weight: readonly number[],
  order: number,
): void {
  if (!(Number.isInteger(order) && order >= 0)) {
    throw new RangeError(`polynomialFit: order ${order}; a whole number, 0 or more`);
  }
  if (x.length !== y.length || x.length !== weight.length) {
    throw new RangeError(
      `polynomialFit: ${x.length} x, ${y.length} y, ${weight.length} weights; as many of each`,
    );
  }
  const different = new Set(x).size;
  if (different <= order)
    throw new RangeError(
      `polynomialFit: ${different} different x; order ${order} needs ${order + 1} or more`,
    );
  for (let i = 0; i < x.length; i += 1) {
    const [place, value, w] = [x[i]!, y[i]!, weight[i]!];
    if (!Number.isFinite(place) || !Number.isFinite(value) || !(w > 0 && Number.isFinite(w))) {
      throw new RangeError(
        `polynomialFit: point ${i} is (${place}, ${value}), weight ${w}; finite, weight above 0`,
      );
    }
  }
}
