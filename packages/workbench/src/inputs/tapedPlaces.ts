import type { HardPoint, PartName } from '@sagwright/model/rear/hardPoints';
import { type Places, pointsFromTape } from '@sagwright/model/rear/pointsFromTape';
import type { JobDocument } from '@sagwright/records/schema';
import type { Points, Rear } from '@sagwright/records/schema/machine';
import { isShock, type PointLength } from '@sagwright/records/schema/pointTape';
import { type Quantity, siOf } from '@sagwright/records/schema/quantity';
import { inOrder } from './desk.ts';
import { partFields } from './partFields.ts';
import type { Take } from './take.ts';
import { tapeDeviation } from './tapeDeviation.ts';
import type { TapedPlaces, TapedRow } from './tapedRows.ts';

const PATH = 'machine.rear.travel';

/** The hard points of a job by the tape that was laid to them; null where none was. */
export function tapedPlacesOf({ machine }: JobDocument): TapedPlaces | null {
  const { travel, tyre } = machine.rear;
  if ((travel.kind !== 'direct' && travel.kind !== 'linkage') || travel.tape === undefined) return null;
  const radius = siOf(tyre!.radius!);
  const rows = [...lengthRows(travel), ...placeRows(machine.rear, travel, radius)];
  const near = Object.fromEntries(
    partFields(machine.rear, travel).map(({ part, place: { x, height } }) => [
      part,
      { x: siOf(x), height: siOf(height) },
    ]),
  );
  const answer = pointsFromTape(
    rows.map(({ taped }) => taped),
    near,
    { pitch: 0, radius },
  );
  return { rows, near, radius, answer };
}

/**
 * The places as found, moved on by what each reading has moved since: to first order, which is all that a ± asks for.
 * `radius` as it is now [m].
 */
export function placesNow({ rows, radius: typed, answer }: TapedPlaces, take: Take, radius: number): Places {
  if (answer.kind !== 'points')
    throw new RangeError(`placesNow: a tape that gives no points: ${answer.kind}`);
  const raised = radius - typed;
  const moved = rows.map((row, i) => {
    const now = take.known(row.path, row.typed, row.length === null ? 'hardPoint' : 'tape');
    const fromAxle = row.length === null && row.taped.kind === 'above axle' ? now - radius : now;
    return fromAxle - row.taped.length + leant(row, take, answer.misfits[i]!);
  });
  return Object.fromEntries(
    Object.entries(answer.points).map(([part, place]) => {
      const along = (axis: keyof HardPoint): number =>
        moved.reduce((sum, by, i) => sum + by * answer.moves[i]![part as PartName]![axis], place[axis]);
      return [part, { x: along('x'), height: along('height') + raised }];
    }),
  );
}

/** How far from where it was looked for a part was found [m]. */
export function awayOf({ near, answer }: TapedPlaces, part: PartName): number {
  if (answer.kind !== 'points') throw new RangeError(`awayOf: a tape that gives no points: ${answer.kind}`);
  const [found, looked] = [answer.points[part]!, near[part]!];
  return Math.hypot(found.x - looked.x, found.height - looked.height);
}

/** More lean leaves less length in the side view: ∂l/∂s = s/l of the length as the points give it. */
function leant({ leans, taped }: TapedRow, take: Take, misfit: number): number {
  if (leans === null || taped.kind !== 'between') return 0;
  const now = take.known(leans.path, leans.typed, 'tape');
  return -(taped.sideways / (taped.length - misfit)) * (now - taped.sideways);
}

function lengthRows({ tape = {}, sideways }: Points): readonly TapedRow[] {
  return inOrder<PointLength>(tape).map(([id, each]) => {
    const path = `${PATH}.tape.${id}`;
    const { length: typed } = each;
    const [length, deviation] = [siOf(typed), tapeDeviation(typed)];
    const shared = { path: `${path}.length`, typed, length: each };
    if (each.kind !== 'between')
      return { ...shared, taped: { kind: each.kind, of: each.of, length, deviation }, leans: null };
    const { from, to } = each;
    const leans =
      each.sideways !== undefined
        ? { path: `${path}.sideways`, typed: each.sideways }
        : sideways !== undefined && isShock(each)
          ? { path: `${PATH}.sideways`, typed: sideways }
          : null;
    const taped = {
      kind: each.kind,
      from,
      to,
      length,
      deviation,
      sideways: leans === null ? 0 : siOf(leans.typed),
    };
    return { ...shared, taped, leans };
  });
}

/** A place that was typed with its ± counts beside the lengths; without, it only tells where the part is looked for. */
function placeRows(rear: Rear, travel: Points, radius: number): readonly TapedRow[] {
  return partFields(rear, travel).flatMap(({ part, path, place: { x, height } }): TapedRow[] => {
    const row = (
      name: string,
      typed: Quantity<'length'>,
      kind: 'ahead of axle' | 'above axle',
      zero: number,
    ): TapedRow[] =>
      typed.plusMinus === undefined
        ? []
        : [
            {
              path: `${path}.${name}`,
              typed,
              length: null,
              taped: { kind, of: part, length: siOf(typed) - zero, deviation: tapeDeviation(typed) },
              leans: null,
            },
          ];
    return [...row('x', x, 'ahead of axle', 0), ...row('height', height, 'above axle', radius)];
  });
}
