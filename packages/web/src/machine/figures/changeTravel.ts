import type { Points, Travel } from '@sagwright/records/schema/machine';
import type { PointLength } from '@sagwright/records/schema/pointTape';
import { type Quantity, siOf } from '@sagwright/records/schema/quantity';
import { meanRatio, type TravelRow, turnedOver } from '@sagwright/workbench/inputs/ratioTold';
import { at, type Change, type Edit, write } from '../../job/edits.ts';
import { formerKind } from '../../job/formerKind.ts';

const PATH = ['machine', 'rear', 'travel'];
const MEASURED_AT = ['machine', 'rear', 'measuredAt'];

/**
 * How the wheel moves the shock, told in another way: as it was if it was told so before, else by the same figures where they tell it. What
 * is known better keeps what was known before beside it. Rows and places cannot be had from less: they are asked for at their fields.
 */
export function changeTravel(document: unknown, kind: string, done: readonly Change[]): readonly Edit[] {
  const travel = at(document, PATH) as Travel;
  if (travel.kind === kind) return [];
  const former = formerKind(document, done, PATH, kind);
  if (former !== null) return former;
  const made = write(document, PATH, { kind, ...told(travel, kind) });
  // With hard points the travel at which they were read follows from them.
  const isKnown = (kind === 'direct' || kind === 'linkage') && at(document, MEASURED_AT) !== undefined;
  return isKnown ? [made, write(document, MEASURED_AT, undefined)] : [made];
}

/** What a travel tells of itself as another kind. */
export function told(travel: Travel, kind: string): object {
  switch (kind) {
    case 'table':
      return {
        rows: rowsOf(travel).map(({ wheel, shock }) => ({ wheel, shock })),
        ...leverageBefore(travel),
      };
    case 'taped':
      return { points: membersOf(rowsOf(travel)), ...leverageBefore(travel) };
    case 'direct':
    case 'linkage':
      return pointsTold(travel, kind);
    default:
      return ratioTold(travel, kind === 'leverage' ? 'wheel/shock' : 'shock/wheel');
  }
}

function ratioTold(travel: Travel, unit: 'wheel/shock' | 'shock/wheel'): object {
  if ('ratio' in travel) return travel.ratio === undefined ? {} : { ratio: turnedOver(travel.ratio, unit) };
  if ('earlierLeverage' in travel && travel.earlierLeverage !== undefined) {
    const { earlierLeverage: kept } = travel;
    return { ratio: unit === 'wheel/shock' ? kept : turnedOver(kept, unit) };
  }
  const ratio = meanRatio(rowsOf(travel), unit);
  return ratio === null ? {} : { ratio };
}

/** A rocker on the frame is the usual one; where it turns is a choice beside its places. */
function pointsTold(travel: Travel, kind: Points['kind']): object {
  const rows = rowsOf(travel);
  return {
    ...(kind === 'linkage' && { rocker: { on: 'frame' }, farEye: { on: 'frame' } }),
    ...('sideways' in travel && { sideways: travel.sideways }),
    ...sharedTape(travel),
    ...leverageBefore(travel),
    ...(rows.length > 0 && { earlierSurvey: membersOf(rows) }),
  };
}

/** Lengths between axle and pivot, which every rear has. */
function sharedTape(travel: Travel): object {
  const tape: Readonly<Record<string, PointLength>> = ('tape' in travel && travel.tape) || {};
  const isShared = (each: PointLength): boolean =>
    (each.kind === 'between' ? [each.from, each.to] : [each.of]).every(
      (part) => part === 'axle' || part === 'pivot',
    );
  const shared = Object.entries(tape).filter(([, each]) => isShared(each));
  return shared.length === 0 ? {} : { tape: Object.fromEntries(shared) };
}

function leverageBefore(travel: Travel): { readonly earlierLeverage?: Quantity } {
  if (travel.kind === 'leverage') return travel.ratio === undefined ? {} : { earlierLeverage: travel.ratio };
  if (travel.kind === 'motion') {
    return travel.ratio === undefined
      ? {}
      : { earlierLeverage: turnedOver(travel.ratio, 'wheel/shock') as Quantity };
  }
  return travel.earlierLeverage === undefined ? {} : { earlierLeverage: travel.earlierLeverage };
}

/** Rows by their ids, in their order. */
function membersOf(rows: readonly KeptRow[]): object {
  return Object.fromEntries(
    rows.map(({ id, wheel, shock }, i) => [id ?? `row-${i + 1}`, { order: i + 1, wheel, shock }]),
  );
}

interface KeptRow extends TravelRow {
  readonly id?: string;
}

/** Rows that have both their figures; taped ones in the order in which the wheel rises, whenever they were taped. */
function rowsOf(travel: Travel): readonly KeptRow[] {
  if (travel.kind === 'leverage' || travel.kind === 'motion') return [];
  if (travel.kind === 'table') return wholeOnes(travel.rows ?? []);
  const kept = travel.kind === 'taped' ? travel.points : travel.earlierSurvey;
  const points = Object.entries(kept ?? {}).map(([id, { wheel, shock }]) => ({ id, wheel, shock }));
  return wholeOnes(points).sort((a, b) => siOf(a.wheel) - siOf(b.wheel));
}

function wholeOnes(rows: readonly Partial<KeptRow>[]): KeptRow[] {
  return rows.filter((row): row is KeptRow => row.wheel !== undefined && row.shock !== undefined);
}
