import type { Problem } from '@sagwright/records/problem';
import type { ForkQuestion } from '@sagwright/workbench/fork/whyFork';
import type { UnitsChoice } from '@sagwright/workbench/format/units';
import type { InputProblem } from '@sagwright/workbench/inputs/desk';
import type { CompareQuestion, compareView } from '@sagwright/workbench/page/compareView';
import type { ForkView } from '@sagwright/workbench/page/forkView';
import type { LimitListView } from '@sagwright/workbench/page/limitListView';
import type { RearView } from '@sagwright/workbench/page/rearView';
import type { LoadView, PageView } from '@sagwright/workbench/page/shapes';
import type { StanceView } from '@sagwright/workbench/page/stanceView';
import type { StandQuestion } from '@sagwright/workbench/page/whyStand';
import type { StanceQuestion } from '@sagwright/workbench/stance/whyStance';
import type { WhyQuestion } from '@sagwright/workbench/why/question';
import type { WhyWords } from '@sagwright/workbench/words/why';

/** What the page asks of the worker: the job as it stands, the units to show it in, and the load that is looked at (null: none). */
export interface Ask {
  readonly kind: 'plan';
  readonly seq: number;
  readonly document: unknown;
  readonly units: UnitsChoice;
  readonly inSight: string | null;
}

/** A figure of the last plan that was answered, to be opened up. */
export interface Open {
  readonly kind: 'open';
  readonly id: number;
  readonly question: FigureQuestion;
}

/** What works in the fork of the last plan that was answered. */
export interface AskFork {
  readonly kind: 'fork';
  readonly id: number;
}

/** Null where there is no plan yet, and where the front is no fork. */
export interface ForkAnswer {
  readonly kind: 'fork';
  readonly id: number;
  readonly fork: ForkView | null;
}

/** How the rear of the last plan moves, its parts where a load (null: the machine alone) rests. */
export interface AskRear {
  readonly kind: 'rear';
  readonly id: number;
  readonly load: string | null;
}

/** Null where there is no plan yet. */
export interface RearAnswer {
  readonly kind: 'rear';
  readonly id: number;
  readonly rear: RearView | null;
}

/** Of how a load stands, as the Machine tab shows it; of the fork as found; or of one spring with one load. */
export type FigureQuestion =
  | { readonly of: 'stand'; readonly asked: StandQuestion }
  | { readonly of: 'stance'; readonly asked: StanceQuestion }
  | { readonly of: 'fork'; readonly asked: ForkQuestion }
  | { readonly of: 'plan'; readonly asked: WhyQuestion }
  /** What is left of a limit, by its id; and the room at a place with a load. */
  | { readonly of: 'limit'; readonly id: string }
  | { readonly of: 'room'; readonly place: string; readonly load: string };

/** How a load (null: the machine alone) of the last plan stands and steers. */
export interface AskStance {
  readonly kind: 'ask stance';
  readonly id: number;
  readonly load: string | null;
}

/** Every limit of the last plan's job, and the room that a load (null: the machine alone) leaves. */
export interface AskLimits {
  readonly kind: 'ask limits';
  readonly id: number;
  readonly load: string | null;
}

/** Null where there is no plan yet. */
export interface LimitsTold {
  readonly kind: 'limits told';
  readonly id: number;
  readonly limits: LimitListView | null;
}

/** In words, or a sentence that says why it cannot be told. */
export interface StanceTold {
  readonly kind: 'stance told';
  readonly id: number;
  readonly stance: StanceView | string;
}

/** Two jobs or templates, to be laid beside each other. */
export interface AskCompare {
  readonly kind: 'ask compare';
  readonly id: number;
  readonly question: CompareQuestion;
}

export interface Compared {
  readonly kind: 'compared';
  readonly id: number;
  readonly comparison: ReturnType<typeof compareView>;
}

/** All that the page posts to the worker, and all that comes back. */
export type ToWorker = Ask | Open | AskFork | AskRear | AskStance | AskLimits | AskCompare;
export type FromWorker = Answer | Opened | ForkAnswer | RearAnswer | StanceTold | LimitsTold | Compared;

/** What the worker says: the load in sight first, then all that is to be shown; or why the job has no plan. */
export type Answer =
  | { readonly kind: 'in sight'; readonly seq: number; readonly load: LoadView }
  | { readonly kind: 'view'; readonly seq: number; readonly view: PageView }
  | { readonly kind: 'problems'; readonly seq: number; readonly problems: readonly PageProblem[] };

/** A figure opened up, or a sentence that says why it cannot be. */
export interface Opened {
  readonly kind: 'opened';
  readonly id: number;
  readonly figure: WhyWords | string;
}

/** Something wrong with the job, with the path of its field; without a code where not even a document could be read. */
export interface PageProblem {
  readonly path: string;
  readonly code?: Problem['code'] | InputProblem['code'];
  readonly message: string;
}
