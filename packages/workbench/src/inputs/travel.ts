import { cubicAt, monotoneCubic } from '@sagwright/model/numerics/monotoneCubic';
import { quadraticFit } from '@sagwright/model/numerics/quadraticFit';
import { type RatioSI, strokeAt, strokeLimit, travelAtStroke } from '@sagwright/model/rear/kinematics';
import { HALF_WIDTH_90 } from '@sagwright/model/uncertainty/spread';
import type { Points, Travel } from '@sagwright/records/schema/machine';
import { siOf } from '@sagwright/records/schema/quantity';
import type { Shock } from '@sagwright/records/schema/struts';
import { differenceToSI } from '@sagwright/records/units';
import { type Desk, impossible, note } from './desk.ts';
import { lengthened } from './shockLength.ts';
import { defaultWidth } from './widths.ts';

const PATH = 'machine.rear.travel';

/**
 * How the rear wheel moves its shock. Travel is counted from where the shock has its length, eye to eye, fully out; where
 * that is not known, from the lowest wheel of a table or of taped points.
 */
export function rearKinematics(desk: Desk, travel: Exclude<Travel, Points>, shock: Shock): RatioSI {
  const { take } = desk;
  switch (travel.kind) {
    case 'leverage':
      return { kind: 'ratio', motionRatio: 1 / take.known(`${PATH}.ratio`, travel.ratio, 'ratio') };
    case 'motion':
      return { kind: 'ratio', motionRatio: take.known(`${PATH}.ratio`, travel.ratio, 'ratio') };
    case 'table':
      return tableKinematics(desk, travel, shock);
    case 'taped':
      return tapedKinematics(desk, travel, shock);
  }
}

/**
 * Least motion ratio that a rear may have fully out and at full bump: 20 mm of wheel for each of the shock. Below it a
 * millimetre of doubt in the stroke is centimetres of wheel travel, and no machine is built so (common practice, no source).
 */
const LEAST_RATIO = 0.05;

/** Wheel travel [m] beyond a table's rows that is rounding, and nothing carried on. */
const ROUNDING = 0.001;

/** Wheel travel at full stroke [m]; told where the ratio never lets the shock make its stroke, or hardly. */
export function wheelTravel(desk: Desk, kinematics: RatioSI, strokeMax: number): number {
  // A hair is left, so that the small steps by which the doubt of the stroke is followed have an answer too.
  if (strokeMax < 0.999 * strokeLimit(kinematics)) {
    const travel = travelAtStroke(kinematics, 0, strokeMax);
    if (kinematics.kind === 'table' && !spans(kinematics.curve.x, travel))
      note(desk, 'travel carried on', PATH);
    if (Math.min(ratioAt(kinematics, 0), ratioAt(kinematics, travel)) > LEAST_RATIO) return travel;
  }
  impossible(
    desk,
    PATH,
    `Rear travel: on these figures the shock never makes its stroke of ${(strokeMax * 1000).toFixed(1)} mm, or the wheel hardly moves it fully out or at full bump. Check the stroke, and give more points near both ends.`,
  );
  return 0;
}

function ratioAt(kinematics: RatioSI, wheel: number): number {
  const at = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
  strokeAt(kinematics, 0, wheel, at);
  return at.motionRatio;
}

/** Whether the rows of a table reach from the extension stop to full bump. */
function spans(wheel: readonly number[], travel: number): boolean {
  return wheel[0]! <= ROUNDING && wheel.at(-1)! >= travel - ROUNDING;
}

function tableKinematics(desk: Desk, travel: Extract<Travel, { kind: 'table' }>, shock: Shock): RatioSI {
  const wheel = travel.rows.map((row) => siOf(row.wheel));
  const length = travel.rows.map((row) => siOf(row.shock));
  // A curve is moved by its scale alone: the ± of a length that it is cut at is within that.
  const start =
    shock.length === undefined
      ? wheel[0]!
      : wheelAtLength(wheel, length, siOf(shock.length) + lengthened(shock));
  const strokes = strokesFrom(wheel, length, start);
  const why = 'a drawn or computed table, all together';
  const scale = desk.take.workedOut(`${PATH}.rows`, 1, 0.015, 'share', '%', why);
  return {
    kind: 'table',
    curve: monotoneCubic(
      wheel.map((w) => w - start),
      strokes,
    ),
    scale,
  };
}

