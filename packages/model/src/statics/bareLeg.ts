import type { StrutSI } from '../dampers/strut.ts';
import { root } from '../numerics/root.ts';
import type { RatedForce } from '../springs/forceAt.ts';
import { strutAt } from './endAt.ts';

/**
 * Stroke [m] at which a strut by itself comes to rest, nothing pulling at it and no friction: F(s) = 0, within 0 <= s <= strokeMax.
 * 0 unless a top-out spring is stronger at the stop than spring and gas: then the two squeeze each other, and the
 * strut is shorter by this than at its hard stop. So much more is the spring squeezed than its preload at the stop says.
 * Derived: the balance of the strut with nothing at its ends.
 */
export function strokeBare(strut: StrutSI, strokeMax: number): number {
  if (strut.topOut === null) return 0;
  const pull = (stroke: number): number => {
    strutAt(strut, stroke, at);
    return at.force;
  };
  if (pull(0) >= 0) return 0;
  const loosest = Math.min(strut.topOut.length, strokeMax);
  return pull(loosest) <= 0 ? loosest : root(pull, 0, loosest, 1e-12);
}

const at: RatedForce = { force: 0, rate: 0 };
