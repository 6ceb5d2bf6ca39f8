import { type Attitude, attitudeAt } from '@sagwright/model/attitude/attitude';
import { doubtAt, type Slopes, type Standing, slopesOf } from '../why/standing.ts';

/** The parts of an attitude that a page shows. */
export const attitudeParts = [
  'pitch',
  'rake',
  'groundTrail',
  'wheelbase',
  'seatHeight',
] as const satisfies readonly (keyof Attitude)[];

export type AttitudePart = (typeof attitudeParts)[number];

/** How each part of an attitude [rad, m] moves with each uncertain input of its rest. */
export type AttitudeSlopes = Slopes;

/** All parts in one pass. A part that is not known moves with nothing. */
export function attitudeSlopes(standing: Standing): AttitudeSlopes {
  const count = attitudeParts.length;
  return slopesOf(
    standing,
    (moved, beside, out) => {
      const attitude = attitudeAt(moved, beside);
      for (let i = 0; i < count; i += 1) out[i] = attitude[attitudeParts[i]!] ?? 0;
    },
    count,
  );
}

/** ± (90 % half-width) of a part of an attitude; against `before`, that of its change: what both share cancels. */
export function attitudeDoubt(
  part: AttitudePart,
  now: AttitudeSlopes,
  before: AttitudeSlopes | null = null,
): number {
  return doubtAt(attitudeParts.indexOf(part), now, before);
}
