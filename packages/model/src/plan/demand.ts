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
  /** Force of each spring [N] where all struts of the end share alike; 0 or less where gas and rubber hold it up alone. */
  readonly springForce: number;
}

/** Where the balance with a held end went: a demand, or why there is none. */
export type DemandAnswer =
  | { readonly kind: 'demand'; readonly demand: Demand }
  | { readonly kind: 'outside travel'; readonly travel: number; readonly travelMax: number }
  | { readonly kind: 'no rest'; readonly residual: number };

/**
 * Holds one end at a wheel travel, lets the rest of the machine settle, and reads what the springs of that end must bear:
 *   Σ F_strut = (N − m_u g)(cos θ − X' sin θ) / MR,   F_spring = (Σ F_strut − Σ (gas + rubber − top-out)) / count
 * `hold` 'both' holds the other end where `otherTravel` says as well (the answer with both ends at target).
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
  if (!settled.converged) return { kind: 'no rest', residual: settled.residual };
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
    springForce: wanted / end.struts.length,
  };
}

const NO_SPRING: SpringSI = { kind: 'linear', rate: 0 };

/** Preload [m] at which a spring answers a demand: p = x(F) − s. Null where no spring force is wanted at all. */
export function preloadFor(spring: SpringSI, demand: Demand): number | null {
  return demand.springForce > 0 ? compressionFor(spring, demand.springForce) - demand.stroke : null;
}
