/** A tyre by its metric size designation, as in 130/80-17. */
export interface TyreSize {
  /** Nominal section width [m]. */
  readonly width: number;
  /** Section height as a share of the width. */
  readonly aspect: number;
  /** Rim diameter by its code, in inches. */
  readonly rim: number;
}

/**
 * Outer radius of a new, unloaded tyre by its size.
 *   R = d/2 + H,   H = S·aspect           d nominal rim diameter: the code × 25.4 mm, rounded to a millimetre
 * Source: UN Regulation No. 75, Tyres for L-category vehicles, paragraph 6.1 (D = d + 2H) and its table of d (from memory).
 * Checked: checks/tyre-sizes.test.ts. A tyre of that size may be some millimetres more or less, and wears down.
 */
export function nominalRadius({ width, aspect, rim }: TyreSize): number {
  return Math.round(rim * 25.4) / 2000 + width * aspect;
}
