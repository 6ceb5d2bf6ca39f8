import type { HardPointsSI } from './hardPoints.ts';

/**
 * Whether the link is pulled or pushed when the damper is compressed, in the reference attitude; null without a link.
 * Moments about the rocker's pivot: D × (D − E) + t B × (C − B) = 0, t > 0 a link that pulls on its pin.
 */
export function linkForce(points: HardPointsSI): 'pulls' | 'pushes' | null {
  if (points.kind === 'direct') return null;
  const { rocker, linkEnd, rockerEye, farEye } = points;
  const { pivot, pin } = rocker;
  const ofDamper =
    (rockerEye.x - pivot.x) * (rockerEye.height - farEye.height) -
    (rockerEye.height - pivot.height) * (rockerEye.x - farEye.x);
  const ofLink =
    (pin.x - pivot.x) * (linkEnd.height - pin.height) - (pin.height - pivot.height) * (linkEnd.x - pin.x);
  return ofDamper * ofLink < 0 ? 'pulls' : 'pushes';
}
