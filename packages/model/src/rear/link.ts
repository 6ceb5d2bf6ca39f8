import type { LinkageSI } from './hardPoints.ts';

/** What stays the same of a rocker and its link, however they stand. */
export interface Loop {
  /** From the rocker's pivot to its pin in the reference attitude [m]. */
  armX: number;
  armHeight: number;
  /** Squares of rocker arm and link [m²]. */
  armSquare: number;
  linkSquare: number;
  /** On which side of the line from rocker pivot to link end the pin was put: +1 or −1, 0 on the line itself. */
  side: number;
}

/** Reads the loop off the hard points. */
export function loopOf({ rocker, linkEnd }: LinkageSI, out: Loop): void {
  const armX = rocker.pin.x - rocker.pivot.x;
  const armHeight = rocker.pin.height - rocker.pivot.height;
  const endX = linkEnd.x - rocker.pivot.x;
  const endHeight = linkEnd.height - rocker.pivot.height;
  out.armX = armX;
  out.armHeight = armHeight;
  out.armSquare = armX * armX + armHeight * armHeight;
  out.linkSquare = (endX - armX) * (endX - armX) + (endHeight - armHeight) * (endHeight - armHeight);
  out.side = Math.sign(endX * armHeight - endHeight * armX);
}

/** A place in the plane, to be written into [m]. */
export interface Place {
  x: number;
  height: number;
}

/**
 * Where the pin stands, seen from the rocker's pivot, when the link's other end stands at (endX, endHeight) from there:
 * the crossing of two circles, rocker arm r about the pivot and link l about that end.
 *   pin = u c + v Jc,  u = (c² + r² − l²)/2c²,  v = ± √(r²/c² − u²)       c = end, J turns by a right angle
 * Of the two crossings the one on the side that was built. Returns false, `out` then being unusable, where the circles
 * do not cross: link and rocker cannot be joined there.
 * Source: R. L. Norton, Design of Machinery, 4.5 (open and crossed circuit; chapter from memory), in coordinates.
 * Checked: checks/four-bar-positions.test.ts; against Newton's method in wheelMotion.test.ts.
 */
export function pinAt(loop: Loop, endX: number, endHeight: number, out: Place): boolean {
  const inverse = 1 / (endX * endX + endHeight * endHeight);
  const u = 0.5 + 0.5 * (loop.armSquare - loop.linkSquare) * inverse;
  const rest = loop.armSquare * inverse - u * u;
  if (!(rest > 0)) return false;
  const v = loop.side * Math.sqrt(rest);
  out.x = u * endX - v * endHeight;
  out.height = u * endHeight + v * endX;
  return true;
}

/** A loop to be filled. */
export function blankLoop(): Loop {
  return { armX: 0, armHeight: 0, armSquare: 0, linkSquare: 0, side: 0 };
}
