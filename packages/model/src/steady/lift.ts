import { root } from '../numerics/root.ts';
import type { Prepared } from '../statics/prepared.ts';
import type { SteadyAction } from './forces.ts';
import { steadyOf } from './steady.ts';

/** No tyre on a road brakes or drives harder than this [m/s²]. */
export const HARDEST = 15;
/** Steps in which it is looked for, and how near it is brought [m/s²]. */
const STEP = 0.5;
const NEAR = 1e-6;

/**
 * The deceleration (or acceleration) [m/s²] from which a steady action takes a wheel off the ground: the rear wheel when
 * braking, the front wheel when driving. Null where it stays down up to 15 m/s², or where the balance is lost before.
 * start  a state to begin from: the rest
 * Needs grip enough; a tyre that slides lifts nothing.
 */
export function liftsFrom(
  prepared: Prepared,
  start: ArrayLike<number>,
  actionAt: (gain: number) => SteadyAction,
): number | null {
  let from = start;
  for (let gain = STEP; gain <= HARDEST; gain += STEP) {
    const answer = steadyOf(prepared, from, actionAt(gain));
    if (answer.kind === 'not found') return null;
    if (answer.kind === 'lifts') {
      const near = from;
      return root((at) => loadLeft(prepared, near, actionAt(at)), gain - STEP + NEAR, gain, NEAR);
    }
    from = answer.stand.state;
  }
  return null;
}

/** Load of the wheel that goes light [N]; where no balance is found so near to one that is, it has lifted. */
function loadLeft(prepared: Prepared, start: ArrayLike<number>, action: SteadyAction): number {
  const answer = steadyOf(prepared, start, action);
  if (answer.kind === 'not found') return -1;
  return action.kind === 'braking' ? answer.stand.rearLoad : answer.stand.frontLoad;
}
