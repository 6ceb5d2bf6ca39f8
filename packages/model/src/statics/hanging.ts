import { root } from '../numerics/root.ts';
import { blankEndAt, endAt } from './endAt.ts';
import { type EndSI, GRAVITY } from './machine.ts';

/**
 * Wheel travel [m] at which the wheel hangs in the air, body level, frictionless: Q(z) = −m_u g, within 0 <= z <= z_max.
 * 0 unless a top-out spring is stronger at the stop than spring, gas and the wheel's own weight.
 * Derived: the balance of the wheel with no ground under it.
 */
export function hangingTravel(end: EndSI, rake: number, travelMax: number): number {
  if (end.struts.every((strut) => strut.topOut === null)) return 0;
  const at = blankEndAt();
  const pull = (travel: number): number => {
    endAt(end, rake, 0, travel, 0, at);
    return at.force + end.unsprung * GRAVITY;
  };
  if (pull(0) >= 0) return 0;
  return pull(travelMax) <= 0 ? travelMax : root(pull, 0, travelMax, 1e-12);
}
