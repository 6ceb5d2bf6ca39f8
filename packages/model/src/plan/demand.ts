import { compressionFor, type SpringSI } from '../springs/spring.ts';
import { strutAt } from '../statics/endAt.ts';
import { FRONT_TRAVEL, gradientAt, REAR_TRAVEL, type State } from '../statics/gradient.ts';
import { GRAVITY } from '../statics/machine.ts';
import type { EndName, Prepared } from '../statics/prepared.ts';
import { type Settled, settle, startState } from '../statics/settle.ts';

/** What the springs of an end must bear for the wheel to rest at a wanted travel; it does not hang on which spring bears it. */
export interface Demand {
  /** [u, θ, z_r, z_f] with that end where it is wanted. */
  readonly state: State;
  readonly travel: number;
  readonly stroke: number;
  readonly motionRatio: number;
  /** World rise of the axle for each metre of travel with the body held, cos θ − X' sin θ [-]. */
  readonly rise: number;
  /** Force of each spring [N] where all struts of the end share alike; 0 or less where gas and rubber hold it up alone. */
  readonly springForce: number;
}

/**
 * Where the balance with a held end went: a demand, or why there is none. `residual` is the force left over, or, where the
 * machine tips, what would have to hold the other wheel down [N].
 */
export type DemandAnswer =
  | { readonly kind: 'demand'; readonly demand: Demand }
  | { readonly kind: 'outside travel'; readonly travel: number; readonly travelMax: number }
  | { readonly kind: 'no rest'; readonly residual: number };

/**
 * Holds one end at a wheel travel, lets the rest of the machine settle, and reads what the springs of that end must bear:
 *   Σ F_strut = (N − m_u g)(cos θ − X' sin θ) / MR,   F_spring = (Σ F_strut − Σ (gas + rubber − top-out)) / count
 * otherTravel  where the other end is held too (the answer with both ends at target); null where it settles
 * Outside travel is also a place where the ratio is 0 and no spring can bear anything.
 */
export function demandAt(
  prepared: Prepared,
  name: EndName,
  travel: number,
  otherTravel: number | null = null,
): DemandAnswer {
  const travelMax = name === 'rear' ? prepared.rearTravelMax : prepared.frontTravelMax;
  if (!(travel >= 0 && travel < travelMax)) return { kind: 'outside travel', travel, travelMax };
  const state = new Float64Array(4);
  const settled: Settled = { converged: false, residual: 0, iterations: 0 };
  startState(prepared, state);
  state[name === 'rear' ? REAR_TRAVEL : FRONT_TRAVEL] = travel;
  if (otherTravel !== null) state[name === 'rear' ? FRONT_TRAVEL : REAR_TRAVEL] = otherTravel;
  settle(prepared, state, 0, otherTravel === null ? name : 'both', settled);
  const { rear, front } = prepared.gradient;
  if (!settled.converged) return { kind: 'no rest', residual: settled.residual };
  const least = Math.min(rear.wheelLoad, front.wheelLoad);
  if (least <= 0) return { kind: 'no rest', residual: -least };
  if (!(prepared.gradient[name].at.motionRatio > 0)) return { kind: 'outside travel', travel, travelMax };
  return { kind: 'demand', demand: demandHere(prepared, name, state) };
}

/** The demand on the springs of an end at a state of the machine; writes `prepared.gradient` there. */
export function demandHere(prepared: Prepared, name: EndName, state: State): Demand {
  gradientAt(prepared, state, 0);
  const end = prepared.machine[name];
  const wheel = prepared.gradient[name];
  const { stroke, motionRatio } = wheel.at;
  let wanted = ((wheel.wheelLoad - end.unsprung * GRAVITY) * wheel.rise) / motionRatio;
  const strut = { force: 0, rate: 0, energy: 0 };
  for (const each of end.struts) {
    strutAt({ ...each, spring: NO_SPRING }, stroke, strut);
    wanted -= strut.force;
  }
  return {
    state,
    travel: state[name === 'rear' ? REAR_TRAVEL : FRONT_TRAVEL]!,
    stroke,
    motionRatio,
    rise: wheel.rise,
    springForce: wanted / end.struts.length,
  };
}

const NO_SPRING: SpringSI = { kind: 'linear', rate: 0 };

/** Preload [m] at which a spring answers a demand: p = x(F) − s. Null where no spring force is wanted at all, and where there is no spring. */
export function preloadFor(spring: SpringSI, demand: Demand): number | null {
  return demand.springForce > 0 && spring.kind !== 'none'
    ? compressionFor(spring, demand.springForce) - demand.stroke
    : null;
}
