import type { LimitsSI, PlaceLoad } from '@sagwright/model/limits/limits';
import { type Room, roomAt, withMore } from '@sagwright/model/limits/room';
import type { LoadCaseSI } from '@sagwright/model/plan/question';
import { gradientAt } from '@sagwright/model/statics/gradient';
import { GRAVITY } from '@sagwright/model/statics/machine';
import type { UncertainInput } from '@sagwright/model/uncertainty/inputs';
import { mergeInputs } from '@sagwright/model/uncertainty/merge';
import type { Contribution } from '@sagwright/model/uncertainty/spread';
import { inOrder } from '../inputs/desk.ts';
import { capacityFrom, isUnderPressure } from '../inputs/limits.ts';
import type { UsedFigure } from '../inputs/take.ts';
import type { JobPlan } from '../path.ts';
import { movesEvenly, readAt, standing } from '../why/standing.ts';
import type { RoomDocument } from './document.ts';

/** What every place may still be given with every load, tank full. */
export function roomsOfJob(planned: JobPlan): readonly RoomDocument[] {
  return planned.inputs.question.loadCases.flatMap(({ id }) => roomsOfLoad(planned, id));
}

export function roomsOfLoad(planned: JobPlan, load: string): readonly RoomDocument[] {
  return roomsOpened(planned, load).map(({ told }) => told);
}

/** A room with what its ± is made of. */
export interface RoomOpened {
  readonly told: RoomDocument;
  readonly contributions: readonly Contribution[];
}

/** Nothing for a load that was weighed: nobody knows what lies where. Nor for a seat that is taken. */
export function roomsOpened(planned: JobPlan, load: string): readonly RoomOpened[] {
  const loadCase = planned.inputs.question.loadCases.find(({ id }) => id === load)!;
  const typed = planned.job.loadCases[load]!;
  if ('scales' in typed) return [];
  const taken = new Set(Object.values(typed.aboard).map(({ place }) => place));
  return inOrder(planned.job.machine.places).flatMap(([place, { kind }]): RoomOpened[] => {
    const isSeat = kind === 'rider seat' || kind === 'passenger seat';
    if (isSeat && taken.has(place)) return [];
    const { room, contributions, plusMinus } = roomOf(planned, loadCase, place);
    const told: RoomDocument = {
      loadCase: load,
      place,
      takes: isSeat ? 'person' : 'things',
      mass: room.mass === null ? null : { value: room.mass, plusMinus },
      by: room.by,
      notChecked: room.notChecked,
    };
    return [{ told, contributions }];
  });
}

function roomOf(
  planned: JobPlan,
  loadCase: LoadCaseSI,
  place: string,
): {
  readonly room: Room;
  readonly plusMinus: number | null;
  readonly contributions: readonly Contribution[];
} {
  const { question } = planned.inputs;
  const { x, height } = placeAt(planned, place);
  const at = { x: x.value, height: height.value };
  const stack = stackOf(planned, loadCase, place);
  const room = roomAt(question.machine, loadCase.loadFullTank, at, knownLimits(planned), stack);
  return { room, ...spreadOfRoom(planned, loadCase, place, room) };
}

/** A tyre with less air than is asked for bears nobody knows how much: its figure ends no room. */
function knownLimits({ job, inputs }: JobPlan): LimitsSI {
  const { limits } = inputs.question;
  const isKnown = ({ tyre }: JobPlan['job']['machine']['rear' | 'front']): boolean =>
    capacityFrom(tyre) === 'table' || !isUnderPressure(tyre);
  return {
    ...limits,
    rearTyre: isKnown(job.machine.rear) ? limits.rearTyre : null,
    frontTyre: isKnown(job.machine.front) ? limits.frontTyre : null,
  };
}

/** Where the mass centre of what lies at a place is. */
function placeAt(
  { inputs }: JobPlan,
  place: string,
): { readonly x: UsedFigure; readonly height: UsedFigure } {
  const path = `machine.places.${place}.at`;
  return { x: inputs.limits.at.get(`${path}.x`)!, height: inputs.limits.at.get(`${path}.height`)! };
}

