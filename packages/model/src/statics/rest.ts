import type { Settling } from './endAt.ts';
import { energyAt, FRONT_TRAVEL, PITCH, REAR_TRAVEL, type State } from './gradient.ts';
import { hangingTravel } from './hanging.ts';
import { type EndSI, GRAVITY } from './machine.ts';
import type { EndName, Prepared, WheelGradient } from './prepared.ts';
import { type Held, PITCH_USE, type Settled, settle, standsOnBoth, startState } from './settle.ts';
import { type OtherRest, otherRests, standsElsewhere } from './severalRests.ts';

/** Where an end stands. On a stop the wheel load no longer tells the spring force, and friction has no band. */
export type EndStanding = 'free' | 'topped out' | 'on top-out spring' | 'on rubber' | 'bottomed';

/** One end of a machine at rest. */
export interface EndRest {
  /** Wheel travel from the hard extension stop, and at metal-to-metal [m]. */
  readonly travel: number;
  readonly travelMax: number;
  /** Where the wheel hangs in the air [m]; not 0 where a top-out spring gives. */
  readonly hangingTravel: number;
  /** Damper stroke [m], motion ratio ds/dz [-]. */
  readonly stroke: number;
  readonly motionRatio: number;
  /** Force of the ground on the tyre [N]; its compression [m]. */
  readonly wheelLoad: number;
  readonly tyreDeflection: number;
  /** Wheel rate (struts only), ride rate (with the tyre in series) [N/m]. */
  readonly wheelRate: number;
  readonly rideRate: number;
  /** Ride frequency of this end, with the tyre and without [Hz]; null where nothing swings (no sprung load, on a stop). */
  readonly rideFrequency: number | null;
  readonly frequencyWithoutTyre: number | null;
  /** Force of the extension or compression stop at the wheel [N], 0 where it is free. */
  readonly stopForce: number;
  readonly standing: EndStanding;
}

/** A machine at rest. */
export interface Rest {
  readonly rear: EndRest;
  readonly front: EndRest;
  /** [u, θ, z_r, z_f], as in `State`. */
  readonly state: readonly number[];
  /** Nose-down positive [rad]. */
  readonly pitch: number;
  /** Potential energy [J]. */
  readonly energy: number;
  /** Force left over [N] and the steps it took. */
  readonly residual: number;
  readonly iterations: number;
  /** Further places where this machine can come to rest, by the travel of the end that has them; usually none. */
  readonly otherRests: readonly OtherRest[];
}

/** What a machine does with a load: it rests, it tips, or no rest was found (with the force left over). */
export type RestAnswer =
  | { readonly kind: 'rest'; readonly rest: Rest }
  | { readonly kind: 'tips'; readonly over: EndName }
  | { readonly kind: 'no rest'; readonly residual: number; readonly iterations: number };

/**
 * Where the machine comes to rest, frictionless unless `settling` says which way it came.
 * Topped out, on the rubber and bottomed are answers. A wheel load of 0 or less means that the load lies outside the wheels:
 * the machine tips over the other wheel.
 */
export function restOf(prepared: Prepared, settling: Settling = 0): RestAnswer {
  const state: State = new Float64Array(4);
  startState(prepared, state);
  return restFrom(prepared, state, settling, 'none');
}

/** The same from a start state, with travels held where `held` says; `state` is left at the rest. */
export function restFrom(prepared: Prepared, state: State, settling: Settling, held: Held): RestAnswer {
  const settled: Settled = { converged: false, residual: 0, iterations: 0 };
  settle(prepared, state, settling, held, settled);
  const found =
    standsOnBoth(prepared, state, settled) ||
    (held === 'none' && standsElsewhere(prepared, state, settling, settled));
  if (!found) return fallen(prepared, state, settled);
  const others = held === 'none' && settling === 0 ? otherRests(prepared, state) : [];
  const { iterations } = settled;
  settle(prepared, state, settling, held, settled);
  return { kind: 'rest', rest: restHere(prepared, state, { ...settled, iterations }, others) };
}

