import type { Rating } from '@sagwright/model/limits/limits';
import type { Desk } from './desk.ts';
import { placeOf } from './loads.ts';
import { ratingOf } from './rating.ts';
import { takeFrom, type UsedFigure } from './take.ts';

/** What limits are held against that no balance needs. Its figures with their ± stand in the list of figures, by their paths. */
export interface LimitReadings {
  /** By place; null where nobody gave it a limit. */
  readonly places: Readonly<Record<string, Rating | null>>;
  /** Where things would lie at each place, by path: also where nothing lies yet, which the sum has no use for. */
  readonly at: ReadonlyMap<string, UsedFigure>;
}

export function limitReadings(desk: Desk): LimitReadings {
  const { take } = desk;
  const { machine } = desk.job;
  const { topSpeed, standLean } = machine.limits ?? {};
  if (topSpeed !== undefined) take.known('machine.limits.topSpeed', topSpeed, 'stated');
  if (standLean !== undefined) {
    take.known('machine.limits.standLean.least', standLean.least, 'stated');
    take.known('machine.limits.standLean.most', standLean.most, 'stated');
  }
  for (const end of ['rear', 'front'] as const) {
    const { pressure, placardPressure, mostPressure } = machine[end].tyre ?? {};
    const path = `machine.${end}.tyre`;
    if (pressure !== undefined) take.known(`${path}.pressure`, pressure, 'tyrePressure');
    if (placardPressure !== undefined) take.known(`${path}.placardPressure`, placardPressure, 'stated');
    if (mostPressure !== undefined) take.known(`${path}.mostPressure`, mostPressure, 'stated');
  }
  for (const [id, { readings, keep }] of Object.entries(machine.clearances ?? {})) {
    const path = `machine.clearances.${id}`;
    readings.forEach(({ travel, gap }, i) => {
      take.known(`${path}.readings.${i}.travel`, travel, 'tape');
      take.known(`${path}.readings.${i}.gap`, gap, 'tape');
    });
    if (keep !== undefined) take.known(`${path}.keep`, keep, 'stated');
  }
  const places = Object.entries(machine.places).map(
    ([id, { limit }]) => [id, ratingOf(desk, `machine.places.${id}.limit`, limit)] as const,
  );
  return { places: Object.fromEntries(places), at: placesAt(desk) };
}

function placesAt(desk: Desk): ReadonlyMap<string, UsedFigure> {
  const take = takeFrom();
  const { wheelbase } = desk.job.machine;
  const between = take.orAssumed('machine.wheelbase', wheelbase, 'geometry', 'wheelbase');
  for (const id of Object.keys(desk.job.machine.places)) placeOf({ ...desk, take }, id, between);
  return take.figures;
}
