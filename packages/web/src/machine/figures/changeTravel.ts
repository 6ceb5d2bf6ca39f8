import type { Travel } from '@sagwright/records/schema/machine';
import { siOf } from '@sagwright/records/schema/quantity';
import { meanRatio, type TravelRow, turnedOver } from '@sagwright/workbench/inputs/ratioTold';
import { at, type Change, type Edit, write } from '../../job/edits.ts';
import { formerKind } from '../../job/formerKind.ts';

const PATH = ['machine', 'rear', 'travel'];

/**
 * How the wheel moves the shock, told in another way: as it was if it was told so before, else by the same figures where they tell it.
 * Rows cannot be had from one ratio: they are asked for at their fields.
 */
export function changeTravel(document: unknown, kind: string, done: readonly Change[]): readonly Edit[] {
  const travel = at(document, PATH) as Travel;
  if (travel.kind === kind) return [];
  const former = formerKind(document, done, PATH, kind);
  if (former !== null) return former;
  return [write(document, PATH, { kind, ...told(travel, kind) })];
}

function told(travel: Travel, kind: string): object {
  if (kind === 'table') return { rows: rowsOf(travel) };
  if (kind === 'taped') {
    return {
      points: Object.fromEntries(rowsOf(travel).map((row, i) => [`row-${i + 1}`, { order: i + 1, ...row }])),
    };
  }
  const unit = kind === 'leverage' ? 'wheel/shock' : 'shock/wheel';
  if ('ratio' in travel) return travel.ratio === undefined ? {} : { ratio: turnedOver(travel.ratio, unit) };
  if ('earlierLeverage' in travel && travel.earlierLeverage !== undefined) {
    const { earlierLeverage: kept } = travel;
    return { ratio: kind === 'leverage' ? kept : turnedOver(kept, unit) };
  }
  const ratio = meanRatio(rowsOf(travel), unit);
  return ratio === null ? {} : { ratio };
}

/** Rows that have both their figures; taped ones in the order in which the wheel rises, whenever they were taped. */
function rowsOf(travel: Travel): readonly TravelRow[] {
  if (travel.kind === 'table') return wholeOnes(travel.rows ?? []);
  if (travel.kind !== 'taped') return [];
  const points = Object.values(travel.points ?? {}).map(({ wheel, shock }) => ({ wheel, shock }));
  return wholeOnes(points).sort((a, b) => siOf(a.wheel) - siOf(b.wheel));
}

function wholeOnes(rows: readonly Partial<TravelRow>[]): TravelRow[] {
  return rows.filter((row): row is TravelRow => row.wheel !== undefined && row.shock !== undefined);
}
