import type { LimitResult } from '@sagwright/model/limits/limits';
import type { LoadCaseResult } from '@sagwright/model/plan/answer';
import type { JobDocument } from '@sagwright/records/schema';
import type { LoadCase } from '@sagwright/records/schema/loads';
import { type Quantity, siOf } from '@sagwright/records/schema/quantity';
import { formatPlainNumber, formatTyped, formatValueNumber, unitOf } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import { placeAt } from '../inputs/assumptions.ts';
import type { JobPlan } from '../path.ts';
import { words } from '../words/catalogue.ts';
import { effectOf } from './effect.ts';
import { effectView } from './effectView.ts';
import type { ThingView } from './shapes.ts';

/** What is aboard a load, each thing where it lies, its fuel, and places that bear too much as things of their own. */
export function thingViews(
  planned: JobPlan,
  id: string,
  result: LoadCaseResult,
  units: Units,
): readonly ThingView[] {
  const loadCase = planned.job.loadCases[id]!;
  if (!('aboard' in loadCase)) return [];
  const over = new Map(
    result.limits.flatMap((limit) =>
      limit.of.kind === 'place' && limit.verdict === 'over' ? [[limit.of.place, limit]] : [],
    ),
  );
  const orderOf = ({ thing }: { readonly thing: string }): number => planned.job.things[thing]!.order;
  const aboard = Object.entries(loadCase.aboard).sort(([, a], [, b]) => orderOf(a) - orderOf(b));
  const things = aboard.map(([aboardId, { thing, place }]): ThingView => {
    const carried = planned.job.things[thing]!;
    const { figures } = planned.inputs;
    const lies = placeLies(planned, place);
    const mass = figures.get(`things.${thing}.mass`)!;
    const { value, unit } = carried.mass;
    return {
      aboardId,
      thing,
      place,
      label: carried.name,
      kind: carried.kind,
      placeKind: planned.job.machine.places[place]!.kind,
      standsOn: standsOn(planned.job, aboard, place),
      mass: units.choice === 'typed' ? formatTyped({ value, unit }, units) : massWords(mass, units),
      x: lies.x.value,
      height: lies.height.value,
      offset: offsetWords(lies.x, units),
      effect: effectHere(planned, id, result, lies, mass, units),
      over: over.has(place),
    };
  });
  return [
    ...things,
    ...fuelView(planned, id, loadCase, result, units),
    ...overloadedPlaces(planned, over, new Set(aboard.map(([, each]) => each.place)), units),
  ];
}

/** The fuel of a load as a thing at the tank; nothing where nobody gave a tank. */
function fuelView(
  planned: JobPlan,
  id: string,
  loadCase: LoadCase,
  result: LoadCaseResult,
  units: Units,
): readonly ThingView[] {
  const { figures } = planned.inputs;
  if (planned.job.machine.tank === undefined) return [];
  const litres = figures.get(loadCase.fuel === undefined ? 'machine.weighing.fuel' : `loadCases.${id}.fuel`)!;
  const kilogramsPerLitre = figures.get('machine.tank.kilogramsPerLitre')!.value * 1000;
  const lies = usedAt(planned, 'machine.tank.at')!;
  const fuel: Doubted = {
    value: litres.value * kilogramsPerLitre,
    halfWidth: litres.halfWidth * kilogramsPerLitre,
  };
  return [
    {
      aboardId: 'fuel',
      thing: '',
      place: '',
      label: words.page.fuel,
      kind: 'fuel',
      placeKind: 'tank',
      standsOn: null,
      mass: massWords(fuel, units),
      x: lies.x.value,
      height: lies.height.value,
      offset: offsetWords(lies.x, units),
      effect: effectHere(planned, id, result, lies, fuel, units),
      over: false,
    },
  ];
}

function effectHere(
  planned: JobPlan,
  id: string,
  { asFound }: LoadCaseResult,
  lies: Lies,
  mass: Doubted,
  units: Units,
): ThingView['effect'] {
  const { machine, loadCases } = planned.inputs.question;
  const { load } = loadCases.find((each) => each.id === id)!;
  if (asFound.answer.kind !== 'rest') return null;
  const offset = words.page.offsetInSentence(distanceWords(lies.x, units), lies.x.value < 0);
  const effect = effectOf(machine, load, asFound.answer.rest, {
    mass: mass.value,
    massDoubt: mass.halfWidth,
    x: lies.x.value,
    xDoubt: lies.x.halfWidth,
    height: lies.height.value,
  });
  return effect === null ? null : effectView(effect, massWords(mass, units), offset, units);
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
    const lies = placeLies(planned, place);
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
          formatValueNumber({ value: limit.load, plusMinus: limit.plusMinus }, 'mass', units),
          formatPlainNumber(limit.allowed!, 'mass', units),
        ),
        x: lies.x.value,
        height: lies.height.value,
        offset: offsetWords(lies.x, units),
        effect: null,
        over: true,
      },
    ];
  });
}

/** A figure [SI] with its 90 % half-width, and as it was typed, if it was. */
interface Doubted {
  readonly value: number;
  readonly halfWidth: number;
  readonly typed?: Quantity | null;
}

interface Lies {
  readonly x: Doubted;
  readonly height: Doubted;
}

/** Where the mass centre of a place is: as the sum took it; else as typed or usual, for a place that nothing lies on itself. */
function placeLies(planned: JobPlan, id: string): Lies {
  const used = usedAt(planned, `machine.places.${id}.at`);
  if (used !== null) return used;
  const { at, kind } = planned.job.machine.places[id]!;
  const { wheelbase } = planned.inputs.question.machine.geometry;
  const { share, height, width } = placeAt[kind];
  const halfWidth = width / 1000;
  return at === undefined
    ? { x: { value: share * wheelbase, halfWidth }, height: { value: height / 1000, halfWidth } }
    : { x: { value: siOf(at.x), halfWidth }, height: { value: siOf(at.height), halfWidth } };
}

function usedAt({ inputs }: JobPlan, path: string): Lies | null {
  const [x, height] = [inputs.figures.get(`${path}.x`), inputs.figures.get(`${path}.height`)];
  return x === undefined || height === undefined ? null : { x, height };
}

function massWords({ value, halfWidth }: Doubted, units: Units): string {
  return `${formatValueNumber({ value, plusMinus: halfWidth }, 'mass', units)} ${unitOf('mass', units)}`;
}

/** "330 mm": how far from the rear axle: as typed, else to the place that its ± supports. */
function distanceWords({ value, halfWidth, typed }: Doubted, units: Units): string {
  if (units.choice === 'typed' && typed != null) {
    return formatTyped({ value: Math.abs(typed.value), unit: typed.unit } as Quantity, units);
  }
  const figure = { value: Math.abs(value), plusMinus: halfWidth };
  return `${formatValueNumber(figure, 'length', units)} ${unitOf('length', units)}`;
}

function offsetWords(x: Doubted, units: Units): string {
  return words.page.offset(distanceWords(x, units), x.value < 0);
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
