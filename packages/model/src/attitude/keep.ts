import { root } from '../numerics/root.ts';
import type { MachineSI } from '../statics/machine.ts';
import { prepare } from '../statics/prepared.ts';
import { restOf } from '../statics/rest.ts';
import { type Attitude, attitudeAt } from './attitude.ts';
import { withClampHeight, withShockLength } from './otherGeometry.ts';

/** Parts of an attitude that a rider would have back. */
export type KeptPart = keyof Pick<Attitude, 'rake' | 'groundTrail' | 'seatHeight'>;

/** What brings it back: longer rear shocks, or fork tubes raised in their clamps. */
export type KeptBy = 'shock length' | 'clamp height';

/** The change [m] that brings a part of the attitude back, and how that part moves with it there [rad/m, m/m]. */
export type Keeping =
  | { readonly kind: 'change'; readonly change: number; readonly slope: number; readonly machine: MachineSI }
  /** No change up to `tried` [m] either way does. */
  | { readonly kind: 'none'; readonly tried: number };

/** How far a change is looked for [m], how fine the search is, and how near it is brought. */
const FURTHEST = 0.08;
const STEPS = 16;
const NEAR = 1e-7;
const DIFFERENCE = 1e-5;

/**
 * The shock length or clamp height that gives a part of the attitude its wanted value, the machine at rest with what is on
 * it: the true balance at each try, nearest to no change. What its adjuster reaches is not asked here.
 * Null where that part is not known (`forkOffset`, `seat`), the machine has no rest as it is, or the front is no fork.
 */
export function keepAttitude(machine: MachineSI, part: KeptPart, wanted: number, by: KeptBy): Keeping | null {
  if (by === 'clamp height' && machine.front.kinematics.kind !== 'fork') return null;
  const miss = (change: number): number | null => {
    const value = partWith(machine, part, by, change);
    return value === null ? null : value - wanted;
  };
  const here = miss(0);
  if (here === null) return null;
  const change = here === 0 ? 0 : nearestRoot(miss, here);
  if (change === null) return { kind: 'none', tried: FURTHEST };
  const [above, below] = [miss(change + DIFFERENCE), miss(change - DIFFERENCE)];
  if (above === null || below === null) return { kind: 'none', tried: FURTHEST };
  return {
    kind: 'change',
    change,
    slope: (above - below) / (2 * DIFFERENCE),
    machine: changed(machine, by, change)!,
  };
}

/** A machine with another shock length or clamp height; null where the rear cannot be so. */
export function changed(machine: MachineSI, by: KeptBy, change: number): MachineSI | null {
  return by === 'shock length' ? withShockLength(machine, change) : withClampHeight(machine, change);
}

function partWith(machine: MachineSI, part: KeptPart, by: KeptBy, change: number): number | null {
  const moved = changed(machine, by, change);
  if (moved === null) return null;
  const prepared = prepare(moved);
  const answer = restOf(prepared);
  return answer.kind === 'rest' ? attitudeAt(prepared, answer.rest.state)[part] : null;
}

/** The zero nearest to no change, looked for outward in even steps; null where there is none, or nothing stands so. */
function nearestRoot(miss: (change: number) => number | null, here: number): number | null {
  const step = FURTHEST / STEPS;
  const ends = { longer: { at: 0, value: here }, shorter: { at: 0, value: here } };
  for (let i = 1; i <= STEPS; i += 1) {
    for (const [name, sign] of [
      ['longer', 1],
      ['shorter', -1],
    ] as const) {
      const before = ends[name];
      const at = sign * i * step;
      const value = Number.isNaN(before.value) ? null : miss(at);
      if (value !== null && value > 0 !== before.value > 0) {
        const sure = (change: number): number => miss(change) ?? before.value;
        return root(sure, Math.min(before.at, at), Math.max(before.at, at), NEAR);
      }
      ends[name] = { at, value: value ?? Number.NaN };
    }
  }
  return null;
}
