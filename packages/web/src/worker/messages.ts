import type { PageView } from './pageView.ts';

/** What the page asks of the worker: the job as it stands, and what it looks at. */
export interface Ask {
  readonly seq: number;
  readonly document: unknown;
  /** Load that is looked at: it is worked out first; null for the machine alone. */
  readonly load: string | null;
}

/** What the worker says. `part` 'load' comes first, with the springs of the load looked at; 'whole' ends the answer. */
export type Answer =
  | { readonly seq: number; readonly kind: 'view'; readonly view: PageView }
  | { readonly seq: number; readonly kind: 'problems'; readonly problems: readonly PageProblem[] };

/** Something wrong with the job, with the path of its field. */
export interface PageProblem {
  readonly path: string;
  readonly message: string;
}
