import { normalBelow } from '../numerics/normalLaw.ts';

/**
 * What a reading says of the figure that the model predicts for it: that it is `value`; or, where a stop or the end of a
 * tape cut the reading off, only that it is no less or no more.
 */
export interface Evidence {
  readonly says: 'is' | 'at least' | 'at most';
  readonly value: number;
  /** Standard deviation of the reading, > 0, in the unit of `value`. */
  readonly deviation: number;
}

/** A reading about a predicted figure, as a line of least squares: (residual − slope·change)² about it, and what it adds. */
export interface Weighed {
  readonly residual: number;
  readonly slope: number;
  /** −2 log of how likely the reading is with that prediction, but for a constant; the square of its miss where it says 'is'. */
  readonly misfit: number;
}

/** Below this a reading that was cut off says nothing at all here. */
const NOTHING = 1e-12;

/**
 * is:        residual = (y − f)/σ, slope = 1/σ
 * at least:  t = (f − y)/σ, misfit = −2 log Φ(t); its slope −2h and bend 2h(h + t), h = φ/Φ, as a square of
 *            residual h/√(h(h + t)) and slope √(h(h + t))/σ.  At most: the same with the signs of f and y turned.
 * predicted  f, by the model
 * Source: maximum likelihood with censored observations, J. Tobin, Econometrica 26 (1958); one step of Newton's rule.
 */
export function weighed({ says, value, deviation }: Evidence, predicted: number): Weighed {
  const miss = (value - predicted) / deviation;
  if (says === 'is') return { residual: miss, slope: 1 / deviation, misfit: miss * miss };
  const sign = says === 'at least' ? 1 : -1;
  const t = -sign * miss;
  const { log, hazard } = normalBelow(t);
  const bend = hazard * (hazard + t);
  if (!(bend > NOTHING)) return { residual: 0, slope: 0, misfit: -2 * log };
  const root = Math.sqrt(bend);
  return { residual: hazard / root, slope: (sign * root) / deviation, misfit: -2 * log };
}
