import type { FirstMoments } from '../masses/pointMass.ts';
import { root } from '../numerics/root.ts';
import { gradientAt } from '../statics/gradient.ts';
import { GRAVITY, type MachineSI } from '../statics/machine.ts';
import { parametersOf, putOn } from '../statics/parameters.ts';
import { type Prepared, prepare } from '../statics/prepared.ts';
import { restOf } from '../statics/rest.ts';
import type { LimitOf, LimitsSI, PlaceLoad, Rating } from './limits.ts';

/** What ends the room at a place first: a limit, or the machine tipping over a wheel. */
export type RoomEnd = LimitOf | { readonly kind: 'tips' };

/** How much more may lie at a place. */
export interface Room {
  /** [kg], 0 where a limit is used up or exceeded already; null where nothing that is known ends it. */
  readonly mass: number | null;
  readonly by: RoomEnd | null;
  /** Known limits leave more than this [kg], which is more than anybody loads; null where `mass` tells it, or none is known. */
  readonly moreThan: number | null;
  /** Limits that it would load and that nobody has read, or that are only known at best: the room may be less than told. */
  readonly notChecked: readonly LimitOf[];
}

/** Beyond this nobody loads a motorcycle [kg]. */
export const ROOM_MOST = 500;
const TOLERANCE = 1e-7;

/**
 * How much more mass may lie at a place before the first limit is used up, with the machine at rest under it: where it lies
 * matters, and the machine's attitude moves along.
 *   root of  allowed − wheel load(m) / g  for each wheel;  allowed − whole,  allowed − on the place: linear
 * load    what is aboard already, tank full
 * at      of the mass centre of what is added, body coordinates [m]
 * places  the place itself and all that carry it, each with what lies there already [kg]
 * Never more than ROOM_MOST. The ± of loads and ratings is not in it.
 * Source: the balance of `restOf`; common practice, no source, that the first limit to be met ends it.
 */
export function roomAt(
  machine: MachineSI,
  load: FirstMoments,
  at: { readonly x: number; readonly height: number },
  limits: LimitsSI,
  places: readonly PlaceLoad[],
): Room {
  const wheels = wheelsUnder(machine, load, at);
  const whole = load.mass + machine.sprung.mass + machine.rear.unsprung + machine.front.unsprung;
  const linear: readonly (readonly [LimitOf, Rating | null, number])[] = [
    [{ kind: 'gross' }, limits.gross, whole],
    ...places.map((place) => [{ kind: 'place', place: place.id }, place.limit, place.onIt] as const),
  ];
  let end: { mass: number; by: RoomEnd | null } = { mass: ROOM_MOST, by: null };
  for (const [of, rating, now] of linear) {
    if (rating !== null && rating.value - now < end.mass)
      end = { mass: Math.max(0, rating.value - now), by: of };
  }
  const ends: readonly (readonly [RoomEnd, Rating | null, (m: number) => number])[] = [
    [{ kind: 'rear axle' }, limits.rearAxle, (m) => wheels(m).rear],
    [{ kind: 'front axle' }, limits.frontAxle, (m) => wheels(m).front],
    [{ kind: 'rear tyre' }, limits.rearTyre, (m) => wheels(m).rear],
    [{ kind: 'front tyre' }, limits.frontTyre, (m) => wheels(m).front],
    [{ kind: 'tips' }, { value: 0, plusMinus: 0 }, (m) => (wheels(m).stands ? -1 : 1)],
  ];
  for (const [of, rating, loadAt] of ends) {
    if (rating === null) continue;
    const left = (m: number): number => rating.value - loadAt(m);
    if (left(0) <= 0) end = { mass: 0, by: end.mass === 0 ? end.by : of };
    else if (end.mass > 0 && left(end.mass) < 0) end = { mass: root(left, 0, end.mass, TOLERANCE), by: of };
  }
  const notChecked = [...linear, ...ends].flatMap(([of, rating]) =>
    (rating === null || rating.isAtBest) && of.kind !== 'tips' ? [of] : [],
  );
  if (end.by !== null) return { ...end, moreThan: null, notChecked };
  const isOneKnown = notChecked.length < linear.length + ends.length - 1;
  return { mass: null, by: null, moreThan: isOneKnown ? ROOM_MOST : null, notChecked };
}

interface Wheels {
  readonly rear: number;
  readonly front: number;
  readonly stands: boolean;
}

/** Wheel loads [kg] with so much more at a place; where the machine does not stand, one wheel bears everything. */
function wheelsUnder(
  machine: MachineSI,
  load: FirstMoments,
  { x, height }: { readonly x: number; readonly height: number },
): (added: number) => Wheels {
  const parameters = parametersOf(machine);
  const prepared = prepare(parameters.machine);
  const known = new Map<number, Wheels>();
  return (added) => {
    const before = known.get(added);
    if (before !== undefined) return before;
    putOn(parameters, withMore(load, added, x, height));
    const wheels = wheelsAt(prepared);
    known.set(added, wheels);
    return wheels;
  };
}

/** A load with a mass [kg] more at a place. */
export function withMore(load: FirstMoments, added: number, x: number, height: number): FirstMoments {
  return {
    mass: load.mass + added,
    momentX: load.momentX + added * x,
    momentHeight: load.momentHeight + added * height,
  };
}

function wheelsAt(prepared: Prepared): Wheels {
  const answer = restOf(prepared);
  if (answer.kind === 'rest') {
    gradientAt(prepared, Float64Array.from(answer.rest.state), 0);
    const { rear, front } = prepared.gradient;
    return { rear: rear.wheelLoad / GRAVITY, front: front.wheelLoad / GRAVITY, stands: true };
  }
  const { machine } = prepared;
  const whole = machine.sprung.mass + machine.load.mass + machine.rear.unsprung + machine.front.unsprung;
  // Where no rest is found either wheel may bear all of it: no room is told on what is not known.
  const over = answer.kind === 'tips' ? answer.over : null;
  return { rear: over === 'front' ? 0 : whole, front: over === 'rear' ? 0 : whole, stands: false };
}
