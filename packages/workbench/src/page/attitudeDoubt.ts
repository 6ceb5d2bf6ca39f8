import { type Attitude, attitudeAt } from '@sagwright/model/attitude/attitude';
import { figureDerivatives, stateDerivatives } from '@sagwright/model/uncertainty/derivatives';
import { directionsOf } from '@sagwright/model/uncertainty/inputs';
import { halfWidthAt } from '@sagwright/model/uncertainty/spread';
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

/**
 * ± (90 % half-width) of each part of the attitude at a rest [rad, m], by derivatives through the balance, all parts in one
 * pass. A part that is not known has ± 0.
 */
export function attitudeDoubt({
  parameters,
  prepared,
  state,
  inputs,
}: Standing): Readonly<Record<AttitudePart, number>> {
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
  const doubts = attitudeParts.map((part, i) => [part, halfWidthAt(directions, slopes, i, count)]);
  return Object.fromEntries(doubts) as Record<AttitudePart, number>;
}
