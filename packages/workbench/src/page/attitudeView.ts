import type { Attitude } from '@sagwright/model/attitude/attitude';
import { formatFigureNumber, type ShownDimension } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import { type AttitudePart, type AttitudeSlopes, attitudeDoubt, attitudeParts } from './attitudeDoubt.ts';
import type { AttitudeView } from './shapes.ts';
import { figureWords } from './stands.ts';

/** An attitude with how it moves with what is uncertain. */
export interface Posture {
  readonly attitude: Attitude;
  readonly slopes: AttitudeSlopes;
}

/** Each part of an attitude that is known, with its ±, and how it changed against `before` (null: nothing changed). */
export function attitudeViews(
  now: Posture | null,
  before: Posture | null,
  units: Units,
): readonly AttitudeView[] {
  if (now === null) return [];
  return attitudeParts.flatMap((part): readonly AttitudeView[] => {
    const value = now.attitude[part];
    if (value === null) return [];
    const { name, dimension } = names[part];
    const plusMinus = attitudeDoubt(part, now.slopes);
    const change = before === null ? null : changeWords(part, now, before, dimension, units);
    return [{ name, figure: figureWords({ value, plusMinus }, dimension, units), change }];
  });
}

/** "+21.9 ± 0.8": what both share of their doubt cancels. */
function changeWords(
  part: AttitudePart,
  now: Posture,
  before: Posture,
  dimension: ShownDimension,
  units: Units,
): string | null {
  const [value, was] = [now.attitude[part], before.attitude[part]];
  if (value === null || was === null) return null;
  const plusMinus = attitudeDoubt(part, now.slopes, before.slopes);
  const text = formatFigureNumber({ value: value - was, plusMinus }, dimension, units);
  return value > was && /^[^±]*[1-9]/.test(text) ? `+${text}` : text;
}

const names = {
  pitch: { name: 'pitch', dimension: 'angle' },
  rake: { name: 'rake', dimension: 'angle' },
  groundTrail: { name: 'trail', dimension: 'length' },
  wheelbase: { name: 'wheelbase', dimension: 'length' },
  seatHeight: { name: 'seat height', dimension: 'length' },
} as const satisfies {
  readonly [K in AttitudePart]: {
    readonly name: AttitudeView['name'];
    readonly dimension: ShownDimension;
  };
};
