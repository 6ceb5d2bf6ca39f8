/**
 * The place between two ends of opposite sign where a continuous function passes zero.
 *   Inverse quadratic interpolation through the last three places where that is safe, else the middle; and the middle
 *   too whenever the bracket has not kept pace with one halving in three calls, so the worst case has a bound.
 * f          finite or infinite, never NaN
 * tolerance  how far from a true crossing the answer may lie, in the unit of x; > 0. Finer than the spacing of the
 *            numbers near the root: the better of the two neighbours.
 * Returns x; its distance from a crossing is at most `tolerance`, on smooth functions far less.
 * Calls f at most 3 log2((upper − lower)/tolerance) + 4 times. Rejected: Brent's method (worst case the square of
 * bisection's) and ITP (on a wide bracket with one curved side it measured no better than bisection).
 * Throws RangeError where the ends do not bracket a crossing, where f gives NaN, or for a tolerance not above 0.
 * Source: T. R. Chandrupatla, A new hybrid quadratic/bisection algorithm for finding the zero of a nonlinear function
 * without using derivatives, Adv. Eng. Softw. 28(3), 145–149 (1997); the pace is ours.
 */
export function root(f: (x: number) => number, lower: number, upper: number, tolerance: number): number {
  if (!(lower < upper) || !(tolerance > 0) || !Number.isFinite(upper - lower)) {
    throw new RangeError(
      `root: from ${lower} to ${upper}, tolerance ${tolerance}; lower < upper, tolerance > 0`,
    );
  }
  /** a the newest place, b the end across the crossing from it, c the place that left the bracket. */
  let [a, b] = [lower, upper];
  let [fa, fb] = [valueAt(f, a), valueAt(f, b)];
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (fa > 0 === fb > 0) {
    throw new RangeError(`root: f(${a}) = ${fa} and f(${b}) = ${fb}; the ends need opposite signs`);
  }
  let share = 0.5;
  for (let pace = upper - lower; Math.abs(b - a) > tolerance; pace *= perCall) {
    const x = a + share * (b - a);
    if (x === a || x === b) break;
    const fx = valueAt(f, x);
    if (fx === 0) return x;
    let [c, fc] = [a, fa];
    if (fx > 0 !== fa > 0) {
      [c, fc] = [b, fb];
      [b, fb] = [a, fa];
    }
    [a, fa] = [x, fx];
    const width = Math.abs(b - a);
    share = width > pace ? 0.5 : quadraticShare(a, b, c, fa, fb, fc);
    const least = Math.min(0.5, (0.5 * tolerance) / width);
    share = Math.min(1 - least, Math.max(least, share));
  }
  return Math.abs(fa) < Math.abs(fb) ? a : b;
}

/** One halving of the bracket in three calls. */
const perCall = 0.5 ** (1 / 3);

/** Share of the way from a to b; a half where the three places do not lie on a one-to-one parabola. */
function quadraticShare(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const xi = (a - b) / (c - b);
  const phi = (fa - fb) / (fc - fb);
  if (!(phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi)) return 0.5;
  const share =
    (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb));
  return Number.isFinite(share) ? share : 0.5;
}

function valueAt(f: (x: number) => number, x: number): number {
  const value = f(x);
  if (Number.isNaN(value))
    throw new RangeError(`root: f(${x}) = NaN; f must have a value all along the bracket`);
  return value;
}