/** The place and what carries it, each with what lies there in this load. A place that is only carried counts from 0. */
function stackOf(planned: JobPlan, { places }: LoadCaseSI, place: string): readonly PlaceLoad[] {
  const { machine } = planned.job;
  const chain: PlaceLoad[] = [];
  for (let id: string | undefined = place; id !== undefined; id = machine.places[id]!.carriedBy) {
    if (id !== place && machine.places[id]!.limitCounts === 'contents') continue;
    const known = places.find((each) => each.id === id);
    const limit = planned.inputs.limits.places[id] ?? null;
    const isSeat = machine.places[id]!.kind.endsWith('seat');
    if (isSeat && limit === null) continue;
    chain.push(known ?? { id, limit, onIt: 0, plusMinus: 0 });
  }
  return chain;
}

/** The ± of a room, and what it is made of. */
interface RoomSpread {
  readonly plusMinus: number | null;
  readonly contributions: readonly Contribution[];
}

const unknown: RoomSpread = { plusMinus: null, contributions: [] };

/** The ± of what ends the room, over how fast each kilogram uses that up. */
function spreadOfRoom(planned: JobPlan, loadCase: LoadCaseSI, place: string, { mass, by }: Room): RoomSpread {
  if (mass === null || by === null || by.kind === 'tips') return unknown;
  if (by.kind === 'place') {
    const known = loadCase.places.find(({ id }) => id === by.place);
    const rating = known?.limit ?? planned.inputs.limits.places[by.place];
    return { plusMinus: Math.hypot(known?.plusMinus ?? 0, rating?.plusMinus ?? 0), contributions: [] };
  }
  const step = mass < STEP ? STEP : -STEP;
  const full = wheelWith(planned, loadCase, place, mass, by.kind);
  const beside = wheelWith(planned, loadCase, place, mass + step, by.kind);
  if (full === null || beside === null) return unknown;
  const perKilogram = (beside.load - full.load) / step;
  const { plusMinus } = planned.inputs.question.limits[ratingField[by.kind]]!;
  const contributions = full.contributions.map((each) => ({
    ...each,
    halfWidth: each.halfWidth / Math.abs(perKilogram),
  }));
  const halfWidths = contributions.map(({ halfWidth }) => halfWidth);
  return { plusMinus: Math.hypot(...halfWidths, plusMinus / perKilogram), contributions };
}

/** Over so many kilograms the slope is taken. */
const STEP = 1;

const ratingField = {
  gross: 'gross',
  'rear axle': 'rearAxle',
  'front axle': 'frontAxle',
  'rear tyre': 'rearTyre',
  'front tyre': 'frontTyre',
} as const;

/** What a wheel, or both, bear with so much more at a place [kg]; null where the machine does not rest so. */
function wheelWith(
  planned: JobPlan,
  loadCase: LoadCaseSI,
  place: string,
  more: number,
  kind: keyof typeof ratingField,
): { readonly load: number; readonly contributions: readonly Contribution[] } | null {
  const { question } = planned.inputs;
  const { x, height } = placeAt(planned, place);
  const added: readonly UncertainInput[] = [
    { name: x.path, deviation: x.deviation, moves: [{ parameter: 'load.momentX', by: more }] },
    { name: height.path, deviation: height.deviation, moves: [{ parameter: 'load.momentHeight', by: more }] },
  ];
  const inputs = mergeInputs(question.inputs, loadCase.inputsFullTank, added);
  const at = standing(question.machine, withMore(loadCase.loadFullTank, more, x.value, height.value), inputs);
  if (at === null || !movesEvenly(at)) return null;
  const { value, contributions } = readAt(at, (prepared, state) => {
    gradientAt(prepared, state, 0);
    const { rear, front } = prepared.gradient;
    const onFront = kind === 'front axle' || kind === 'front tyre' || kind === 'gross';
    const onRear = kind === 'rear axle' || kind === 'rear tyre' || kind === 'gross';
    return ((onFront ? front.wheelLoad : 0) + (onRear ? rear.wheelLoad : 0)) / GRAVITY;
  });
  return { load: value.value, contributions };
}
