import type { UnitsChoice } from '@sagwright/workbench/format/units';
import type { PageView } from '@sagwright/workbench/page/shapes';

/** What the page asks of the worker: the job as it stands, and the units to show it in. */
export interface Ask {
  readonly seq: number;
  readonly document: unknown;
  readonly units: UnitsChoice;
}

/** What the worker says: what to show, or why the job has no plan. */
export type Answer =
  | { readonly seq: number; readonly kind: 'view'; readonly view: PageView }
  | { readonly seq: number; readonly kind: 'problems'; readonly problems: readonly PageProblem[] };

/** Something wrong with the job, with the path of its field. */
export interface PageProblem {
  readonly path: string;
  readonly message: string;
}
