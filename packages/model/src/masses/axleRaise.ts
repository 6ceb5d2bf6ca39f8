/** Two weighings of one machine on level scales, the second with its front wheel raised, suspension locked, tyres hard. */
export interface AxleRaise {
  /** Between the axles, along the ground with the machine level [m]. */
  readonly wheelbase: number;
  /** Axle heights on the ground [m]. */
  readonly rearRadius: number;
  readonly frontRadius: number;
  /** The whole machine, and what the front wheel bears level and raised; all in one unit, kg or N. */
  readonly total: number;
  readonly frontLevel: number;
  readonly frontRaised: number;
  /** How far the front wheel was raised [m]. */
  readonly raised: number;
}

/**
 * Height of the whole machine's mass centre above the ground by raising its front wheel.
 *   L sin t + (R_f − R_r)(cos t − 1) = D
 *   b = L N_f/W,   h = R_r + (b − (N_f'/W)(L − (R_f − R_r) tan t)) / tan t
 * t  angle by which the machine is tilted;  b  mass centre ahead of the rear axle [m];  symbols else as in `AxleRaise`
 * Returns the height h [m], and how much h moves for one unit of the raised reading, −(L − (R_f − R_r) tan t)/(W tan t):
 * the method's weak point, some 18 mm for a kilogram at 0.4 m.
 * Valid: nothing moves on the machine between the weighings (fuel, suspension, tyres). Throws RangeError unless the
 * wheel was raised, by less than the wheelbase, and the total is above 0.
 * Source: equal wheels: openbooks.link, The height above ground of the CG; unequal wheels: derived here, by moments
 * about the rear contact point. Standard method: ISO 9130:2005 (not seen). Checked: checks/axle-raise.test.ts.
 */
export function massCentreHeight(weighed: AxleRaise): {
  readonly height: number;
  readonly perReading: number;
} {
  const { wheelbase, rearRadius, frontRadius, total, frontLevel, frontRaised, raised } = weighed;
  if (!(raised > 0 && raised < wheelbase) || !(total > 0)) {
    throw new RangeError(
      `massCentreHeight: front wheel raised by ${raised} m, wheelbase ${wheelbase} m, total ${total}; raise it by more than 0 and less than the wheelbase, total above 0`,
    );
  }
  const step = frontRadius - rearRadius;
  const tilt = Math.asin((raised + step) / Math.hypot(wheelbase, step)) - Math.atan2(step, wheelbase);
  const arm = wheelbase - step * Math.tan(tilt);
  const ahead = (wheelbase * frontLevel) / total;
  return {
    height: rearRadius + (ahead - (frontRaised / total) * arm) / Math.tan(tilt),
    perReading: -arm / (total * Math.tan(tilt)),
  };
}
