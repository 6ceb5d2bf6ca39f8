import type { PlaceLoad } from '@sagwright/model/limits/limits';
import { type FirstMoments, momentsOf, type PointMass } from '@sagwright/model/masses/pointMass';
import { halfWidthOf } from '@sagwright/model/uncertainty/spread';
import type { LoadCase } from '@sagwright/records/schema/loads';
import type { Place } from '@sagwright/records/schema/machine';
import { placeAt } from './assumptions.ts';
import { type Desk, note } from './desk.ts';
import { ratingOf } from './rating.ts';
import type { ReadingKind } from './widths.ts';

/** A load as the sum sees it: things at places, or readings with all aboard. */
export type LoadFigures =
  | { readonly kind: 'aboard'; readonly load: FirstMoments; readonly fullTank: FirstMoments }
  | {
      readonly kind: 'weighed';
      readonly front: number;
      readonly rear: number;
      readonly height: number;
      /** What a full tank adds to what was weighed. */
      readonly topUp: FirstMoments;
    };

export function loadFigures(desk: Desk, id: string, loadCase: LoadCase): LoadFigures {
  const { take } = desk;
  const wheelbase = take.orAssumed('machine.wheelbase', desk.job.machine.wheelbase, 'geometry', 'wheelbase');
  const fuel = fuelOf(desk, id, loadCase);
  if ('scales' in loadCase) {
    const path = `loadCases.${id}.scales`;
    const { front, rear, addedHeight } = loadCase.scales;
    return {
      kind: 'weighed',
      front: take.known(`${path}.front`, front, 'scale'),
      rear: take.known(`${path}.rear`, rear, 'scale'),
      height: take.orAssumed(`${path}.addedHeight`, addedHeight, 'placeHeight', 'addedHeight'),
      topUp: momentsOf(fuel.topUp === null ? [] : [fuel.topUp]),
    };
  }
  const parts = Object.values(loadCase.aboard).map(({ thing, place }) =>
    thingAt(desk, thing, place, wheelbase),
  );
  return {
    kind: 'aboard',
    load: momentsOf(fuel.inCase === null ? parts : [...parts, fuel.inCase]),
    fullTank: momentsOf(fuel.full === null ? parts : [...parts, fuel.full]),
  };
}

function thingAt(desk: Desk, thing: string, place: string, wheelbase: number): PointMass {
  const carried = desk.job.things[thing]!;
  const mass = desk.take.known(`things.${thing}.mass`, carried.mass, carried.kind);
  return { mass, ...placeOf(desk, place, wheelbase) };
}

/** Where the mass centre of what sits or lies at a place is: typed, or assumed by the kind of place. */
export function placeOf(
  desk: Desk,
  id: string,
  wheelbase: number,
): { readonly x: number; readonly height: number } {
  const { take } = desk;
  const place = desk.job.machine.places[id]!;
  const path = `machine.places.${id}.at`;
  if (place.at !== undefined) {
    return {
      x: take.known(`${path}.x`, place.at.x, placeKind(place)),
      height: take.known(`${path}.height`, place.at.height, 'placeHeight'),
    };
  }
  const { share, height, width, why } = placeAt[place.kind];
  return {
    x: take.workedOut(`${path}.x`, share * wheelbase, width / 1000, 'length', 'mm', why),
    height: take.workedOut(`${path}.height`, height / 1000, 0.08, 'length', 'mm', why),
  };
}

function placeKind(place: Place): ReadingKind {
  if (place.kind === 'rider seat') return 'riderPlace';
  return place.kind === 'passenger seat' ? 'passengerPlace' : 'luggagePlace';
}

interface Fuel {
  /** Fuel of the load, and of a full tank, against what was in the tank when the machine was weighed. */
  readonly inCase: PointMass | null;
  readonly full: PointMass | null;
  /** From the load's fuel to the full tank. */
  readonly topUp: PointMass | null;
}

/** Fuel as a thing at the tank: only the difference to the weighing counts. */
function fuelOf(desk: Desk, id: string, loadCase: LoadCase): Fuel {
  const { take, job } = desk;
  const { tank, weighing } = job.machine;
  if (tank === undefined) {
    note(desk, 'fuel not known', 'machine.tank');
    return { inCase: null, full: null, topUp: null };
  }
  const capacity = take.known('machine.tank.capacity', tank.capacity, 'stated');
  const why = 'nobody wrote down the fuel at the weighing: half a tank, give or take';
  const weighed =
    weighing.fuel === undefined
      ? take.workedOut('machine.weighing.fuel', 0.5 * capacity, 0.45 * capacity, 'volume', 'l', why)
      : take.known('machine.weighing.fuel', weighing.fuel, 'fuel');
  const inCase =
    loadCase.fuel === undefined ? weighed : take.known(`loadCases.${id}.fuel`, loadCase.fuel, 'fuel');
  const perLitre = take.orAssumed('machine.tank.kilogramsPerLitre', undefined, 'item', 'fuelDensity');
  const at =
    tank.at === undefined
      ? {
          x: take.orAssumed('machine.tank.at.x', undefined, 'geometry', 'tankX'),
          height: take.orAssumed('machine.tank.at.height', undefined, 'geometry', 'tankHeight'),
        }
      : {
          x: take.known('machine.tank.at.x', tank.at.x, 'luggagePlace'),
          height: take.known('machine.tank.at.height', tank.at.height, 'placeHeight'),
        };
  const fuel = (volume: number): PointMass => ({ mass: volume * 1000 * perLitre, ...at });
  return { inCase: fuel(inCase - weighed), full: fuel(capacity - weighed), topUp: fuel(capacity - inCase) };
}

/**
 * What each place with something on it bears in a load; a place's limit counts its contents, or all that stands on it. A seat is
 * listed only where somebody gave it a limit: no plate has one (common practice, no source), axles and gross hold for it. With a load
 * that was weighed aboard nobody knows what lies where, and that is said.
 */
export function placeLoads(desk: Desk, id: string, loadCase: LoadCase): readonly PlaceLoad[] {
  const { places } = desk.job.machine;
  if ('scales' in loadCase) {
    if (Object.values(places).some(isListed)) note(desk, 'places not checked', `loadCases.${id}.scales`);
    return [];
  }
  const aboard = Object.values(loadCase.aboard);
  const onIt = (place: string, deep: boolean): readonly string[] => [
    ...aboard.filter((each) => each.place === place).map((each) => each.thing),
    ...(deep
      ? Object.entries(places)
          .filter(([, each]) => each.carriedBy === place)
          .flatMap(([id]) => onIt(id, true))
      : []),
  ];
  return Object.entries(places).flatMap(([id, place]): PlaceLoad[] => {
    const things = onIt(id, place.limitCounts !== 'contents');
    if (things.length === 0 || !isListed(place)) return [];
    const figures = things.map((thing) => desk.take.figures.get(`things.${thing}.mass`)!);
    return [
      {
        id,
        limit: ratingOf(desk, `machine.places.${id}.limit`, place.limit),
        onIt: figures.reduce((sum, figure) => sum + figure.value, 0),
        plusMinus: halfWidthOf(Math.hypot(...figures.map((figure) => figure.deviation))),
      },
    ];
  });
}

export function isListed({ kind, limit }: Place): boolean {
  return limit !== undefined || (kind !== 'rider seat' && kind !== 'passenger seat');
}
