import type { LimitResult } from '@sagwright/model/limits/limits';
import type { JobDocument } from '@sagwright/records/schema';
import type { LoadCase } from '@sagwright/records/schema/loads';
import { format, formatNumber, formatTyped } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import { words } from '../words/catalogue.ts';
import type { ThingView } from './shapes.ts';

/** What is aboard a load, each thing where it lies, and places that bear too much as things of their own. */
export function thingViews(
  planned: JobPlan,
  loadCase: LoadCase,
  limits: readonly LimitResult[],
  units: Units,
): readonly ThingView[] {
  if (!('aboard' in loadCase)) return [];
  const over = new Map(
    limits.flatMap((limit) =>
      limit.of.kind === 'place' && limit.verdict === 'over' ? [[limit.of.place, limit]] : [],
    ),
  );
  const aboard = Object.entries(loadCase.aboard);
  const things = aboard.map(([aboardId, { thing, place }]): ThingView => {
    const carried = planned.job.things[thing]!;
    const point = pointOf(planned, place);
    return {
      aboardId,
      thing,
      place,
      label: carried.name,
      kind: carried.kind,
      placeKind: planned.job.machine.places[place]!.kind,
      standsOn: standsOn(planned.job, aboard, place),
      mass: formatTyped({ value: carried.mass.value, unit: carried.mass.unit }, units),
      x: point.x,
      height: point.height,
      offset: offsetWords(point.x, units),
      over: over.has(place),
    };
  });
  return [
    ...things,
    ...overloadedPlaces(planned, over, new Set(aboard.map(([, each]) => each.place)), units),
  ];
}

/** A carrier that bears too much and has nothing of its own on it gets a tag too, so that its limit is seen. */
function overloadedPlaces(
  planned: JobPlan,
  over: ReadonlyMap<string, LimitResult>,
  taken: ReadonlySet<string>,
  units: Units,
): readonly ThingView[] {
  return [...over].flatMap(([place, limit]): ThingView[] => {
    if (taken.has(place)) return [];
    const point = pointOf(planned, place);
    return [
      {
        aboardId: `place:${place}`,
        thing: '',
        place,
        label: planned.job.machine.places[place]!.name,
        kind: 'place',
        placeKind: planned.job.machine.places[place]!.kind,
        standsOn: null,
        mass: words.page.ofAllowed(
          formatNumber(limit.load, 'mass', units),
          format(limit.allowed!, 'mass', units),
        ),
        x: point.x,
        height: point.height,
        offset: offsetWords(point.x, units),
        over: true,
      },
    ];
  });
}

/** Where the mass centre of a place is [m], typed or assumed. */
function pointOf(planned: JobPlan, place: string): { readonly x: number; readonly height: number } {
  const { figures } = planned.inputs;
  const figure = (name: string): number => figures.get(`machine.places.${place}.at.${name}`)?.value ?? 0;
  return { x: figure('x'), height: figure('height') };
}

function offsetWords(x: number, units: Units): string {
  return words.page.offset(format(Math.abs(x), 'length', units), x < 0);
}

/** The thing on the place that carries this place, else that place itself where it carries; null on the machine. */
function standsOn(
  job: JobDocument,
  aboard: readonly (readonly [string, { readonly place: string }])[],
  place: string,
): string | null {
  const carrier = job.machine.places[place]!.carriedBy;
  if (carrier === undefined) return null;
  return aboard.find(([, each]) => each.place === carrier)?.[0] ?? `place:${carrier}`;
}
