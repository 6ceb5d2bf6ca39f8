import { type RatioSI, strokeAt, travelOnCubic } from '@sagwright/model/rear/kinematics';
import type { TapedFit } from '@sagwright/model/rear/tapedFit';
import { HALF_WIDTH_90 } from '@sagwright/model/uncertainty/spread';
import type { Shock } from '@sagwright/records/schema/struts';
import { type Desk, impossible, note } from './desk.ts';
import { LEAST_RATIO } from './leastRatio.ts';
import { takeLengthened } from './shockLength.ts';
import type { FittedTape } from './tapeFitted.ts';

const PATH = 'machine.rear.travel';

/**
 * How the wheel moves the shock by taped points: a fitted curve, counted from where the shock is fully out. The doubt of its slope,
 * bend and twist there goes on along axes that do not hang together (Cholesky factor of their covariance).
 */
export function tapedKinematics(desk: Desk, { ids, wheel, fit }: FittedTape, shock: Shock): RatioSI {
  for (const { point } of fit.misread) note(desk, 'taped point left out', `${PATH}.points.${ids[point]!}`);
  const start = startOfTaped(desk, shock, wheel[0]!, fit);
  const central = curveAt(fit, start);
  const factor = choleskyOf(covarianceAt(fit, start));
  const why = 'scatter that the tape is trusted to, carried through the fit';
  const along = ['slope', 'bend', 'twist'].map((name, k) =>
    factor.every((row) => row[k] === 0)
      ? 0
      : desk.take.workedOut(`${PATH}.points.${name}`, 0, HALF_WIDTH_90, 'share', '%', why),
  );
  const [slope, bend, twist] = [central.slope, central.bend, central.twist].map(
    (value, i) => value + factor[i]!.reduce((sum, each, k) => sum + each * along[k]!, 0),
  ) as [number, number, number];
  if (!(slope > LEAST_RATIO)) {
    impossible(
      desk,
      `${PATH}.points`,
      'Taped points: on the curve through them the wheel hardly moves the shock where its travel begins. Check the points, and tape with the wheel further out.',
    );
    return { kind: 'ratio', motionRatio: 0.9 };
  }
  return twist === 0 && factor[2]!.every((each) => each === 0)
    ? { kind: 'quadratic', slope, bend }
    : { kind: 'cubic', slope, bend, twist };
}

type Cubic = Extract<RatioSI, { kind: 'cubic' }>;

/** Stroke counted from a wheel reading: s(z) = l(start) − l(start + z). */
function curveAt({ coefficients: [, c1, c2, c3] }: TapedFit, start: number): Cubic {
  return {
    kind: 'cubic',
    slope: -(c1 + (2 * c2 + 3 * c3 * start) * start),
    bend: -(c2 + 3 * c3 * start),
    twist: -c3,
  };
}

/** Covariance of slope, bend and twist there: T Σ Tᵀ. */
function covarianceAt({ covariance }: TapedFit, start: number): readonly (readonly number[])[] {
  const rows = [
    [1, 2 * start, 3 * start * start],
    [0, 1, 3 * start],
    [0, 0, 1],
  ];
  return rows.map((one) =>
    rows.map((other) =>
      one.reduce(
        (sum, a, i) => sum + other.reduce((part, b, j) => part + a * b * covariance[3 * i + j]!, 0),
        0,
      ),
    ),
  );
}

/** Lower factor L of a covariance, L Lᵀ; a row of nothing where nothing is left. */
function choleskyOf(covariance: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const lower = covariance.map((row) => row.map(() => 0));
  covariance.forEach((row, i) => {
    for (let j = 0; j <= i; j += 1) {
      const left = row[j]! - lower[i]!.slice(0, j).reduce((sum, each, k) => sum + each * lower[j]![k]!, 0);
      const pivot = lower[j]![j]!;
      lower[i]![j] = i === j ? Math.sqrt(Math.max(0, left)) : pivot > 0 ? left / pivot : 0;
    }
  });
  return lower;
}

/**
 * Wheel reading at which the taped shock is fully out, where its curve falls; the lowest one where its length is not known. Told where the
 * curve never is that long.
 */
function startOfTaped(desk: Desk, shock: Shock, lowest: number, fit: TapedFit): number {
  if (shock.length === undefined) return lowest;
  const path = 'machine.rear.shock.length';
  const extended = desk.take.known(path, shock.length, 'tape') + takeLengthened(desk);
  const curve = curveAt(fit, lowest);
  const lengthThere = fit.coefficients.reduceRight((sum, c) => sum * lowest + c, 0);
  const travel = curve.slope > 0 ? travelOnCubic(curve, lengthThere - extended) : null;
  if (travel !== null) {
    const at = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
    strokeAt(curve, 0, travel, at);
    if (at.motionRatio > LEAST_RATIO) return lowest + travel;
  }
  impossible(
    desk,
    path,
    `Length of the shock: ${(extended * 1000).toFixed(1)} mm fully out, but on the curve through the taped points it never gets so long. Check the length, and tape with the wheel further out.`,
  );
  return lowest;
}
