import { strokeAt } from '../rear/kinematics.ts';
import { leastRate } from '../springs/spring.ts';
import { blankEndAt, endAt, type Settling } from './endAt.ts';
import { energyAt, FRONT_TRAVEL, gradientAt, REAR_TRAVEL, type State } from './gradient.ts';
import { type EndSI, GRAVITY } from './machine.ts';
import type { EndName, Prepared } from './prepared.ts';
import { type Settled, settle, standsOnBoth, startState } from './settle.ts';

/** Places looked at along the travel when a machine may have several rests. */
const SCAN = 64;
/** Into how many a step is parted where a second rest may lie within it, and how often: down to a four-thousandth of the travel. */
const PARTS = 8;
const PARTED = 2;

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
  const found = (['rear', 'front'] as const).flatMap((end) =>
    canHaveSeveral(prepared, end) ? restsAlong(prepared, end, state) : [],
  );
  const rests = found.filter((rest, i) => found.findIndex((each) => isSame(each.state, rest.state)) === i);
  if (rests.length < 2) return [];
  const best = rests.reduce((a, b) => (b.energy < a.energy ? b : a));
  state.set(best.state);
  return rests
    .filter((rest) => rest !== best)
    .map(({ end, state: at, reachedBy }) => ({
      end,
      rearTravel: at[REAR_TRAVEL]!,
      frontTravel: at[FRONT_TRAVEL]!,
      reachedBy,
    }));
}

/**
 * A second look where the first solve ended on one wheel or nowhere: from each end topped out, half in and bottomed.
 * True, with `state` and `settled` there, as soon as the machine stands on both wheels; false leaves them as they were.
 */
export function standsElsewhere(
  prepared: Prepared,
  state: State,
  settling: Settling,
  settled: Settled,
): boolean {
  const trial = new Float64Array(4);
  const ended: Settled = { converged: false, residual: 0, iterations: 0 };
  for (const rear of [0.5, 0, 1]) {
    for (const front of [0.5, 0, 1]) {
      startState(prepared, trial);
      trial[REAR_TRAVEL] = rear * prepared.rearTravelMax;
      trial[FRONT_TRAVEL] = front * prepared.frontTravelMax;
      settle(prepared, trial, settling, 'both', ended);
      settle(prepared, trial, settling, 'none', ended);
      if (!standsOnBoth(prepared, trial, ended)) continue;
      state.set(trial);
      Object.assign(settled, ended);
      return true;
    }
  }
  gradientAt(prepared, state, settling);
  return false;
}

/**
 * Whether an end could have a second rest: somewhere along its travel the wheel rate is below a few times the
 * softening by pitch, about g M h / L² (a body of weight M g, its centre h above the ground, tipping about the other wheel).
 */
function canHaveSeveral(prepared: Prepared, name: EndName): boolean {
  const { machine } = prepared;
  const { sprung, load, geometry } = machine;
  const toppling = GRAVITY * (sprung.mass * sprung.height + load.momentHeight);
  const softening = toppling / (geometry.wheelbase * geometry.wheelbase);
  const enough = 4 * softening;
  if (rateAtLeast(machine[name], geometry.rake) >= enough) return false;
  const travelMax = name === 'rear' ? prepared.rearTravelMax : prepared.frontTravelMax;
  return leastWheelRate(machine[name], geometry.rake, travelMax) < enough;
}

/** What the wheel rate is at the least, told at once where one ratio holds all along the travel [N/m]; else −∞: to be looked for. */
function rateAtLeast(end: EndSI, rake: number): number {
  if (end.kinematics.kind !== 'ratio' && end.kinematics.kind !== 'fork') return Number.NEGATIVE_INFINITY;
  strokeAt(end.kinematics, rake, 0, ratio);
  let rate = 0;
  for (const { spring, preload } of end.struts) if (preload >= 0) rate += leastRate(spring);
  return rate * ratio.motionRatio * ratio.motionRatio;
}

const ratio = { stroke: 0, motionRatio: 0, ratioSlope: 0 };

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
  readonly end: EndName;
  readonly state: Float64Array;
  readonly energy: number;
  readonly reachedBy: OtherRest['reachedBy'];
}

