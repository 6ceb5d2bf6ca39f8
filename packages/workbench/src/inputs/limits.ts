import { type LimitsSI, type Rating, stated } from '@sagwright/model/limits/limits';
import { capacityAtPressure } from '@sagwright/model/tyres/capacityAtPressure';
import { loadIndexMass } from '@sagwright/model/tyres/loadIndex';
import type { Tyre } from '@sagwright/records/schema/machine';
import { type Quantity, siOf } from '@sagwright/records/schema/quantity';
import type { Desk } from './desk.ts';
import { ownFigure } from './ownFigure.ts';

/** The maker's limits, each only where somebody read it. */
export function limitsFigures(desk: Desk): LimitsSI {
  const { limits } = desk.job.machine;
  return {
    gross: ratingOf(desk, 'machine.limits.gross', limits?.gross),
    frontAxle: ratingOf(desk, 'machine.limits.frontAxle', limits?.frontAxle),
    rearAxle: ratingOf(desk, 'machine.limits.rearAxle', limits?.rearAxle),
    frontTyre: tyreRating(desk, 'front'),
    rearTyre: tyreRating(desk, 'rear'),
  };
}

/** A rating as it stands, or with the ± that somebody typed beside it. */
export function ratingOf(desk: Desk, path: string, typed: Quantity | undefined): Rating | null {
  if (typed === undefined) return null;
  if (typed.plusMinus === undefined) return stated(siOf(typed));
  const value = desk.take.known(path, typed, 'stated');
  return { value, plusMinus: desk.take.figures.get(path)!.halfWidth };
}

/** Where a tyre's capacity comes from: the maker's table at the pressure read, a figure of its own, or its load index. */
export type CapacityFrom = 'table' | 'own figure' | 'load index' | 'pressure beyond table' | 'nothing';

export function capacityFrom(tyre: Tyre | undefined): CapacityFrom {
  if (tyre?.byPressure !== undefined && tyre.pressure !== undefined)
    return capacityAtPressure(rowsOf(tyre.byPressure), siOf(tyre.pressure)) === null
      ? 'pressure beyond table'
      : 'table';
  if (tyre?.capacity !== undefined) return 'own figure';
  return tyre?.loadIndex === undefined ? 'nothing' : 'load index';
}

function tyreRating(desk: Desk, end: 'rear' | 'front'): Rating | null {
  const { tyre } = desk.job.machine[end];
  switch (capacityFrom(tyre)) {
    case 'table':
      return atItsPressure(desk, end, tyre!);
    case 'own figure':
      return ratingOf(desk, `machine.${end}.tyre.capacity`, tyre!.capacity);
    case 'load index':
      return stated(loadIndexMass(tyre!.loadIndex!));
    default:
      return null;
  }
}

/** The pressure's own ± goes into it. */
function atItsPressure(desk: Desk, end: 'rear' | 'front', { byPressure, pressure }: Tyre): Rating | null {
  const path = `machine.${end}.tyre.pressure`;
  const figure = ownFigure(desk, ({ take }) =>
    capacityAtPressure(rowsOf(byPressure!), take.known(path, pressure!, 'tyrePressure')),
  );
  return figure === null ? null : { value: figure.value, plusMinus: figure.plusMinus ?? 0 };
}

function rowsOf(rows: NonNullable<Tyre['byPressure']>) {
  return rows.map(({ pressure, capacity }) => ({ pressure: siOf(pressure), capacity: siOf(capacity) }));
}

/** Whether a tyre has less air than its plate or manual asks for. */
export function isUnderPressure(tyre: Tyre | undefined): boolean {
  if (tyre?.pressure === undefined || tyre.placardPressure === undefined) return false;
  return siOf(tyre.pressure) < siOf(tyre.placardPressure) * (1 - 1e-9);
}
