import { type PolynomialFit, polynomialFit } from '../numerics/polynomialFit.ts';

/** A smooth curve through taped points: damper length over wheel travel. */
export interface TapedFit {
  /** Of the curve: 1 straight, so one ratio; 2 and 3 bent. */
  readonly order: 1 | 2 | 3;
  /** c0 to c3 of length = c0 + c1 w + c2 w² + c3 w³ [m, –, 1/m, 1/m²]; 0 beyond the order. */
  readonly coefficients: readonly [number, number, number, number];
  /** Covariance of c1 to c3, row by row: that of a curve one order higher where the points bear one. */
  readonly covariance: readonly number[];
  /** Points that were taken for misread, the worst first. */
  readonly misread: readonly Misread[];
}

/** A point left out, by its place in the list, and how far its length lies from the curve through the others [m]. */
export interface Misread {
  readonly point: number;
  readonly off: number;
}

/** With fewer points a curve of order 3 would follow the tape instead of the machine, and a misread point could not be told. */
const LEAST_FOR_CUBIC = 7;
const LEAST_FOR_MISREAD = 5;
/**
 * What a point must be off to be taken for misread, in squares of its own deviation: (3.29)², met by chance once in a thousand
 * (W. Baarda, A testing procedure for use in geodetic networks, 1968; from memory). A curve one order higher must explain as much as four:
 * tried on drawn rears with a tape's noise, where it accused a good set in one of a hundred.
 */
const MISREAD = 10.83;
const HIGHER = 4;
/** A point that the curve follows wherever it goes cannot be judged by leaving it out. */
const FOLLOWED = 1 - 1e-9;

/**
 * Fits taped points, each with a tape's noise: never interpolated, since half a millimetre through an interpolant gives a
 * wheel rate off by a third.
 * wheel, lengths  as taped [m];  weight  1/σ² of each length [1/m²]
 *   misread  one at a time, the worst first, each time fitted anew: the point without which a low curve explains the rest so much better
 *   order    1 to 3, of those that hold the points within their ± the one with the least Σ w (r/(1 − h))²: how well each point is told by the others (leave-one-out)
 *   ±        covariance of a curve one order higher, where so many points bear one: that the chosen one leaves nothing out is
 *            only as sure as that. Times χ²/ν where the points scatter more than their ± (R. T. Birge, Phys. Rev. 40, 207 (1932); from memory)
 * At least 4 points at 3 different heights. Throws RangeError as `polynomialFit` does.
 */
export function fitTaped(
  wheel: readonly number[],
  lengths: readonly number[],
  weight: readonly number[],
): TapedFit {
  const points = wheel.map(
    (w, i): Point => ({ index: i, wheel: w, length: lengths[i]!, weight: weight[i]! }),
  );
  const misread: Misread[] = [];
  let kept: readonly Point[] = points;
  for (let suspect = suspectIn(kept); suspect !== null; suspect = suspectIn(kept)) {
    const others = kept.filter((point) => point !== suspect);
    misread.push({
      point: suspect.index,
      off: suspect.length - lengthOn(fitBy(others, bestOrder(others)), suspect),
    });
    kept = others;
  }
  const order = bestOrder(kept);
  const [c0 = 0, c1 = 0, c2 = 0, c3 = 0] = fitBy(kept, order).coefficients;
  return { order, coefficients: [c0, c1, c2, c3], covariance: covarianceOf(kept, order), misread };
}

interface Point {
  readonly index: number;
  readonly wheel: number;
  readonly length: number;
  readonly weight: number;
}

function fitBy(points: readonly Point[], order: number): PolynomialFit {
  return polynomialFit(
    points.map(({ wheel }) => wheel),
    points.map(({ length }) => length),
    points.map(({ weight }) => weight),
    order,
  );
}

function lengthOn({ coefficients }: PolynomialFit, { wheel }: Point): number {
  return coefficients.reduceRight((sum, c) => sum * wheel + c, 0);
}

/** Orders that so many points at so many heights can bear with one to spare; 1 and 2 always. */
function ordersFor(points: readonly Point[]): readonly (1 | 2 | 3)[] {
  const heights = new Set(points.map(({ wheel }) => wheel)).size;
  return points.length >= LEAST_FOR_CUBIC && heights > 4 ? [1, 2, 3] : [1, 2];
}

/** The point without which some low curve explains the rest far better than any explains all; null where there is none. */
function suspectIn(points: readonly Point[]): Point | null {
  if (points.length < LEAST_FOR_MISREAD) return null;
  let suspect: Point | null = null;
  let least = leastScore(points) - MISREAD;
  for (const point of points) {
    const others = points.filter((each) => each !== point);
    if (new Set(others.map(({ wheel }) => wheel)).size < 3) continue;
    const score = leastScore(others);
    if (score >= least) continue;
    least = score;
    suspect = point;
  }
  return suspect;
}

function leastScore(points: readonly Point[]): number {
  return Math.min(...ordersFor(points).map((order) => fitBy(points, order).misfit + HIGHER * order));
}

function bestOrder(points: readonly Point[]): 1 | 2 | 3 {
  const judged = ordersFor(points).map((order) => ({ order, miss: leftOutMiss(points, order) }));
  // What cannot be judged is not told apart: then the parabola, as any rear bends a little.
  if (judged.some(({ order, miss }) => order <= 2 && miss === null)) return 2;
  const holding = judged.filter(({ order }) => holds(points, order));
  const choice = (holding.length > 0 ? holding : judged).filter(({ miss }) => miss !== null);
  return choice.reduce((best, each) => (each.miss! < best.miss! * (1 - ROUNDING) ? each : best)).order;
}

/**
 * Whether a curve holds the points within their ±: χ² is met by chance once in a hundred at most.
 *   χ²_p(ν) ≈ ν (1 − 2/(9ν) + z √(2/(9ν)))³      (E. B. Wilson, M. M. Hilferty, PNAS 17, 684 (1931); from memory)
 */
function holds(points: readonly Point[], order: number): boolean {
  const spare = points.length - order - 1;
  if (spare < 1) return true;
  const part = 2 / (9 * spare);
  return fitBy(points, order).misfit <= spare * (1 - part + ONE_IN_HUNDRED * Math.sqrt(part)) ** 3;
}

/** Of the normal distribution. */
const ONE_IN_HUNDRED = 2.3263;

/** Points that lie on a curve to the last digit do not choose between it and a higher one by what rounding left. */
const ROUNDING = 1e-6;

/** Σ w (r/(1 − h))²: each point against the curve through the others; null where the others do not hold the curve. */
function leftOutMiss(points: readonly Point[], order: number): number | null {
  const { residuals, leverages } = fitBy(points, order);
  if (leverages.some((h) => h > FOLLOWED)) return null;
  return points.reduce((sum, { weight }, i) => sum + weight * (residuals[i]! / (1 - leverages[i]!)) ** 2, 0);
}

/** Of c1 to c3. */
function covarianceOf(points: readonly Point[], order: 1 | 2 | 3): readonly number[] {
  const carried = Math.min(order + 1, Math.max(...ordersFor(points)));
  const { covariance } = fitBy(points, carried);
  const spare = points.length - order - 1;
  const scatter = Math.max(1, spare > 0 ? fitBy(points, order).misfit / spare : 1);
  const of = (i: number, j: number): number =>
    i > carried || j > carried ? 0 : scatter * covariance[(carried + 1) * i + j]!;
  return [1, 2, 3].flatMap((i) => [1, 2, 3].map((j) => of(i, j)));
}