/** All rests on both wheels, by rising travel of the end that is scanned. */
function restsAlong(prepared: Prepared, end: EndName, start: State): readonly Found[] {
  const travelMax = end === 'rear' ? prepared.rearTravelMax : prepared.frontTravelMax;
  const places = placesAlong(prepared.machine[end], travelMax);
  const held = heldAlong(prepared, end, start, places, PARTED);
  const rests: State[] = [];
  held.forEach(({ state, push }, i) => {
    const before = i === 0 ? Number.NEGATIVE_INFINITY : held[i - 1]!.push;
    const isLast = i === held.length - 1;
    if ((before < 0 && push >= 0) || (isLast && push < 0)) addRest(prepared, state, rests);
  });
  return rests.map((rest, i) => {
    gradientAt(prepared, rest, 0);
    return { end, state: rest, energy: energyAt(prepared, rest), reachedBy: reachedBy(i, rests.length) };
  });
}

/** Even steps, and where a drawn ratio bends: at each of its rows and in the middle between two, however close they lie. */
function placesAlong({ kinematics }: EndSI, travelMax: number): readonly number[] {
  const even = Array.from({ length: SCAN + 1 }, (_, i) => (travelMax * i) / SCAN);
  if (kinematics.kind !== 'table') return even;
  const { x } = kinematics.curve;
  const bends = x.flatMap((each, i) => (i === 0 ? [each] : [0.5 * (x[i - 1]! + each), each]));
  const within = bends.filter((each) => each > 0 && each < travelMax);
  return [...even, ...within].sort((a, b) => a - b);
}

/** The machine with one wheel held, all else settled: and how it pushes that wheel out [N]. */
interface HeldAt {
  readonly travel: number;
  readonly state: State;
  readonly push: number;
}

/** Held at each of the places where it settles, closer together where the push may come through 0 and back between two of them. */
function heldAlong(
  prepared: Prepared,
  end: EndName,
  start: State,
  places: readonly number[],
  parted: number,
): readonly HeldAt[] {
  const place = end === 'rear' ? REAR_TRAVEL : FRONT_TRAVEL;
  const settled: Settled = { converged: false, residual: 0, iterations: 0 };
  const state = Float64Array.from(start);
  const held = places.flatMap((travel): HeldAt[] => {
    state[place] = travel;
    settle(prepared, state, 0, end, settled);
    if (!settled.converged) return [];
    return [{ travel, state: Float64Array.from(state), push: prepared.gradient[end].travel }];
  });
  if (parted === 0) return held;
  return held.flatMap((here, i): readonly HeldAt[] => {
    const next = held[i + 1];
    if (next === undefined || !mayTurn(held, i)) return [here];
    const step = (next.travel - here.travel) / PARTS;
    const between = Array.from({ length: PARTS - 1 }, (_, k) => here.travel + (k + 1) * step);
    return [here, ...heldAlong(prepared, end, here.state, between, parted - 1)];
  });
}

/** Whether the push changes so much about a step that it may come through 0 and back within it. */
function mayTurn(held: readonly HeldAt[], i: number): boolean {
  const change = (from: number): number =>
    from < 0 || from + 1 >= held.length ? 0 : Math.abs(held[from + 1]!.push - held[from]!.push);
  const nearest = Math.min(Math.abs(held[i]!.push), Math.abs(held[i + 1]!.push));
  return nearest < Math.max(change(i - 1), change(i), change(i + 1));
}

function addRest(prepared: Prepared, near: State, rests: State[]): void {
  const settled: Settled = { converged: false, residual: 0, iterations: 0 };
  const state = Float64Array.from(near);
  settle(prepared, state, 0, 'none', settled);
  if (!standsOnBoth(prepared, state, settled)) return;
  if (!rests.some((rest) => isSame(rest, state))) rests.push(state);
}

function isSame(one: State, other: State): boolean {
  return [REAR_TRAVEL, FRONT_TRAVEL].every((place) => Math.abs(one[place]! - other[place]!) < 1e-7);
}

function reachedBy(place: number, count: number): OtherRest['reachedBy'] {
  if (place === 0) return 'letting down';
  return place === count - 1 ? 'letting up' : 'neither way alone';
}
