/** A curve through drawn points: places, values and slopes there, x rising strictly. */
export interface MonotoneCubic {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly slope: readonly number[];
}

/** Value, first and second derivative at one place. */
export interface CubicAt {
  value: number;
  first: number;
  second: number;
}

/**
 * The monotone piecewise cubic (Hermite) through points: where the points rise or fall, so does the curve.
 *   inside   weighted harmonic mean of the neighbouring chords (Fritsch–Butland); 0 where they change sign
 *   ends     three-point formula, held to the sign of the end chord and, where the chords change sign, to 3 × the
 *            end chord: as SciPy's PchipInterpolator
 * Value and slope are continuous; the second derivative jumps at the points. Two points: a straight line.
 * For drawn or computed tables only: through taped points it turns half a millimetre of noise into a wrong slope.
 * Throws RangeError for fewer than 2 points, unequal lengths, x not strictly rising, or a number not finite.
 * Source: F. N. Fritsch, J. Butland, SIAM J. Sci. Stat. Comput. 5(2), 300–304 (1984); ends after C. Moler, Numerical
 * Computing with MATLAB (2004), section 3.6. Checked: checks/scipy-pchip.test.ts.
 */
export function monotoneCubic(x: readonly number[], y: readonly number[]): MonotoneCubic {
  requirePoints(x, y);
  const width = x.slice(1).map((right, i) => right - x[i]!);
  const chord = width.map((h, i) => (y[i + 1]! - y[i]!) / h);
  const slope = x.map((_, i) => slopeAt(width, chord, i));
  return { x: [...x], y: [...y], slope };
}

/**
 * Value and derivatives of the curve at x, into `out`; beyond either end straight on with the end's slope.
 * At a point the second derivative is that of the piece to its right (at the last point, to its left).
 * Throws RangeError for NaN.
 */
export function cubicAt(curve: MonotoneCubic, x: number, out: CubicAt): void {
  const last = curve.x.length - 1;
  if (x < curve.x[0]!) straightOn(curve, 0, x, out);
  else if (x > curve.x[last]!) straightOn(curve, last, x, out);
  else alongPiece(curve, pieceAt(curve.x, x), x, out);
}

function alongPiece(curve: MonotoneCubic, i: number, x: number, out: CubicAt): void {
  const h = curve.x[i + 1]! - curve.x[i]!;
  const t = x - curve.x[i]!;
  const chord = (curve.y[i + 1]! - curve.y[i]!) / h;
  const left = curve.slope[i]!;
  const right = curve.slope[i + 1]!;
  const square = (3 * chord - 2 * left - right) / h;
  const cube = (left + right - 2 * chord) / (h * h);
  out.value = curve.y[i]! + t * (left + t * (square + t * cube));
  out.first = left + t * (2 * square + 3 * t * cube);
  out.second = 2 * square + 6 * t * cube;
}

function straightOn(curve: MonotoneCubic, end: number, x: number, out: CubicAt): void {
  out.first = curve.slope[end]!;
  out.value = curve.y[end]! + out.first * (x - curve.x[end]!);
  out.second = 0;
}

/** Index of the piece that holds x, by halving. */
function pieceAt(points: readonly number[], x: number): number {
  if (Number.isNaN(x)) throw new RangeError('cubicAt: x = NaN; a number is needed');
  let low = 0;
  let high = points.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (x >= points[middle]!) low = middle;
    else high = middle;
  }
  return low;
}

function slopeAt(width: readonly number[], chord: readonly number[], i: number): number {
  const last = chord.length;
  if (last === 1) return chord[0]!;
  if (i === 0) return endSlope(width[0]!, width[1]!, chord[0]!, chord[1]!);
  if (i === last) return endSlope(width[last - 1]!, width[last - 2]!, chord[last - 1]!, chord[last - 2]!);
  const before = chord[i - 1]!;
  const after = chord[i]!;
  if (Math.sign(before) !== Math.sign(after) || before === 0) return 0;
  const weightBefore = 2 * width[i]! + width[i - 1]!;
  const weightAfter = width[i]! + 2 * width[i - 1]!;
  return (weightBefore + weightAfter) / (weightBefore / before + weightAfter / after);
}

/** h, m: width and chord at the end; h2, m2: those next to it. */
function endSlope(h: number, h2: number, m: number, m2: number): number {
  const slope = ((2 * h + h2) * m - h * m2) / (h + h2);
  if (Math.sign(slope) !== Math.sign(m)) return 0;
  if (Math.sign(m) !== Math.sign(m2) && Math.abs(slope) > 3 * Math.abs(m)) return 3 * m;
  return slope;
}

function requirePoints(x: readonly number[], y: readonly number[]): void {
  if (x.length < 2 || x.length !== y.length) {
    throw new RangeError(`monotoneCubic: ${x.length} places, ${y.length} values; as many of each, 2 or more`);
  }
  for (let i = 0; i < x.length; i += 1) {
    if (!Number.isFinite(x[i]!) || !Number.isFinite(y[i]!)) {
      throw new RangeError(`monotoneCubic: point ${i} is (${x[i]}, ${y[i]}); finite numbers are needed`);
    }
    if (i > 0 && !(x[i]! > x[i - 1]!)) {
      throw new RangeError(`monotoneCubic: x[${i}] = ${x[i]} after ${x[i - 1]}; x must rise strictly`);
    }
  }
}
