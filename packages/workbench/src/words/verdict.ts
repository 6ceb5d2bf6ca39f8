import type { Planned, SpringPlan } from '@sagwright/model/plan/answer';
import { reachOfCell } from '@sagwright/model/plan/pressureReach';
import type { JobPlan } from '../path.ts';
import { riddenCells } from '../result/inView.ts';
import { words } from './catalogue.ts';

export type Verdict = keyof typeof words.verdicts;

/** Whether a spring fits, and whether its ± could turn that. */
export function verdictOf(planned: JobPlan, spring: SpringPlan): Verdict {
  const asked = spring.cells.filter(
    ({ kind, loadCase }) =>
      kind !== 'refused' && kind !== 'not wanted' && planned.job.loadCases[loadCase]!.share > 0,
  );
  if (asked.length === 0) return 'nothing asked of it';
  const ridden = riddenCells(planned, spring).map(({ cell }) => cell);
  if (spring.fits) return ridden.some(isClose) ? 'fits, with less left than its ±' : 'fits';
  const misses = ridden.filter((cell) => reachOfCell(cell).kind !== 'reached');
  const bindsOrRattles = spring.reasons.some(({ code }) => code === 'coil bind' || code === 'little preload');
  const byDoubt = misses.length > 0 && misses.every(isClose) && ridden.length === asked.length;
  return byDoubt && !bindsOrRattles ? 'misses by less than its ±' : 'does not fit';
}

export function verdictWords(planned: JobPlan, spring: SpringPlan): string {
  return words.verdicts[verdictOf(planned, spring)]();
}

/** What is left to the end of the adjuster or of the pressure, or lies past it, is less than the ± of the aim. */
function isClose(cell: Planned): boolean {
  const reach = reachOfCell(cell);
  const aim = cell.pressure?.isPlanned ? cell.pressure.aim : cell.positions?.aim;
  const doubt = aim?.plusMinus ?? 0;
  if (reach.kind === 'reached') return reach.left < doubt;
  return 'short' in reach && reach.short < doubt;
}
