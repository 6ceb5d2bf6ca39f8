import type { PlaceLoad } from '@sagwright/model/limits/limits';
import { type Room, roomAt, withMore } from '@sagwright/model/limits/room';
import type { LoadCaseSI } from '@sagwright/model/plan/question';
import type { UncertainInput } from '@sagwright/model/uncertainty/inputs';
import { mergeInputs } from '@sagwright/model/uncertainty/merge';
import type { Contribution } from '@sagwright/model/uncertainty/spread';
import { inOrder } from '../inputs/desk.ts';
import type { UsedFigure } from '../inputs/take.ts';
import type { JobPlan } from '../path.ts';
import { movesEvenly, readAt, standing } from '../why/standing.ts';
import {
  placeContributions,
  ratingContributions,
  together,
  type WheelLimit,
  wheelLoad,
} from './contributions.ts';
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
      moreThan: room.moreThan,
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
  const room = roomAt(question.machine, loadCase.loadFullTank, at, question.limits, stack);
  return { room, ...spreadOfRoom(planned, loadCase, place, room) };
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
  if (by.kind === 'place') return spreadFrom(placeContributions(planned, loadCase.id, by.place), 1);
  const step = mass < STEP ? STEP : -STEP;
  const full = wheelWith(planned, loadCase, place, mass, by.kind);
  const beside = wheelWith(planned, loadCase, place, mass + step, by.kind);
  if (full === null || beside === null) return unknown;
  const perKilogram = (beside.load - full.load) / step;
  return spreadFrom([...full.contributions, ...ratingContributions(planned, by)], perKilogram);
}

/** The ± of a limit's margin, turned into kilograms at the place. */
function spreadFrom(parts: readonly Contribution[], perKilogram: number): RoomSpread {
  const contributions = together(
    parts.map((each) => ({
      ...each,
      slope: each.slope / perKilogram,
      halfWidth: each.halfWidth / Math.abs(perKilogram),
    })),
  );
  return { plusMinus: Math.hypot(...contributions.map(({ halfWidth }) => halfWidth)), contributions };
}

/** Over so many kilograms the slope is taken. */
const STEP = 1;

/** What a wheel, or both, bear with so much more at a place [kg]; null where the machine does not rest so. */
function wheelWith(
  planned: JobPlan,
  loadCase: LoadCaseSI,
  place: string,
  more: number,
  kind: WheelLimit,
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
  const { value, contributions } = readAt(at, (prepared, state) => wheelLoad(prepared, state, kind));
  return { load: value.value, contributions };
}
