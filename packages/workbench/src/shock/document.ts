import type { ThreadEnd } from '@sagwright/model/limits/threadLeft';
import type { Figure, Reach } from '@sagwright/model/plan/answer';
import type { Contribution } from '@sagwright/model/uncertainty/spread';

/** What is told of the rear shock by itself. */
export interface ShockDocument {
  /** Null where the job knows of none. */
  readonly lengthAdjuster: LengthAdjusterDocument | null;
  /** Null where it is known to have none. */
  readonly gas: GasDocument | null;
}

/** With what force the gas of each damper pushes its shaft out [N], settled: fully out, and at full stroke. */
export interface GasDocument {
  readonly fullyOut: Figure;
  readonly fullStroke: Figure;
}

/** The pressure that answers a load, as a gauge reads it [Pa], with the spring of its cell; a collar stays where it was found. */
export interface PressureDocument {
  /** With the wheel in the air, shock fully out. */
  readonly aim: Figure;
  /** Pressures that keep the sag in the wanted band. */
  readonly least: number;
  readonly most: number;
  /** How far the unit's range gets [Pa]. */
  readonly reach: Reach;
  /** What hands set: wheel in the air; with nothing aboard; with the load. Null where the plan stands on the collar instead. */
  readonly set: { readonly fullyOut: number; readonly alone: number | null; readonly laden: number | null };
  /** Nothing else sets this end: the plan stands on this pressure. */
  readonly isPlanned: boolean;
  /** What the aim's ± is made of, greatest first. */
  readonly contributions: readonly Contribution[];
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
