import type { LimitOf } from '@sagwright/model/limits/limits';
import { gradientAt } from '@sagwright/model/statics/gradient';
import { GRAVITY } from '@sagwright/model/statics/machine';
import type { Prepared } from '@sagwright/model/statics/prepared';
import { type Contribution, halfWidthOf } from '@sagwright/model/uncertainty/spread';
import { takeAgain } from '../inputs/take.ts';
import { capacityFrom, partsOfTable } from '../inputs/tyreCapacity.ts';
import type { JobPlan } from '../path.ts';
import { readAt, standingFullTank } from '../why/standing.ts';
import { limitPath } from './needs.ts';
import { spreadOf } from './row.ts';

/** What is held against what the wheels bear: all but places. */
export type WheelLimit = Exclude<LimitOf['kind'], 'place'>;

/** Of the margin of a wheel's limit with a load: what the load's ± is made of, and the limit's own. */
export function wheelContributions(
  planned: JobPlan,
  loadCase: string,
  kind: WheelLimit,
): readonly Contribution[] {
  const load = planned.inputs.question.loadCases.find(({ id }) => id === loadCase)!;
  const standing = standingFullTank(planned, load);
  const own = ratingContributions(planned, { kind });
  if (standing === null) return own;
  const { contributions } = readAt(standing, (prepared, state) => wheelLoad(prepared, state, kind));
  return together([...contributions, ...own]);
}

/** What a limit is held against, of a machine at rest [kg]. */
export function wheelLoad(prepared: Prepared, state: Float64Array, kind: WheelLimit): number {
  gradientAt(prepared, state, 0);
  const { rear, front } = prepared.gradient;
  const both = rear.wheelLoad + front.wheelLoad;
  const newtons = kind === 'gross' ? both : kind.startsWith('rear') ? rear.wheelLoad : front.wheelLoad;
  return newtons / GRAVITY;
}

/** Of the margin of a place's limit: what lies on it, and the limit's own. */
export function placeContributions(
  planned: JobPlan,
  loadCase: string,
  place: string,
): readonly Contribution[] {
  const things = thingsOn(planned, loadCase, place);
  return together([
    ...things.flatMap((thing) => {
      const path = `things.${thing}.mass`;
      const { deviation } = planned.inputs.figures.get(path)!;
      return ofWidth(path, halfWidthOf(deviation));
    }),
    ...ratingContributions(planned, { kind: 'place', place }),
  ]);
}

/** What the ± of a limit itself is made of: nothing where it is taken as it stands. */
export function ratingContributions(planned: JobPlan, of: LimitOf): readonly Contribution[] {
  const end = of.kind === 'rear tyre' ? 'rear' : of.kind === 'front tyre' ? 'front' : null;
  const tyre = end === null ? undefined : planned.job.machine[end].tyre;
  if (end === null || capacityFrom(tyre) !== 'table') {
    const path = limitPath(planned, of);
    return ofWidth(path, planned.inputs.figures.get(path)?.halfWidth ?? 0);
  }
  const { value, moves } = partsOfTable(takeAgain(planned.inputs.figures), end, tyre!)!;
  return spreadOf(value, moves).contributions;
}

function thingsOn({ job }: JobPlan, loadCase: string, place: string): readonly string[] {
  const load = job.loadCases[loadCase]!;
  if ('scales' in load) return [];
  const { places } = job.machine;
  const isOn = (at: string): boolean => {
    if (at === place) return true;
    const { carriedBy } = places[at]!;
    return places[place]!.limitCounts !== 'contents' && carriedBy !== undefined && isOn(carriedBy);
  };
  return Object.values(load.aboard).flatMap(({ thing, place: at }) => (isOn(at) ? [thing] : []));
}

/** What a figure of the job alone adds. */
function ofWidth(input: string, halfWidth: number): readonly Contribution[] {
  return halfWidth === 0 ? [] : [{ input, slope: 1, halfWidth, share: 1 }];
}

/** Shares of the whole that parts make together, the greatest first. */
export function together(parts: readonly Contribution[]): readonly Contribution[] {
  const whole = Math.hypot(...parts.map(({ halfWidth }) => halfWidth));
  return parts
    .map((part) => ({ ...part, share: whole > 0 ? (part.halfWidth / whole) ** 2 : 0 }))
    .sort((a, b) => b.halfWidth - a.halfWidth);
}
