/** How the axle moves in the body as the wheel travels. */
export type AxlePathSI =
  /** Straight along the body's vertical: an assumption that is said wherever it is used. */
  | { readonly kind: 'straight' }
  | SwingarmPathSI
  /** Along a telescopic fork of the machine's rake: rearward by tan(rake) of each unit of rise. */
  | { readonly kind: 'fork' };

/** On a circle about the swingarm pivot: x forward from the rear axle [m], height [m], in the reference attitude. */
export interface SwingarmPathSI {
  readonly kind: 'circle';
  readonly pivotX: number;
  readonly pivotHeight: number;
}

/** Place of an axle in the body at one travel: x and height [m], dx/dz [-], d²x/dz² [1/m]; dheight/dz is 1 by definition. */
export interface AxleAt {
  x: number;
  height: number;
  axleSlope: number;
  axleBend: number;
}

/**
 * Where the axle stands in the body at wheel travel z.
 * axleX, axleHeight  the axle at the reference travel [m];  rise = z − reference travel [m];  rake [rad], used by the fork
 *   fork    x = axleX − rise·tan(rake)
 *   circle  x = pivotX − √(a² − (h − pivotHeight)²) for an axle behind its pivot, a the arm's length
 * Throws RangeError when the arm is shorter than the height that the wheel would have to reach.
 */
export function axleAt(
  path: AxlePathSI,
  axleX: number,
  axleHeight: number,
  rise: number,
  rake: number,
  out: AxleAt,
): void {
  const height = axleHeight + rise;
  out.height = height;
  if (path.kind === 'circle') {
    const startX = path.pivotX - axleX;
    const startRise = axleHeight - path.pivotHeight;
    const above = height - path.pivotHeight;
    const reachSquared = startX * startX + startRise * startRise - above * above;
    if (!(reachSquared > 0)) {
      throw new RangeError(
        `axleAt: the axle cannot stand ${above} m above the pivot on an arm of ${Math.hypot(startX, startRise)} m; it must be longer`,
      );
    }
    const reach = Math.sqrt(reachSquared);
    out.x = path.pivotX - reach;
    out.axleSlope = above / reach;
    out.axleBend = (1 + out.axleSlope * out.axleSlope) / reach;
    return;
  }
  const lean = path.kind === 'fork' ? -Math.tan(rake) : 0;
  out.x = axleX + rise * lean;
  out.axleSlope = lean;
  out.axleBend = 0;
}
