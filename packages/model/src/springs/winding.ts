import { type CoilSI, coilRate } from './coil.ts';

/** A spring wound from one wire with several pitches. */
export interface WindingSI {
  /** Wire diameter d [m]. */
  readonly wire: number;
  /** Mean coil diameter D, the same all along [m]. */
  readonly mean: number;
  /** Shear modulus G of the wire [Pa]. */
  readonly shearModulus: number;
  /** In any order: where along the spring a section lies makes no difference. */
  readonly sections: readonly WoundSectionSI[];
}

/** Coils of one pitch. */
export interface WoundSectionSI {
  /** Coils that twist, n [-]. */
  readonly coils: number;
  /** From one coil's centre to the next, free, p [m]. */
  readonly pitch: number;
}

/** Force against compression of the whole spring, as `SpringSI` has a table. */
export interface WindingTable {
  readonly compression: readonly number[];
  readonly force: readonly number[];
}

/**
 * Force of a spring whose sections close one after another, the tightest first, until all its coils touch: the last point.
 *   k1 = G d⁴/(8 D³)              rate of a single coil
 *   x(F) = Σ n_i min(F/k1, p_i − d)
 * Every coil bears the same force; a section gives n_i F/k1 until its gaps p_i − d are closed, at F = k1 (p_i − d), and its coils are
 * dead from there on. Between two closings the rate is k1/Σ n of the sections still open.
 * Returns one point for each section after the first at 0, 0. Beyond the last there is no more compression.
 * Valid: small pitch angle; each section of one even pitch, so that it closes at once. A real one closes over a little way: the rate
 * goes up more gently than here, about the same force.
 * Throws RangeError unless every pitch is above the wire, no two are the same, and coils are left to give.
 * Source: the rate of one coil as `coilRate` has it (also EN 13906-1, from memory); springs in series, derived. Checked coil by coil:
 * winding.test.ts.
 */
export function windingTable({ wire, mean, shearModulus, sections }: WindingSI): WindingTable {
  const single: CoilSI = { wire, mean, active: 1, shearModulus };
  const perCoil = coilRate(single);
  const closing = [...sections].sort((a, b) => a.pitch - b.pitch);
  const compression = [0];
  const force = [0];
  for (const [i, { pitch }] of closing.entries()) {
    const gap = pitch - wire;
    const before = i === 0 ? wire : closing[i - 1]!.pitch;
    if (!(pitch > before)) {
      const rule = i === 0 ? `the wire, ${wire} m` : `that of the section before, ${before} m`;
      throw new RangeError(`windingTable: pitch ${pitch} m; it must be above ${rule}`);
    }
    force.push(perCoil * gap);
    compression.push(
      closing.reduce((sum, section) => sum + section.coils * Math.min(gap, section.pitch - wire), 0),
    );
  }
  return { compression, force };
}

/** Free length of its sections [m], without the ends' own: Σ n p. */
export function woundLength(sections: readonly WoundSectionSI[]): number {
  return sections.reduce((sum, { coils, pitch }) => sum + coils * pitch, 0);
}
