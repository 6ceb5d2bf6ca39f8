import type { JobPlan } from '../path.ts';
import { clearanceRows } from './clearanceRows.ts';
import type { LimitListDocument } from './document.ts';
import { placeRows, wheelRows } from './loadRows.ts';
import { payloadOfJob } from './payload.ts';
import { roomsOfJob } from './room.ts';
import type { LimitRow } from './row.ts';
import { shockRows } from './shockRows.ts';
import { knobRows, sideStandRows } from './standRows.ts';
import { tyreRows } from './tyreRows.ts';

/** Every limit of a job, always in this order. */
export function limitRows(planned: JobPlan): readonly LimitRow[] {
  return [
    ...wheelRows(planned),
    ...placeRows(planned),
    ...tyreRows(planned),
    ...shockRows(planned),
    ...clearanceRows(planned),
    ...sideStandRows(planned),
    ...knobRows(planned),
  ];
}

export function limitListOf(planned: JobPlan): LimitListDocument {
  return {
    rows: limitRows(planned).map(({ told }) => told),
    payload: payloadOfJob(planned),
    room: roomsOfJob(planned),
  };
}