/** Over which wheel it goes: the other one carries nothing, or the pitch is beyond all use; else no rest was found. */
function fallen(prepared: Prepared, state: State, settled: Settled): RestAnswer {
  const { rear, front } = prepared.gradient;
  const { converged, residual, iterations } = settled;
  if (converged && front.wheelLoad <= 0) return { kind: 'tips', over: 'rear' };
  if (converged && rear.wheelLoad <= 0) return { kind: 'tips', over: 'front' };
  const pitch = state[PITCH]!;
  if (converged || Math.abs(pitch) >= PITCH_USE) return { kind: 'tips', over: pitch < 0 ? 'rear' : 'front' };
  return { kind: 'no rest', residual, iterations };
}

/** The rest at a state that balances; `prepared.gradient` was written there. */
function restHere(prepared: Prepared, state: State, settled: Settled, others: readonly OtherRest[]): Rest {
  const { machine, gradient } = prepared;
  const { rake } = machine.geometry;
  return {
    rear: endRest(machine.rear, rake, gradient.rear, state[REAR_TRAVEL]!, prepared.rearTravelMax),
    front: endRest(machine.front, rake, gradient.front, state[FRONT_TRAVEL]!, prepared.frontTravelMax),
    state: Array.from(state),
    pitch: state[PITCH]!,
    energy: energyAt(prepared, state),
    residual: settled.residual,
    iterations: settled.iterations,
    otherRests: others,
  };
}

function endRest(end: EndSI, rake: number, wheel: WheelGradient, travel: number, travelMax: number): EndRest {
  const { at, wheelLoad } = wheel;
  const stopForce =
    travel <= 0 ? Math.max(0, wheel.travel) : travel >= travelMax ? Math.max(0, -wheel.travel) : 0;
  const rideRate = (at.wheelRate * end.tyre.rate) / (at.wheelRate + end.tyre.rate);
  const swinging = stopForce > 0 ? 0 : wheelLoad / GRAVITY - end.unsprung;
  return {
    travel,
    travelMax,
    hangingTravel: hangingTravel(end, rake, travelMax),
    stroke: at.stroke,
    motionRatio: at.motionRatio,
    wheelLoad,
    tyreDeflection: wheelLoad / end.tyre.rate,
    wheelRate: at.wheelRate,
    rideRate,
    rideFrequency: frequency(rideRate, swinging),
    frequencyWithoutTyre: frequency(at.wheelRate, swinging),
    stopForce,
    standing: standingOf(end, at.stroke, travel, travelMax),
  };
}

/** f = √(rate / m) / 2π [Hz], m the mass carried by that end [kg]. */
function frequency(rate: number, mass: number): number | null {
  return rate > 0 && mass > 0 ? Math.sqrt(rate / mass) / (2 * Math.PI) : null;
}

function standingOf(end: EndSI, stroke: number, travel: number, travelMax: number): EndStanding {
  if (travel <= 0) return 'topped out';
  if (travel >= travelMax) return 'bottomed';
  if (end.struts.some((strut) => strut.rubber !== null && stroke > strut.rubber.start)) return 'on rubber';
  if (end.struts.some((strut) => strut.topOut !== null && stroke < strut.topOut.length))
    return 'on top-out spring';
  return 'free';
}

/** Wheel travels [m] between which friction lets the machine rest: after being lifted, and after being pressed down. */
export interface FrictionBand {
  readonly rear: { readonly least: number; readonly most: number };
  readonly front: { readonly least: number; readonly most: number };
}

/**
 * Sag as an interval: the rests after lifting (friction holds it up, +F_c s in the energy) and after pressing (−F_c s),
 * both ends together. Starts from the frictionless rest. Null where either way has no rest.
 */
export function frictionBand(prepared: Prepared, rest: Rest): FrictionBand | null {
  const lifted = Float64Array.from(rest.state);
  const pressed = Float64Array.from(rest.state);
  const settled: Settled = { converged: false, residual: 0, iterations: 0 };
  settle(prepared, lifted, 1, 'none', settled);
  if (!standsOnBoth(prepared, lifted, settled)) return null;
  settle(prepared, pressed, -1, 'none', settled);
  if (!standsOnBoth(prepared, pressed, settled)) return null;
  return {
    rear: { least: lifted[REAR_TRAVEL]!, most: pressed[REAR_TRAVEL]! },
    front: { least: lifted[FRONT_TRAVEL]!, most: pressed[FRONT_TRAVEL]! },
  };
}
