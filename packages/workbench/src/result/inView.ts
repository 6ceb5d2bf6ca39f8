import type { Planned, SpringPlan } from '@sagwright/model/plan/answer';
import type { JobPlan } from '../path.ts';

export type End = 'rear' | 'front';

/** The spring that speaks for an end: picked by a person, else suggested, else as found; null where the job has none. */
export function springInView(planned: JobPlan, end: End): SpringPlan | null {
  const { spring } = planned.plan.planned[end];
  return planned.plan[end].springs.find((each) => each.spring === spring) ?? null;
}

/** Planned cells of a spring for the loads that are ridden. */
export function riddenCells(
  planned: JobPlan,
  spring: SpringPlan,
): readonly { readonly loadCase: string; readonly cell: Planned }[] {
  return spring.cells.flatMap((cell) =>
    cell.kind === 'planned' && planned.job.loadCases[cell.loadCase]!.share > 0 ? [cell] : [],
  );
}

/** The ridden load that leaves least to tighten, of those in reach; null where none is. */
export function leastLeft(
  planned: JobPlan,
  spring: SpringPlan,
): { readonly loadCase: string; readonly left: number; readonly plusMinus: number | null } | null {
  const reached = riddenCells(planned, spring).flatMap(({ loadCase, cell }) =>
    cell.reach.kind === 'reached'
      ? [{ loadCase, left: cell.reach.left, plusMinus: cell.positions?.aim.plusMinus ?? null }]
      : [],
  );
  return reached.length === 0 ? null : reached.reduce((a, b) => (b.left < a.left ? b : a));
}
