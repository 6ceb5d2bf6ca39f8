import { type Problem, problem } from '../problem.ts';
import type { Machine } from '../schema/machine.ts';
import { siOf } from '../schema/quantity.ts';
import { asTyped, isAtMost, isBelow } from './compare.ts';
import { noSuch } from './references.ts';
import { wheelTravelOf } from './travel.ts';

/** Masses that add up, fuel that fits, a travel that the wheel has, and places that stand on something. */
export function* machineProblems(machine: Machine): Generator<Problem> {
  const { weighing, tank } = machine;
  for (const end of ['front', 'rear'] as const) {
    const { unsprung } = machine[end];
    if (unsprung && !isBelow(unsprung, weighing[end])) {
      const path = ['machine', end, 'unsprung'];
      yield problem(
        path,
        'notBelow',
        asTyped(unsprung),
        'what the scale reads there',
        asTyped(weighing[end]),
      );
    }
  }
  if (machine.front.unsprung && machine.front.unsprungParts) {
    const path = ['machine', 'front', 'unsprungParts'];
    yield problem(path, 'unsprungTwice', asTyped(machine.front.unsprung));
  }
  if (tank && weighing.fuel && !isAtMost(weighing.fuel, tank.capacity)) {
    const path = ['machine', 'weighing', 'fuel'];
    yield problem(path, 'notAtMost', asTyped(weighing.fuel), "the tank's capacity", asTyped(tank.capacity));
  }
  yield* measuredAtProblems(machine);
  yield* placeProblems(machine.places);
  if (weighing.raised && weighing.massCentreHeight) {
    const path = ['machine', 'weighing', 'massCentreHeight'];
    yield problem(path, 'heightTwice', asTyped(weighing.massCentreHeight));
  }
}

function* measuredAtProblems({ rear, front }: Machine): Generator<Problem> {
  const travel = wheelTravelOf(rear);
  if (rear.measuredAt && travel !== undefined && siOf(rear.measuredAt) > travel * (1 + 1e-9)) {
    const path = ['machine', 'rear', 'measuredAt'];
    yield problem(
      path,
      'notAtMost',
      asTyped(rear.measuredAt),
      'the wheel travel',
      `${(travel * 1000).toFixed(1)} mm`,
    );
  }
  // Wheel travel of a fork is shorter than its stroke, by the cosine of the rake.
  const stroke = front.fork?.stroke;
  if (front.measuredAt && stroke && !isAtMost(front.measuredAt, stroke)) {
    const path = ['machine', 'front', 'measuredAt'];
    yield problem(path, 'notAtMost', asTyped(front.measuredAt), 'the stroke', asTyped(stroke));
  }
}

function* placeProblems(places: Machine['places']): Generator<Problem> {
  for (const [id, { carriedBy }] of Object.entries(places)) {
    if (carriedBy === undefined) continue;
    const path = ['machine', 'places', id, 'carriedBy'];
    if (!places[carriedBy]) yield noSuch(path, 'place', carriedBy, places);
    else if (isCarriedByItself(id, places)) yield problem(path, 'carriedInCircle', id);
  }
}

/** Follows what carries what, for as many steps as there are places. */
function isCarriedByItself(id: string, places: Machine['places']): boolean {
  let at = places[id]?.carriedBy;
  for (let step = Object.keys(places).length; step > 0 && at !== undefined; step--) {
    if (at === id) return true;
    at = places[at]?.carriedBy;
  }
  return false;
}
