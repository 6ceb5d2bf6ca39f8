import { GRAVITY, type MachineSI } from '../statics/machine.ts';
import type { EndName } from '../statics/prepared.ts';
import type { Planned, SpringPlan } from './answer.ts';

/** Planned cells of the loads that are ridden. */
export function riddenCells(
  spring: SpringPlan,
  ridden: ReadonlySet<string>,
): readonly { readonly loadCase: string; readonly cell: Planned }[] {
  return spring.cells.flatMap((cell) => (cell.kind === 'planned' && ridden.has(cell.loadCase) ? [cell] : []));
}

/** Kilograms on the wheel for each metre of adjuster at the sag of a cell: n·k·MR / g. */
export function kilogramsPerMetre(
  spring: SpringPlan,
  cell: Planned,
  name: EndName,
  machine: MachineSI,
): number {
  const ratio = cell.set.rest?.[name].motionRatio ?? 0;
  return (machine[name].struts.length * spring.rate * ratio) / GRAVITY;
}
