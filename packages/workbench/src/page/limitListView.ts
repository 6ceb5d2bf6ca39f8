import type { Units } from '../format/units.ts';
import type { LimitRowDocument, RoomDocument } from '../limits/document.ts';
import { limitRows } from '../limits/list.ts';
import { payloadOfLoad } from '../limits/payload.ts';
import { roomsOfLoad } from '../limits/room.ts';
import { limitRowName, limitRowNote, limitRowSaid, payloadWords, roomWords } from '../limits/words.ts';
import type { JobPlan } from '../path.ts';
import { limitList as say } from '../words/english/limitList.ts';

/** Every limit of the job, and the room that one load leaves, in words ready in the units chosen. */
export interface LimitListView {
  readonly rows: readonly LimitRowView[];
  /** What the room is, before its figures. */
  readonly roomSays: string;
  /** What the gross rating leaves with the load, in people and things; null for the machine alone. */
  readonly payload: string | null;
  /** None for the machine alone, and for a load that was only weighed. */
  readonly rooms: readonly RoomView[];
}

export interface LimitRowView {
  readonly id: string;
  readonly name: string;
  readonly verdict: LimitRowDocument['verdict'];
  /** Passed with what is left, failed by how much; or that it is not checked. */
  readonly says: string;
  readonly note: string | null;
  /** What must be read first and where one reads it, with the field of the job where it goes. */
  readonly needs: readonly { readonly says: string; readonly path: string }[];
}

export interface RoomView {
  readonly place: string;
  readonly by: RoomDocument['by'];
  readonly says: string;
}

/** `load` null: the machine alone. */
export function limitListView(planned: JobPlan, load: string | null, units: Units): LimitListView {
  return {
    rows: limitRows(planned).map(({ told }) => ({
      id: told.id,
      name: limitRowName(planned, told),
      verdict: told.verdict,
      says: limitRowSaid(planned, told, units),
      note: limitRowNote(told),
      needs: told.needs.map(({ what, path }) => ({ says: say.needs[what], path })),
    })),
    roomSays: say.roomWords,
    payload: load === null ? null : payloadWords(payloadOfLoad(planned, load), units),
    rooms:
      load === null
        ? []
        : roomsOfLoad(planned, load).map((room) => ({
            place: room.place,
            by: room.by,
            says: roomWords(planned, room, units),
          })),
  };
}
