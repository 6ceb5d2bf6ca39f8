/** A helical compression spring of round wire, as far as its rate and stress go. */
export interface CoilSI {
  /** Wire diameter d [m]. */
  readonly wire: number;
  /** Mean coil diameter D, from wire centre to wire centre [m]. */
  readonly mean: number;
  /** Active coils Na, those that twist [-]. */
  readonly active: number;
  /** Shear modulus G of the wire [Pa]; tables disagree by several percent: shearModulus.ts. */
  readonly shearModulus: number;
}

/**
 * Rate of the spring [N/m].
 *   k = G d⁴/(8 D³ Na)                                                                        (10-9)
 * 1 % of wire diameter is 4 % of rate. Valid: small pitch angle, no coil touching another.
 * Throws RangeError unless all four are above 0 and D > d.
 * Source: Budynas, Nisbett, Shigley's Mechanical Engineering Design, 10th ed., chapter 10, as are all numbers below.
 * Checked: checks/shigley-helical-springs.test.ts, checks/bhandari-design-of-machine-elements.test.ts.
 */
export function coilRate(coil: CoilSI): number {
  requireAbove('coilRate: active coils', coil.active, 0);
  requireAbove('coilRate: shear modulus, Pa,', coil.shearModulus, 0);
  const index = springIndex(coil);
  return (coil.shearModulus * coil.wire) / (8 * index ** 3 * coil.active);
}

/** Mean coil diameter from the outside diameter: D = OD − d [m]. */
export function meanDiameter(outside: number, wire: number): number {
  return outside - wire;
}

/**
 * What the wire displaces [m³]: its section along all its coils, V = (π d²/4) · π D Nt; the pitch adds less than 1 %.
 * total  coils counted on the spring, Nt. Derived: a torus for each coil (Pappus).
 */
export function coilVolume(wire: number, mean: number, total: number): number {
  return ((Math.PI * wire) / 2) ** 2 * mean * total;
}

/** Spring index C = D/d [-]; 4 to 12 is usual (10-18). Throws RangeError unless d > 0 and D > d. */
export function springIndex(coil: CoilSI): number {
  requireAbove('springIndex: wire diameter, m,', coil.wire, 0);
  requireAbove('springIndex: mean coil diameter, m,', coil.mean, coil.wire);
  return coil.mean / coil.wire;
}

/** Wahl's factor for curvature and direct shear: (4C − 1)/(4C − 4) + 0.615/C [-]  (10-4). Throws RangeError unless C > 1. */
export function wahlFactor(index: number): number {
  requireAbove('wahlFactor: spring index', index, 1);
  return (4 * index - 1) / (4 * index - 4) + 0.615 / index;
}

/** Bergsträsser's factor, within 1.4 % of Wahl's: (4C + 2)/(4C − 3) [-]  (10-5). Throws RangeError unless C > 1. */
export function bergstraesserFactor(index: number): number {
  requireAbove('bergstraesserFactor: spring index', index, 1);
  return (4 * index + 2) / (4 * index - 3);
}

/**
 * Largest shear stress in the wire [Pa], at the inside of the coil.
 *   τ = K 8 F D/(π d³)                                                                        (10-7)
 * F  force on the spring [N];  K  one of the two factors above [-]
 */
export function shearStress(coil: CoilSI, force: number, factor: number): number {
  return (factor * 8 * force * coil.mean) / (Math.PI * coil.wire ** 3);
}

/** How the coil ends are made; closed is also called squared. */
export type CoilEnds = 'plain' | 'plain ground' | 'closed' | 'closed ground';

/**
 * What each kind of end takes: coils that do not twist, wire diameters in the solid length beyond Nt, and in the free
 * length beyond pitch times pitches, with the pitches beyond Na.
 * Source: Shigley, 10th ed., Table 10-1; the same in Machinery's Handbook, 31st ed., p. 318, Spring Design Table 3.
 */
const ends: Record<CoilEnds, { dead: number; solidWires: number; freeWires: number; freePitches: number }> = {
  plain: { dead: 0, solidWires: 1, freeWires: 1, freePitches: 0 },
  'plain ground': { dead: 1, solidWires: 0, freeWires: 0, freePitches: 1 },
  closed: { dead: 2, solidWires: 1, freeWires: 3, freePitches: 0 },
  'closed ground': { dead: 2, solidWires: 0, freeWires: 2, freePitches: 0 },
};

/**
 * Active coils Na from the total coils Nt counted on the spring [-].
 *   plain Nt;  plain ground Nt − 1;  closed, ground or not, Nt − 2
 * Closed ends of hot coiled springs: Nt − 1.5 after EN 13906-1 (from memory); count those and enter Na itself.
 * Throws RangeError where no active coil is left.
 */
export function activeCoils(total: number, kind: CoilEnds): number {
  const { dead } = ends[kind];
  requireAbove(`activeCoils: total coils with ${kind} ends`, total, dead);
  return total - dead;
}

/** Total coils Nt from those that give, Na [-]: the inverse of `activeCoils`. */
export function totalCoils(active: number, kind: CoilEnds): number {
  return active + ends[kind].dead;
}

/** What the ends add to the pitches in the free length [m]: plain d, closed 3d, closed and ground 2d. */
export function endsLength(kind: Exclude<CoilEnds, 'plain ground'>, wire: number): number {
  return wire * ends[kind].freeWires;
}

/** Length with all coils touching [m]: d (Nt + 1), with ground ends d Nt. */
export function solidLength(total: number, kind: CoilEnds, wire: number): number {
  return wire * (total + ends[kind].solidWires);
}

/** Free length [m] from the pitch of the active coils [m]: plain p Na + d, ground p (Na + 1); closed p Na + 3d, ground p Na + 2d. */
export function freeLength(total: number, kind: CoilEnds, wire: number, pitch: number): number {
  const { freePitches, freeWires } = ends[kind];
  return pitch * (activeCoils(total, kind) + freePitches) + wire * freeWires;
}

/** How the two ends of a spring are held. */
export type SpringSeats = 'both flat' | 'one flat, one hinged' | 'both hinged' | 'one flat, one free';

/** α, Table 10-2, where the second is printed 0.707 (from memory, but for 0.5). */
const seatFactor: Record<SpringSeats, number> = {
  'both flat': 0.5,
  'one flat, one hinged': Math.SQRT1_2,
  'both hinged': 1,
  'one flat, one free': 2,
};

/**
 * Free length from which a steel spring may buckle under load [m], with nothing inside or around to guide it.
 *   L0 = 2.63 D/α                                                                             (10-13)
 */
export function criticalFreeLength(mean: number, seats: SpringSeats): number {
  return (2.63 * mean) / seatFactor[seats];
}

function requireAbove(what: string, value: number, bound: number): void {
  if (!(value > bound)) throw new RangeError(`${what} ${value}; it must be above ${bound}`);
}