/** Wheel reading at which the shock has a length, on the curve through the rows (straight on beyond its ends). */
function wheelAtLength(wheel: readonly number[], length: readonly number[], wanted: number): number {
  const longestFirst = length.map((each) => -each);
  const curve = monotoneCubic(longestFirst, wheel);
  const at = { value: 0, first: 0, second: 0 };
  cubicAt(curve, -wanted, at);
  return at.value;
}

/** Stroke at each row, counted from where the wheel stands at `start`. */
function strokesFrom(wheel: readonly number[], length: readonly number[], start: number): readonly number[] {
  const curve = monotoneCubic(
    wheel,
    length.map((each) => -each),
  );
  const at = { value: 0, first: 0, second: 0 };
  cubicAt(curve, start, at);
  return length.map((each) => -at.value - each);
}

/**
 * Taped points are fitted, never interpolated: half a millimetre of tape noise through an interpolant gives a wheel rate off
 * by a third. A weighted quadratic of shock length over wheel travel; the doubt of its slope and bend goes on along
 * two axes that do not hang together (Cholesky factor of their covariance).
 */
function tapedKinematics(desk: Desk, travel: Extract<Travel, { kind: 'taped' }>, shock: Shock): RatioSI {
  // However they were taped: from the bottom up, from the top down, or down to the first height once more.
  const points = Object.values(travel.points).sort((a, b) => siOf(a.wheel) - siOf(b.wheel));
  const wheel = points.map((point) => siOf(point.wheel));
  const length = points.map((point) => siOf(point.shock));
  const slope = (length.at(-1)! - length[0]!) / (wheel.at(-1)! - wheel[0]!);
  const weight = points.map(
    (point) => 1 / (deviation(point.shock) ** 2 + (slope * deviation(point.wheel)) ** 2),
  );
  const { coefficients, covariance } = quadraticFit(wheel, length, weight);
  const [c0, c1, c2] = coefficients as readonly [number, number, number];
  const start = startOfTaped(desk, shock, c0, c1, c2) ?? wheel[0]!;
  const varianceOf = (i: number, j: number): number => covariance[3 * i + j]!;
  const variance = varianceOf(1, 1) + 4 * start * varianceOf(1, 2) + 4 * start * start * varianceOf(2, 2);
  const together = varianceOf(1, 2) + 2 * start * varianceOf(2, 2);
  const first = Math.sqrt(variance);
  const second = Math.sqrt(Math.max(0, varianceOf(2, 2) - (together / first) ** 2));
  const why = 'scatter that the tape is trusted to, carried through the fit';
  const along = (name: string): number =>
    desk.take.workedOut(`${PATH}.points.${name}`, 0, HALF_WIDTH_90, 'share', '%', why);
  const a = along('slope');
  const b = along('bend');
  const ratio = -(c1 + 2 * c2 * start) + first * a;
  const bend = -c2 + (together / first) * a + second * b;
  if (!(ratio > LEAST_RATIO)) {
    impossible(
      desk,
      `${PATH}.points`,
      'Taped points: on the curve through them the wheel hardly moves the shock where its travel begins. Check the points, and tape with the wheel further out.',
    );
    return { kind: 'ratio', motionRatio: 0.9 };
  }
  return { kind: 'quadratic', slope: ratio, bend };
}

/**
 * Wheel reading at which the taped shock is fully out: c0 + c1 w + c2 w² = L where the curve falls, w = 2 d/(√(c1² − 4 c2 d) − c1) with
 * d = c0 − L; null where its length is not known. Told where the curve never is that long.
 */
function startOfTaped(desk: Desk, shock: Shock, c0: number, c1: number, c2: number): number | null {
  if (shock.length === undefined) return null;
  const path = 'machine.rear.shock.length';
  const extended = desk.take.known(path, shock.length, 'tape') + lengthened(shock);
  const d = c0 - extended;
  const ratioThere = Math.sqrt(c1 * c1 - 4 * c2 * d);
  if (ratioThere > LEAST_RATIO && ratioThere !== c1) return (2 * d) / (ratioThere - c1);
  impossible(
    desk,
    path,
    `Length of the shock: ${(extended * 1000).toFixed(1)} mm fully out, but on the curve through the taped points it never gets so long. Check the length, and tape with the wheel further out.`,
  );
  return null;
}

function deviation(typed: Parameters<typeof siOf>[0]): number {
  const width = typed.plusMinus ?? defaultWidth('tape', typed.origin);
  const half =
    width.unit === '%'
      ? (Math.abs(siOf(typed)) * width.value) / 100
      : differenceToSI(width.value, width.unit);
  return Math.max(half, 1e-5) / HALF_WIDTH_90;
}
