import type { Travel } from '@sagwright/records/schema/machine';
import { type Quantity, siOf } from '@sagwright/records/schema/quantity';
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
  const ratio = 'ratio' in travel ? turnedOver(travel.ratio, unit) : meanRatio(rowsOf(travel), unit);
  return ratio === null ? {} : { ratio };
}

type Row = Extract<Travel, { kind: 'table' }>['rows'][number];
type RatioUnit = 'wheel/shock' | 'shock/wheel';

/** Rows that have both their figures; taped ones in the order in which the wheel rises, whenever they were taped. */
function rowsOf(travel: Travel): readonly Row[] {
  if (travel.kind === 'table') return wholeOnes(travel.rows ?? []);
  if (travel.kind !== 'taped') return [];
  const points = Object.values(travel.points ?? {}).map(({ wheel, shock }) => ({ wheel, shock }));
  return wholeOnes(points).sort((a, b) => siOf(a.wheel) - siOf(b.wheel));
}

function wholeOnes(rows: readonly Partial<Row>[]): Row[] {
  return rows.filter((row): row is Row => row.wheel !== undefined && row.shock !== undefined);
}

/** The same ratio, seen from the other end; it keeps its share of doubt and its origin. */
function turnedOver(ratio: Quantity | undefined, unit: RatioUnit): object | null {
  if (ratio === undefined) return null;
  const { value, plusMinus, origin } = ratio;
  const share = plusMinus?.unit === '%' ? plusMinus.value : (100 * (plusMinus?.value ?? 0)) / value;
  return {
    value: digits(1 / value, 5),
    unit,
    ...(plusMinus && { plusMinus: { value: digits(share, 2), unit: '%' } }),
    ...(origin && { origin }),
  };
}

/** Over the whole travel, with a ± that holds the ratio of either half of it. */
function meanRatio(rows: readonly Row[], unit: RatioUnit): object | null {
  const [first, middle, last] = [rows[0], rows[Math.floor(rows.length / 2)], rows.at(-1)];
  if (first === undefined || middle === undefined || last === undefined) return null;
  const ratio = (from: Row, to: Row): number => {
    const [wheel, stroke] = [siOf(to.wheel) - siOf(from.wheel), siOf(from.shock) - siOf(to.shock)];
    return unit === 'wheel/shock' ? wheel / stroke : stroke / wheel;
  };
  const [mean, lower, upper] = [ratio(first, last), ratio(first, middle), ratio(middle, last)];
  if (![mean, lower, upper].every((each) => each > 0 && Number.isFinite(each))) return null;
  const share = Math.max(...[lower, upper].map((each) => Math.abs(100 * (each / mean - 1))));
  return { value: digits(mean, 4), unit, plusMinus: { value: digits(Math.max(share, 1), 2), unit: '%' } };
}

function digits(value: number, count: number): number {
  return Number(value.toPrecision(count));
}
