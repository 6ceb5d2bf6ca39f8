import { type Loop, type Place, pinAt } from './link.ts';

/** How far a rocker is turned from the reference attitude, and how it turns with the body that pulls its link. */
export interface RockerTurn {
  cos: number;
  sin: number;
  /** dρ/dβ and d²ρ/dβ² of the rocker's turn ρ, β the turn of the body that holds the link's other end [-]. */
  slope: number;
  bend: number;
}

/**
 * Turn of a rocker whose link ends at C, which turns about P. All seen from the rocker's pivot, in the body that carries
 * it: (endX, endHeight) C, (radiusX, radiusHeight) C − P [m].
 *   w = B − C, B the pin:   w·w = l²      ⇒  w·w' = 0,  w·w'' = −w'·w'
 *   w' = ρ' JB − J(C − P),  w'' = ρ'' JB − ρ'² B + (C − P)
 * Returns false where link and rocker cannot be joined. Derived: the length of the link differentiated twice.
 */
export function rockerTurn(
  loop: Loop,
  endX: number,
  endHeight: number,
  radiusX: number,
  radiusHeight: number,
  out: RockerTurn,
): boolean {
  if (!pinAt(loop, endX, endHeight, pin)) return false;
  const { x, height } = pin;
  const inverse = 1 / loop.armSquare;
  out.cos = (loop.armX * x + loop.armHeight * height) * inverse;
  out.sin = (loop.armX * height - loop.armHeight * x) * inverse;
  const alongX = x - endX;
  const alongHeight = height - endHeight;
  const leverage = 1 / (endX * height - endHeight * x);
  const slope = (alongHeight * radiusX - alongX * radiusHeight) * leverage;
  const moveX = radiusHeight - slope * height;
  const moveHeight = slope * x - radiusX;
  out.slope = slope;
  out.bend =
    (slope * slope * (alongX * x + alongHeight * height) -
      (alongX * radiusX + alongHeight * radiusHeight) -
      (moveX * moveX + moveHeight * moveHeight)) *
    leverage;
  return true;
}

const pin: Place = { x: 0, height: 0 };
