import type { MachineSI } from '../statics/machine.ts';
import { type Prepared, prepare } from '../statics/prepared.ts';
import { restOf } from '../statics/rest.ts';
import { type CrownsSI, leanToTouch, type PointSI } from './leanAngle.ts';

/** A lean in a steady bend, and the machine as the bend presses it. */
export interface BendLean {
  readonly angle: number;
  readonly prepared: Prepared;
  readonly state: readonly number[];
  /** dφ'/dφ: how the angle at which the point touches moves with the angle at which the springs are pressed. */
  readonly feedback: number;
}

/** How near both angles are brought [rad], and how often that is tried. */
const NEAR = 1e-10;
const TRIES = 60;
/** Beyond this no tyre holds, and the load in the plane of the machine has no end [rad]. */
const STEEPEST = 1.3;
const STEP = 1e-5;

/**
 * The lean [rad] at which a point touches in a steady bend: gravity and the pull outward press the machine down in its own
 * plane by 1/cos φ, springs and tyres give, and the point comes down before it would at a stand.
 *   φ = touch(rest at 1/cos φ times the weight)
 * Null where it never touches before 1.3 rad (75°), and where the machine has no rest so pressed (`restOf`).
 * Valid: steady bend on level ground, thin tyres as to the load, rider in line with the machine; bumps come on top.
 * Source: moments in the leaning plane, tan φ = v²/(g r), load g/cos φ (any textbook of vehicle dynamics).
 */
export function leanInBend(
  machine: MachineSI,
  point: PointSI & { readonly sideways: number },
  crowns: CrownsSI,
): BendLean | null {
  let pressedAt = 0;
  for (let i = 0; i < TRIES; i += 1) {
    const touch = touchPressedAt(machine, point, crowns, pressedAt);
    if (touch === null) return null;
    const beside = touchPressedAt(machine, point, crowns, pressedAt + STEP);
    const feedback = beside === null ? 0 : (beside.angle - touch.angle) / STEP;
    const gap = touch.angle - pressedAt;
    if (Math.abs(gap) < NEAR) return { ...touch, feedback };
    // Newton on touch(φ) − φ, which falls all along: what is pressed further touches sooner.
    pressedAt = Math.max(0, pressedAt + gap / (1 - Math.min(0, feedback)));
    if (pressedAt > STEEPEST) return null;
  }
  return null;
}

function touchPressedAt(
  machine: MachineSI,
  point: PointSI & { readonly sideways: number },
  crowns: CrownsSI,
  lean: number,
): Omit<BendLean, 'feedback'> | null {
  const prepared = prepare(heavier(machine, 1 / Math.cos(lean)));
  const answer = restOf(prepared);
  if (answer.kind !== 'rest') return null;
  const { state } = answer.rest;
  const angle = leanToTouch(prepared, state, point, crowns);
  return angle === null ? null : { angle, prepared, state };
}

/** Every mass so many times heavier: the same balance as under so much more gravity. */
export function heavier(machine: MachineSI, times: number): MachineSI {
  const { sprung, load, rear, front } = machine;
  return {
    ...machine,
    sprung: { ...sprung, mass: times * sprung.mass },
    load: {
      mass: times * load.mass,
      momentX: times * load.momentX,
      momentHeight: times * load.momentHeight,
    },
    rear: { ...rear, unsprung: times * rear.unsprung },
    front: { ...front, unsprung: times * front.unsprung },
  };
}
