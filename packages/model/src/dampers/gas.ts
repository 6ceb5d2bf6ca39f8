import type { RatedForce } from '../springs/forceAt.ts';

/** Gas shut in above or behind a rod: it pushes the strut apart. */
export interface GasSI {
  /** Area that the gas pushes on: the rod's section, or the fork tube's at its seal [m²]. */
  readonly area: number;
  /** Absolute pressure at full extension [Pa]. */
  readonly pressure: number;
  /** Volume at full extension [m³]. */
  readonly volume: number;
  /** n: 1 settled (isothermal); about 1.4 for fast strokes of air or nitrogen (adiabatic). */
  readonly exponent: number;
}

/**
 * Force of the gas at a stroke, extending the strut positive, above that of the air outside.
 *   V = V0 − A s,   P = P0 (V0/V)^n
 *   F = A (P − P_atm),   dF/ds = n A² P/V
 * s      shortening from full extension [m];  P_atm  air outside, absolute [Pa]
 * Writes into `out` force [N] and rate [N/m].
 * Valid: ideal gas, all of it shut in. Throws RangeError where the stroke would close the volume.
 * Source: p V^n = const; force and rate by differentiation. Checked: checks/fork-air-spring.test.ts.
 */
export function gasAt(gas: GasSI, stroke: number, atmosphere: number, out: RatedForce): void {
  const volume = volumeLeft(gas, stroke);
  const ratio = gas.volume / volume;
  const pressure = gas.pressure * (gas.exponent === 1 ? ratio : ratio ** gas.exponent);
  out.force = gas.area * (pressure - atmosphere);
  out.rate = (gas.exponent * gas.area * gas.area * pressure) / volume;
}

/**
 * Energy of the gas at a stroke [J], 0 at full extension; apart from `gasAt`, since a solve needs it seldom and its logarithm takes
 * longer than the force.
 *   E = P0 V0 ((V0/V)^(n−1) − 1)/(n − 1) − P_atm A s;   n = 1: P0 V0 ln(V0/V) − P_atm A s
 * Symbols, validity and errors as in `gasAt`. Source: ∫ F ds. Checked: checks/fork-air-spring.test.ts.
 */
export function gasEnergy(gas: GasSI, stroke: number, atmosphere: number): number {
  const swept = gas.area * stroke;
  /** ln(V0/V); written so that a short stroke keeps its digits. */
  const logRatio = Math.log1p(swept / volumeLeft(gas, stroke));
  const over = gas.exponent - 1;
  const work = over === 0 ? logRatio : Math.expm1(over * logRatio) / over;
  return gas.pressure * gas.volume * work - atmosphere * swept;
}

function volumeLeft(gas: GasSI, stroke: number): number {
  const swept = gas.area * stroke;
  const volume = gas.volume - swept;
  if (volume > 0) return volume;
  throw new RangeError(
    `gas: stroke ${stroke} m sweeps ${swept} m³ of ${gas.volume} m³; some gas volume must be left`,
  );
}

/**
 * The same gas for strokes too quick for its heat to get away, about the stroke at which it has settled: there it has the pressure that it
 * has now, and from there p V^n is kept.
 *   P(s) = P(s0) (V(s0)/V(s))^n     written as a gas of its own: P0' = P(s0) (V(s0)/V0)^n
 * settled  stroke s0 of the settled state [m];  exponent n, about 1.4 for dry air with no heat lost (adiabatic)
 * Throws RangeError where the stroke would close the volume.
 * Source: p V^n = const; γ of dry air 1.400 at 20 °C (Lange's Handbook of Chemistry, 10th ed., p. 1524, as tables cite it).
 */
export function quickAbout(gas: GasSI, settled: number, exponent: number): GasSI {
  const volume = volumeLeft(gas, settled);
  const pressure = gas.pressure * (gas.volume / volume) ** gas.exponent;
  return { ...gas, pressure: pressure * (volume / gas.volume) ** exponent, exponent };
}

/**
 * The air in one fork leg, above its oil.
 *   V(s) = A_bore · gap + A_seal (s_max − s),   pushing on A_seal
 * boreArea  section of the tube in which the oil level is read [m²]
 * sealArea  section that the air is sealed on, which the leg sweeps [m²]; equal to boreArea only where one is unknown
 * gap       air above the oil at full compression, spring as when the level was set [m]
 * strokeMax stroke from full extension to full compression [m]
 * pressure  absolute, at full extension [Pa]
 * Throws RangeError unless gap, areas and stroke are positive.
 * Source: geometry of the leg; common practice that the gap is read fully compressed.
 */
export function forkAir(
  boreArea: number,
  sealArea: number,
  gap: number,
  strokeMax: number,
  pressure: number,
  exponent: number,
): GasSI {
  if (!(boreArea > 0 && sealArea > 0 && gap > 0 && strokeMax > 0)) {
    throw new RangeError(
      `forkAir: areas ${boreArea} and ${sealArea} m², gap ${gap} m, stroke ${strokeMax} m; each must be above 0`,
    );
  }
  return { area: sealArea, pressure, volume: boreArea * gap + sealArea * strokeMax, exponent };
}
