import { type Attitude, attitudeAt } from '@sagwright/model/attitude/attitude';
import { figureDerivatives, stateDerivatives } from '@sagwright/model/uncertainty/derivatives';
import { directionsOf } from '@sagwright/model/uncertainty/inputs';
import { halfWidthOf } from '@sagwright/model/uncertainty/spread';
import type { Standing } from '../why/standing.ts';

/** The parts of an attitude that a page shows. */
export const attitudeParts = [
  'pitch',
  'rake',
  'groundTrail',
  'wheelbase',
  'seatHeight',
] as const satisfies readonly (keyof Attitude)[];

export type AttitudePart = (typeof attitudeParts)[number];

/** How each part of an attitude [rad, m] moves with each uncertain input of its rest, in that input's standard deviations. */
export type AttitudeSlopes = ReadonlyMap<string, Readonly<Record<AttitudePart, number>>>;

/** By derivatives through the balance, all parts in one pass. A part that is not known moves with nothing. */
export function attitudeSlopes({ parameters, prepared, state, inputs }: Standing): AttitudeSlopes {
  const directions = directionsOf(parameters, inputs);
  const derivatives = stateDerivatives(parameters, prepared, state, directions);
  const count = attitudeParts.length;
  const slopes = figureDerivatives(
    parameters,
    prepared,
    state,
    directions,
    derivatives,
    (moved, beside, out) => {
      const attitude = attitudeAt(moved, beside);
      for (let i = 0; i < count; i += 1) out[i] = attitude[attitudeParts[i]!] ?? 0;
    },
    count,
  );
  return new Map(
    directions.map(({ input }, j) => {
      const own = attitudeParts.map((part, i) => [part, slopes[count * j + i]! * input.deviation]);
      return [input.name, Object.fromEntries(own) as Record<AttitudePart, number>];
    }),
  );
}

/** ± (90 % half-width) of a part of an attitude; against `before`, that of its change: what both share cancels. */
export function attitudeDoubt(
  part: AttitudePart,
  now: AttitudeSlopes,
  before: AttitudeSlopes | null = null,
): number {
  const names = new Set([...now.keys(), ...(before?.keys() ?? [])]);
  let variance = 0;
  for (const name of names)
    variance += ((now.get(name)?.[part] ?? 0) - (before?.get(name)?.[part] ?? 0)) ** 2;
  return halfWidthOf(Math.sqrt(variance));
}
