import type { Figure } from '@sagwright/model/plan/answer';
import { format, formatFigure, type ShownDimension } from '../format/format.ts';
import { sizeOf } from '../format/size.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import { limitList as say } from '../words/english/limitList.ts';
import { limitName } from '../words/limits.ts';
import { loadName, placeName } from '../words/names.ts';
import type { LimitRowDocument, PayloadDocument, RoomDocument } from './document.ts';
import { PERSON } from './payload.ts';

/** One limit in a sentence: passed, failed, too close to call, or what must be read first. */
export function limitRowWords(planned: JobPlan, row: LimitRowDocument, units: Units): string {
  const said = say.row(limitRowName(planned, row), limitRowSaid(planned, row, units));
  const note = limitRowNote(row);
  return note === null ? said : say.noted(said, note);
}

/** The same without its name, and without what makes it less certain. */
export function limitRowSaid(planned: JobPlan, row: LimitRowDocument, units: Units): string {
  const said = verdictWords(planned, row, units);
  const loads = row.leftOut.map(({ loadCase, why }) => say.leftOutLoad[why](loadName(planned.job, loadCase)));
  return loads.length === 0 ? said : say.leftOut(said, say.list(loads));
}

/** What makes it less certain; null where nothing does. */
export function limitRowNote({ notes }: LimitRowDocument): string | null {
  return notes.length === 0 ? null : say.note(say.list(notes.map((note) => say.notes[note])));
}

function verdictWords(planned: JobPlan, row: LimitRowDocument, units: Units): string {
  if (row.verdict === 'not checked')
    return say.notChecked(say.list([...new Set(row.needs.map(({ what }) => say.needs[what]))]));
  const over = row.kind === 'preload' ? say.notReached : say.over;
  const verdicts = { within: say.passed, 'within its ±': say.close, over } as const;
  const said = verdicts[row.verdict](marginWords(row, units));
  return row.loadCase === null ? say.alone(said) : say.withLoad(said, loadName(planned.job, row.loadCase));
}

/** By how much, never below 0: the verdict says which way. */
function marginWords({ kind, margin, allowed, dimension, verdict }: LimitRowDocument, units: Units): string {
  const size = sizeOf(margin!);
  const said = dimension === 'count' ? say.clicks(String(size.value)) : exactWords(size, dimension, units);
  const way = verdict === 'over' ? 'over' : 'left';
  if (kind === 'coil bind' && allowed !== null && dimension !== 'count')
    return say.keptOff[way](said, format(allowed.value, dimension, units));
  return way === 'over' ? said : say.left(said);
}

/** What is taken as it stands is told without a ±. */
export function exactWords(figure: Figure, dimension: ShownDimension, units: Units): string {
  if (figure.plusMinus === null) return say.unknownPlusMinus(format(figure.value, dimension, units));
  return figure.plusMinus === 0
    ? format(figure.value, dimension, units)
    : formatFigure(figure, dimension, units);
}

/** What a limit is of. */
export function limitRowName({ job }: JobPlan, { kind, end, of }: LimitRowDocument): string {
  return say.names[kind](end ?? '', of === null ? '' : ownName(job, kind, of));
}

/** What somebody named, or a kind of clearance that nearly every machine has. */
function ownName({ machine }: JobPlan['job'], kind: LimitRowDocument['kind'], of: string): string {
  const names: Partial<Record<LimitRowDocument['kind'], string | undefined>> = {
    place: machine.places[of]?.name,
    clearance: machine.clearances?.[of]?.name,
    'side stand': machine.points?.[of]?.name,
    clicks: machine.knobs?.[of]?.name,
  };
  return names[kind] ?? of;
}

/** What the gross rating leaves with a load, in people and things. */
export function payloadWords({ left, people }: PayloadDocument, units: Units): string {
  const words = say.payload;
  if (left === null) return words.unknown;
  const whole = exactWords(sizeOf(left), 'mass', units);
  if (left.value < 0) return words.over(whole);
  if (people === null) return words.where(words.left(whole));
  const things = exactWords({ ...left, value: left.value - people * PERSON }, 'mass', units);
  const share = people === 0 ? words.things : words.people(people, format(PERSON, 'mass', units), things);
  return words.where(`${words.left(whole)}${share}`);
}

/** How much more may lie at a place, and what ends it. */
export function roomWords(planned: JobPlan, room: RoomDocument, units: Units): string {
  const where = say.room[room.takes](placeName(planned.job, room.place));
  const said = roomSaid(planned, room, where, units);
  const unread = room.notChecked.map((of) => limitName(planned, of));
  return unread.length === 0 ? said : say.room.unchecked(said, say.list(unread));
}

function roomSaid(planned: JobPlan, room: RoomDocument, where: string, units: Units): string {
  const { mass, by, moreThan, notChecked } = room;
  if (moreThan !== null) return say.room.moreThan(where, format(moreThan, 'mass', units));
  if (mass === null || by === null) return say.room.unknown(where);
  const told = exactWords(mass, 'mass', units);
  if (by.kind === 'tips') return say.room.most(where, told, say.room.tips);
  const isAtBest = notChecked.some(({ kind }) => kind === by.kind && kind !== 'place');
  return say.room.most(where, told, (isAtBest ? say.room.atBest : say.room.by)(limitName(planned, by)));
}
