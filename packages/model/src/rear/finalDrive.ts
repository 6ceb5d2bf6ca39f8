import type { HardPoint } from './hardPoints.ts';

/**
 * How the engine's torque comes to the rear wheel. Radii are of the pitch circles [m].
 * A shaft's case is taken as one with the swingarm; one with a torque rod of its own is not modelled.
 */
export type FinalDriveSI = ChainOrBeltSI | { readonly kind: 'shaft' };

/** A chain or toothed belt whose upper run pulls. */
export interface ChainOrBeltSI {
  readonly kind: 'chain' | 'belt';
  readonly frontSprocket: HardPoint;
  readonly frontRadius: number;
  readonly rearRadius: number;
}

/** Where the parts that carry thrust stand: x forward, heights above level ground [m]. The wheel touches it below the axle. */
export interface DrivePlaces {
  readonly axle: HardPoint;
  readonly pivot: HardPoint;
  /** Centre of the front sprocket; null with a shaft. */
  readonly frontSprocket: HardPoint | null;
}

/** What the drive does to the rear suspension while the machine is driven steadily forward. */
export interface Squat {
  /** Slope of the squat line and of the load transfer line, both from the rear contact point [rad]. */
  readonly squatAngle: number;
  readonly transferAngle: number;
  /** tan τ / tan σ: above 1 thrust presses the rear down, below 1 it lifts it; null where the squat line is level: no lift at all. */
  readonly squatRatio: number | null;
}

/**
 * Squat of a driven rear wheel on level ground.
 *   tan τ = h/p                       load transfer: h height of the whole machine's centre of mass, p wheelbase [m]
 *   σ slope from the contact point to A, where the upper run and the line from axle to pivot meet; with a shaft A is the pivot
 *   squat ratio = tan τ / tan σ
 * A may lie at infinity (run and arm parallel): σ is then their slope.
 * Throws RangeError where the sprockets overlap, h or p is not above 0, or the pivot is not ahead of the axle.
 * Source: V. Cossalter, Motorcycle Dynamics, 2nd ed., squat ratio (from memory). Checked: finalDrive.test.ts, where the
 * moments of thrust, load transfer and chain about the pivot give the same; sample in checks/squat-ratio.test.ts.
 */
export function squatOf(
  drive: FinalDriveSI,
  places: DrivePlaces,
  centreHeight: number,
  wheelbase: number,
): Squat {
  if (!(centreHeight > 0 && wheelbase > 0)) {
    throw new RangeError(
      `squatOf: a centre of mass ${centreHeight} m high and a wheelbase of ${wheelbase} m; both must be above 0`,
    );
  }
  if (!(places.pivot.x > places.axle.x)) {
    throw new RangeError(
      `squatOf: pivot at ${places.pivot.x} m, axle at ${places.axle.x} m; the pivot must be ahead`,
    );
  }
  const { x, height } = squatDirection(drive, places);
  const transfer = centreHeight / wheelbase;
  return {
    squatAngle: Math.atan2(height, x),
    transferAngle: Math.atan(transfer),
    squatRatio: height === 0 ? null : (transfer * x) / height,
  };
}

/** A direction along the squat line, not of unit length: from the contact point to A, A in homogeneous coordinates. */
function squatDirection(drive: FinalDriveSI, { axle, pivot, frontSprocket }: DrivePlaces): HardPoint {
  if (drive.kind === 'shaft' || frontSprocket === null) return { x: pivot.x - axle.x, height: pivot.height };
  const run = upperRun(axle, drive.rearRadius, frontSprocket, drive.frontRadius);
  const armX = pivot.x - axle.x;
  const armHeight = pivot.height - axle.height;
  // Where axle + λ·arm meets the run: λ = gap/closing, both told times closing so that it may be 0.
  const closing = run.normalX * armX + run.normalHeight * armHeight;
  return {
    x: drive.rearRadius * armX,
    height: axle.height * closing + drive.rearRadius * armHeight,
  };
}

/** The straight upper run of a chain or belt, by its unit normal n, upward. */
export interface UpperRun {
  readonly normalX: number;
  readonly normalHeight: number;
}

/**
 * Common tangent on top of two sprockets: n·(C_f − C_r) = r_r − r_f.
 * Throws RangeError where one sprocket lies inside the other.
 */
export function upperRun(
  rear: HardPoint,
  rearRadius: number,
  front: HardPoint,
  frontRadius: number,
): UpperRun {
  const x = front.x - rear.x;
  const height = front.height - rear.height;
  const distance = Math.hypot(x, height);
  const along = (rearRadius - frontRadius) / distance;
  if (!(Math.abs(along) < 1 && rearRadius > 0 && frontRadius > 0)) {
    throw new RangeError(
      `upperRun: sprockets of ${rearRadius} m and ${frontRadius} m radius, ${distance} m apart; above 0 and further apart than they differ`,
    );
  }
  const across = Math.sqrt(1 - along * along);
  return {
    normalX: (along * x - across * height) / distance,
    normalHeight: (along * height + across * x) / distance,
  };
}
