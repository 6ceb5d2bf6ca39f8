import { blankEndAt, endAt } from './endAt.ts';
import { energyAt, FRONT_TRAVEL, gradientAt, PITCH, REAR_TRAVEL, type State } from './gradient.ts';
import { type EndSI, GRAVITY } from './machine.ts';
import type { EndName, Prepared } from './prepared.ts';
import { type Settled, settle } from './settle.ts';

/** Places looked at along the travel when a machine may have several rests. */
const SCAN = 64;

/** A second place to come to rest: reached by letting the machine down from full extension, or up from full compression. */
export interface OtherRest {
  readonly end: EndName;
  readonly rearTravel: number;
  readonly frontTravel: number;
  readonly reachedBy: 'letting down' | 'letting up' | 'neither way alone';
}

/**
 * The other rests of a machine that has more than one, and moves `state` to the one of least energy.
 * They can only exist where the wheel rate of an end falls below what the pitching body takes away: a falling motion
 * ratio with much preload. Then that end is held at each place of a scan, the rest of the machine settles, and the
 * force left over on the held wheel tells by its sign where it would go; every change from down to up is a rest.
 */
export function otherRests(prepared: Prepared, state: State): readonly OtherRest[] {
  for (const end of ['rear', 'front'] as const) {
    if (!canHaveSeveral(prepared, end)) continue;
    const rests = restsAlong(prepared, end, state);
    if (rests.length < 2) continue;
    const best = rests.reduce((a, b) => (b.energy < a.energy ? b : a));
    state.set(best.state);
    return rests
      .map((rest, i) => ({ rest, reachedBy: reachedBy(i, rests.length) }))
      .filter(({ rest }) => rest !== best)
      .map(({ rest, reachedBy: way }) => ({
        end,
        rearTravel: rest.state[REAR_TRAVEL]!,
        frontTravel: rest.state[FRONT_TRAVEL]!,
        reachedBy: way,
      }));
  }
  return [];
}

function reachedBy(place: number, count: number): OtherRest['reachedBy'] {
  if (place === 0) return 'letting down';
  return place === count - 1 ? 'letting up' : 'neither way alone';
}

/**
 * Whether an end could have a second rest: somewhere along its travel the wheel rate is below a few times the
 * softening by pitch, about g M h / L² (a body of weight M g, its centre h above the ground, tipping about the other wheel).
 */
function canHaveSeveral(prepared: Prepared, name: EndName): boolean {
  const { machine } = prepared;
  const end = machine[name];
  if (end.kinematics.kind === 'ratio' || end.kinematics.kind === 'fork') return false;
  const { sprung, load, geometry } = machine;
  const toppling = GRAVITY * (sprung.mass * sprung.height + load.momentHeight);
  const softening = toppling / (geometry.wheelbase * geometry.wheelbase);
  const travelMax = name === 'rear' ? prepared.rearTravelMax : prepared.frontTravelMax;
  return leastWheelRate(end, geometry.rake, travelMax) < 4 * softening;
}

function leastWheelRate(end: EndSI, rake: number, travelMax: number): number {
  const at = blankEndAt();
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i <= SCAN; i += 1) {
    endAt(end, rake, 0, (travelMax * i) / SCAN, 0, at);
    least = Math.min(least, at.wheelRate);
  }
  return least;
}

interface Found {
  readonly state: Float64Array;
  readonly energy: number;
}

/** All stable rests, by rising travel of the end that is scanned. */
function restsAlong(prepared: Prepared, name: EndName, start: State): readonly Found[] {
  const travelMax = name === 'rear' ? prepared.rearTravelMax : prepared.frontTravelMax;
  const place = name === 'rear' ? REAR_TRAVEL : FRONT_TRAVEL;
  const settled: Settled = { converged: false, residual: 0, iterations: 0 };
  const state = Float64Array.from(start);
  const found: Found[] = [];
  let before = Number.NEGATIVE_INFINITY;
  for (let i = 0; i <= SCAN; i += 1) {
    state[place] = (travelMax * i) / SCAN;
    settle(prepared, state, 0, name, settled);
    if (!settled.converged) continue;
    const push = prepared.gradient[name].travel;
    if (before < 0 && push >= 0) addRest(prepared, name, Float64Array.from(state), found);
    before = push;
    if (i === SCAN && push < 0) addRest(prepared, name, Float64Array.from(state), found);
  }
  return found;
}

function addRest(prepared: Prepared, name: EndName, state: Float64Array, found: Found[]): void {
  const settled: Settled = { converged: false, residual: 0, iterations: 0 };
  settle(prepared, state, 0, 'none', settled);
  if (!settled.converged || Math.abs(state[PITCH]!) > 0.5) return;
  const place = name === 'rear' ? REAR_TRAVEL : FRONT_TRAVEL;
  if (found.some((rest) => Math.abs(rest.state[place]! - state[place]!) < 1e-7)) return;
  gradientAt(prepared, state, 0);
  found.push({ state, energy: energyAt(prepared, state) });
}
