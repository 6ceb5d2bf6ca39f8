import { type Rating, stated } from '@sagwright/model/limits/limits';
import { capacityAtPressure } from '@sagwright/model/tyres/capacityAtPressure';
import { loadIndexMass } from '@sagwright/model/tyres/loadIndex';
import { halfWidthOf } from '@sagwright/model/uncertainty/spread';
import type { Tyre } from '@sagwright/records/schema/machine';
import { siOf } from '@sagwright/records/schema/quantity';
import type { Desk } from './desk.ts';
import { ownParts } from './ownFigure.ts';
import { ratingOf } from './rating.ts';
import type { Take } from './take.ts';

/** Where a tyre's capacity comes from: the maker's table at the pressure read, a figure of its own, or its load index. */
export type CapacityFrom = 'table' | 'below table' | 'own figure' | 'load index' | 'nothing';

export function capacityFrom(tyre: Tyre | undefined): CapacityFrom {
  if (tyre?.byPressure !== undefined && tyre.pressure !== undefined)
    return capacityAtPressure(rowsOf(tyre.byPressure), siOf(tyre.pressure)) === null
      ? 'below table'
      : 'table';
  if (tyre?.capacity !== undefined) return 'own figure';
  return tyre?.loadIndex === undefined ? 'nothing' : 'load index';
}

/** What must be read before anybody knows that a tyre bears its figure. */
export type TyreLack = 'tyre capacity' | 'capacity at pressure' | 'pressure' | 'placard pressure';

/**
 * A figure of the tyre, or its load index, holds with the air that is asked for: it is known to be borne only where the pressure
 * was read, and is not below what plate or manual ask for. With less air only the maker's table tells how much.
 */
export function tyreLacks(tyre: Tyre | undefined): readonly TyreLack[] {
  const from = capacityFrom(tyre);
  if (from === 'table') return [];
  if (from === 'below table') return ['capacity at pressure'];
  if (tyre?.byPressure !== undefined) return ['pressure'];
  const lacks: readonly TyreLack[] = [
    ...(from === 'nothing' ? (['tyre capacity'] as const) : []),
    ...(tyre?.pressure === undefined ? (['pressure'] as const) : []),
    ...(tyre?.placardPressure === undefined ? (['placard pressure'] as const) : []),
  ];
  return lacks.length === 0 && isUnderPressure(tyre!) ? ['capacity at pressure'] : lacks;
}

/** What a tyre may bear, or may bear at best; null where nothing tells. */
export function tyreRating(desk: Desk, end: 'rear' | 'front'): Rating | null {
  const { tyre } = desk.job.machine[end];
  const rating = fullRating(desk, end, tyre);
  return rating === null || tyreLacks(tyre).length === 0 ? rating : { ...rating, isAtBest: true };
}

function fullRating(desk: Desk, end: 'rear' | 'front', tyre: Tyre | undefined): Rating | null {
  switch (capacityFrom(tyre)) {
    case 'table':
      return atItsPressure(desk, end, tyre!);
    case 'below table':
      return stated(siOf(tyre!.byPressure![0]!.capacity));
    case 'own figure':
      return ratingOf(desk, `machine.${end}.tyre.capacity`, tyre!.capacity);
    case 'load index':
      return stated(loadIndexMass(tyre!.loadIndex!));
    case 'nothing':
      return null;
  }
}

function atItsPressure(desk: Desk, end: 'rear' | 'front', tyre: Tyre): Rating {
  const { value, moves } = partsOfTable(desk.take, end, tyre)!;
  return { value, plusMinus: halfWidthOf(Math.hypot(...moves.values())) };
}

/** What a tyre bears by its maker's table at the pressure read, and what moves it: that pressure's ±, and any typed in the table. */
export function partsOfTable(
  take: Take,
  end: 'rear' | 'front',
  { byPressure, pressure }: Tyre,
): ReturnType<typeof ownParts> {
  const path = `machine.${end}.tyre`;
  return ownParts(take, (at) => {
    const cell = (row: number, name: 'pressure' | 'capacity'): number => {
      const typed = byPressure![row]![name];
      const isStated = typed.plusMinus === undefined;
      return isStated ? siOf(typed) : at.known(`${path}.byPressure.${row}.${name}`, typed, 'stated');
    };
    const rows = byPressure!.map((_, i) => ({
      pressure: cell(i, 'pressure'),
      capacity: cell(i, 'capacity'),
    }));
    return capacityAtPressure(rows, at.known(`${path}.pressure`, pressure!, 'tyrePressure'));
  });
}

function rowsOf(rows: NonNullable<Tyre['byPressure']>) {
  return rows.map(({ pressure, capacity }) => ({ pressure: siOf(pressure), capacity: siOf(capacity) }));
}

function isUnderPressure({ pressure, placardPressure }: Tyre): boolean {
  return siOf(pressure!) < siOf(placardPressure!) * (1 - ROUNDING);
}

/** What converting between units may take off. */
const ROUNDING = 1e-9;
