/** How likely it is that a standard normal number stays below t, as its logarithm; and φ(t)/Φ(t), what that grows by. */
export interface NormalBelow {
  /** log Φ(t). */
  readonly log: number;
  /** φ(t)/Φ(t) > 0; about −t far below 0. */
  readonly hazard: number;
}

const ROOT_2_PI = Math.sqrt(2 * Math.PI);
/** Below this the series loses digits to 1/2 and the fraction has them all within its terms. */
const TAIL = -2.5;
const FRACTION_TERMS = 120;

/**
 * Φ(t) = 1/2 + φ(t)·Σ t^(2k+1)/(1·3·5…(2k+1)); in the lower tail Φ(t) = φ(t)/(x + 1/(x + 2/(x + 3/(x + …)))), x = −t.
 * t  any finite number; Φ is never 0 here, since its logarithm is what is told.
 * Source: Abramowitz, Stegun, Handbook of Mathematical Functions (1964), 26.2.11 and 26.2.14 (from memory; checked by
 * tabled values and by its own slope in normalLaw.test.ts).
 */
export function normalBelow(t: number): NormalBelow {
  if (t < TAIL) {
    const hazard = tailFraction(-t);
    return { log: -0.5 * t * t - Math.log(ROOT_2_PI) - Math.log(hazard), hazard };
  }
  const density = Math.exp(-0.5 * t * t) / ROOT_2_PI;
  const above = t > 0 ? tailOrSeries(t, density) : null;
  const below = above === null ? 0.5 + density * series(t) : 1 - above;
  return { log: above === null ? Math.log(below) : Math.log1p(-above), hazard: density / below };
}

/** 1 − Φ(t) for t > 0. */
function tailOrSeries(t: number, density: number): number {
  return t > -TAIL ? density / tailFraction(t) : 0.5 - density * series(t);
}

function tailFraction(x: number): number {
  let fraction = x;
  for (let k = FRACTION_TERMS; k >= 1; k -= 1) fraction = x + k / fraction;
  return fraction;
}

function series(t: number): number {
  let term = t;
  let sum = t;
  for (let odd = 3; Math.abs(term) > Number.EPSILON * Math.abs(sum); odd += 2) {
    term *= (t * t) / odd;
    sum += term;
  }
  return sum;
}
