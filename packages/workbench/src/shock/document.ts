import type { ThreadEnd } from '@sagwright/model/limits/threadLeft';
import type { Figure } from '@sagwright/model/plan/answer';

/** What is told of the rear shock by itself. */
export interface ShockDocument {
  /** Null where the job knows of none. */
  readonly lengthAdjuster: LengthAdjusterDocument | null;
}

/** How far the shock's length can be set, and what a chosen change takes. Lengths [m], longer positive. */
export interface LengthAdjusterDocument {
  readonly stands: Figure;
  /** Null where nothing tells how far it goes: not checked. */
  readonly longer: LengthLeft | null;
  readonly shorter: LengthLeft | null;
  /** Null where no other length was chosen. */
  readonly chosen: ChosenLength | null;
}

/** What is left one way; below 0 it stands too far out already. */
export interface LengthLeft {
  readonly length: Figure;
  /** Null where the lead of the thread is not known. */
  readonly turns: Figure | null;
  readonly by: ThreadEnd;
}

/** The chosen change against as found. */
export interface ChosenLength {
  readonly change: Figure;
  readonly turns: Figure | null;
  /** What is then left that way. */
  readonly left: Figure | null;
  readonly verdict: 'passed' | 'within its ±' | 'failed' | 'not checked';
}
