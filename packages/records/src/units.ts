/**
 * The units a figure may be typed in, and their exact relation to SI.
 *
 * A typed value is never converted for storage: 160 lbf/in stays 160 lbf/in in the job. These two functions take the
 * unit off once on the way in and put it on once on the way out.
 *
 *   SI = (value + shift) · times / over
 * with whole numbers (but for the degree of angle), so that 9.5 mm gives the very number 0.0095 and not its neighbour.
 * Exact by definition: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, 1 gal (US) = 231 in³, standard gravity 9.80665 m/s²,
 * 0 °C = 273.15 K, 0 °F = 459.67 °F above absolute zero (definitions from memory). Checked beside: scipy.constants.
 */
interface Scale {
  readonly times: number;
  readonly over: number;
  /** Added to the typed value before scaling: a temperature does not start at absolute zero. */
  readonly shift?: number;
}

/** 1 lbf = 0.45359237 · 9.80665 N = 44482216152605 / 10^13 N, a whole number below 2^53. */
const poundForce = { times: 44_482_216_152_605, over: 1e13 } as const;

const scales = {
  length: {
    mm: { times: 1, over: 1000 },
    cm: { times: 1, over: 100 },
    m: { times: 1, over: 1 },
    in: { times: 254, over: 1e4 },
  },
  mass: { kg: { times: 1, over: 1 }, lb: { times: 45_359_237, over: 1e8 } },
  rate: {
    'N/mm': { times: 1000, over: 1 },
    'lbf/in': { times: poundForce.times, over: 254e9 },
    'kgf/mm': { times: 980_665, over: 100 },
  },
  hardening: { 'N/mm^3': { times: 1e9, over: 1 } },
  force: { N: { times: 1, over: 1 }, lbf: poundForce, kgf: { times: 980_665, over: 1e5 } },
  /** Gauge, as read on a gauge: the atmosphere is added in the sum, not here. */
  pressure: {
    bar: { times: 1e5, over: 1 },
    psi: { times: poundForce.times, over: 6_451_600_000 },
    kPa: { times: 1000, over: 1 },
  },
  angle: { deg: { times: Math.PI, over: 180 } },
  volume: {
    l: { times: 1, over: 1000 },
    ml: { times: 1, over: 1e6 },
    cm3: { times: 1, over: 1e6 },
    'gal (US)': { times: 3_785_411_784, over: 1e12 },
  },
  /** 1 ft = 0.3048 m = 381/1250 m, 1 in = 127/5000 m, and the pound-force's ratio divided by 5 so that it stays whole. */
  torque: {
    N·m: { times: 1, over: 1 },
    lbf·ft: { times: 8_896_443_230_521 * 381, over: 25e14 },
    lbf·in: { times: 8_896_443_230_521 * 127, over: 1e16 },
    kgf·m: { times: 980_665, over: 1e5 },
  },
  temperature: { C: { times: 1, over: 1, shift: 273.15 }, F: { times: 5, over: 9, shift: 459.67 } },
  /** Wheel travel per shock stroke, usually above 1. */
  leverage: { 'wheel/shock': { times: 1, over: 1 } },
  /** Shock stroke per wheel travel, usually below 1. */
  motion: { 'shock/wheel': { times: 1, over: 1 } },
  share: { '%': { times: 1, over: 100 } },
  /** 1 mile = 1609.344 m, exactly. */
  speed: { 'km/h': { times: 1000, over: 3600 }, mph: { times: 1_609_344, over: 3_600_000 } },
  acceleration: { g: { times: 980_665, over: 1e5 }, 'm/s²': { times: 1, over: 1 } },
} as const satisfies Record<string, Record<string, Scale>>;

type Scales = typeof scales;

export type Dimension = keyof Scales;

type UnitsByDimension = { [D in Dimension]: keyof Scales[D] & string };

/** The units of one dimension: `UnitOf<'length'>` is 'mm' | 'cm' | 'm' | 'in'. */
export type UnitOf<D extends Dimension> = UnitsByDimension[D];

export type Unit = UnitOf<Dimension>;

export const dimensions = Object.keys(scales) as readonly Dimension[];

/** The units of a dimension, the commonest in the workshop first. */
export function unitsOf<D extends Dimension>(dimension: D): readonly UnitOf<D>[] {
  return Object.keys(scales[dimension]) as UnitOf<D>[];
}

/** The dimension a unit belongs to; `undefined` where the text is no unit of ours. */
export function dimensionOf(unit: Unit): Dimension;
export function dimensionOf(unit: string): Dimension | undefined;
export function dimensionOf(unit: string): Dimension | undefined {
  return scaleByUnit.get(unit)?.dimension;
}

/**
 * Takes the unit off: a value as typed to SI (m, kg, N/m, N/m³, N, Pa gauge, rad, m³, N·m, K, and plain ratios).
 * RangeError where the unit is none of ours. Finite in, finite out, short of the largest numbers a double can hold.
 */
export function toSI(value: number, unit: Unit): number {
  const { times, over, shift = 0 } = scaleOf(unit);
  return ((value + shift) * times) / over;
}

/** Puts a unit on: the inverse of `toSI`. */
export function fromSI(value: number, unit: Unit): number {
  const { times, over, shift = 0 } = scaleOf(unit);
  return (value * over) / times - shift;
}

/** A difference or a ± to SI: as `toSI`, but 5 °C of ± is 5 K and not 278.15 K. */
export function differenceToSI(value: number, unit: Unit): number {
  const { times, over } = scaleOf(unit);
  return (value * times) / over;
}

/** A difference or a ± from SI: the inverse of `differenceToSI`. */
export function differenceFromSI(value: number, unit: Unit): number {
  const { times, over } = scaleOf(unit);
  return (value * over) / times;
}

const scaleByUnit: ReadonlyMap<string, Scale & { dimension: Dimension }> = new Map(
  dimensions.flatMap((dimension) =>
    Object.entries<Scale>(scales[dimension]).map(([unit, scale]) => [unit, { ...scale, dimension }] as const),
  ),
);

function scaleOf(unit: string): Scale {
  const scale = scaleByUnit.get(unit);
  if (!scale) throw new RangeError(`unit "${unit}": must be one of ${[...scaleByUnit.keys()].join(', ')}`);
  return scale;
}
