import type { Figure } from '@sagwright/model/plan/answer';
import type { Rubber } from '@sagwright/records/schema/struts';

/** The bump rubber of one end, each strut's alike. SI. */
export interface RubberDocument {
  /** Name of the made-up curve that stands in for it; null where it was measured. */
  readonly assumed: NonNullable<Rubber['assumed']> | null;
  /** Where it is met: stroke of the damper, and travel of the wheel [m]. */
  readonly stroke: Figure;
  readonly travel: Figure;
  /** At full bump: how far it is pressed [m], its force [N], and that of all at the wheel [N]. */
  readonly pressed: Figure;
  readonly force: Figure;
  readonly atWheel: Figure;
  /** In the order of the job; none for a load without a rest. */
  readonly loads: readonly RubberAtLoad[];
}

/** Wheel travel that a load leaves to the rubber [m]; below 0 it rests so deep in it. */
export interface RubberAtLoad {
  readonly loadCase: string;
  readonly asFound: LeftToRubber | null;
  readonly planned: LeftToRubber | null;
}

export interface LeftToRubber {
  readonly left: Figure;
  readonly verdict: 'clear' | 'within its ±' | 'rests on it';
}
