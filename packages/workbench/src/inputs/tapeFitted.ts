import { fitTaped, type TapedFit } from '@sagwright/model/rear/tapedFit';
import type { JobDocument } from '@sagwright/records/schema';
import type { Travel } from '@sagwright/records/schema/machine';
import { siOf } from '@sagwright/records/schema/quantity';
import { tapeDeviation } from './tapeDeviation.ts';

type Taped = Extract<Travel, { kind: 'taped' }>;

/** The curve through the taped points of a job; null where its rear was not taped. */
export function tapeOf({ machine }: JobDocument): FittedTape | null {
  const { travel } = machine.rear;
  return travel.kind === 'taped' ? tapeFitted(travel) : null;
}

/** Taped points with their curve, in the order in which the wheel rises; ids as in the job. */
export interface FittedTape {
  readonly ids: readonly string[];
  readonly wheel: readonly number[];
  readonly fit: TapedFit;
}

/** The smooth curve through taped points, however they were taped: from the bottom up, from the top down, or down to the first height once more. */
function tapeFitted({ points }: Taped): FittedTape {
  const rising = Object.entries(points).sort(([, a], [, b]) => siOf(a.wheel) - siOf(b.wheel));
  const wheel = rising.map(([, point]) => siOf(point.wheel));
  const length = rising.map(([, point]) => siOf(point.shock));
  const slope = (length.at(-1)! - length[0]!) / (wheel.at(-1)! - wheel[0]!);
  const weight = rising.map(
    ([, point]) => 1 / (tapeDeviation(point.shock) ** 2 + (slope * tapeDeviation(point.wheel)) ** 2),
  );
  return { ids: rising.map(([id]) => id), wheel, fit: fitTaped(wheel, length, weight) };
}
