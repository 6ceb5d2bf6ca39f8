import type { Figure } from '@sagwright/model/plan/answer';
import type { Leg } from '@sagwright/records/schema/fork';
import type { Strut } from '../inputs/sides.ts';

/** What works in the fork, as found: along its stroke, and what more or less oil would change. SI; forces along the tubes, both legs together. */
export interface ForkDocument {
  /** The legs that hold a spring. */
  readonly legs: readonly LegDocument[];
  /** One for both legs where they are alike; none where there is no air. */
  readonly air: readonly ForkAirDocument[];
  /** What `airQuick` is about; null where there is no air, or no rest to be about. */
  readonly quick: QuickDocument | null;
  /** By how much the air gap is made smaller and larger in `along` [m]. */
  readonly oilStep: number;
  /** Even steps from fully out to full bump. */
  readonly along: readonly ForkStepDocument[];
}

export interface LegDocument {
  readonly strut: Strut;
  /** At the hard stop [m]. */
  readonly preload: number;
  /** Null where no top-out spring is known. */
  readonly topOut: GrowthDocument | null;
}

/** How a leg by itself rests on its top-out spring [m]: both are strokes from the hard stop. */
export interface GrowthDocument {
  /** With no main spring in it and the cap off: the top-out spring's own length. */
  readonly relaxed: number;
  /** With its spring in it and closed: the leg has grown by the difference. */
  readonly pressed: number;
  /** How much shorter than free the spring then is. */
  readonly preload: number;
}

/** Air that has no time to lose its heat, about the rest of the load that is ridden most, as found. */
export interface QuickDocument {
  readonly loadCase: string;
  /** Stroke of that rest [m]. */
  readonly stroke: number;
  readonly exponent: number;
}

/** The air of a leg, fully in. */
export interface ForkAirDocument {
  readonly leg: Leg;
  /** Gap with neither spring nor spacer in the leg [m]. */
  readonly bareGap: number;
  /** Air that is left with all in it [m³]. */
  readonly left: number;
}

export interface ForkStepDocument {
  readonly stroke: number;
  /** Of the wheel, along the body's vertical [m]. */
  readonly travel: number;
  /** [N] */
  readonly springs: Figure;
  readonly air: Figure;
  /** Of a quick stroke; null without `quick`. */
  readonly airQuick: Figure | null;
  readonly rubber: number;
  /** Pulls the legs together: counts minus in the whole. */
  readonly topOut: number;
  readonly whole: Figure;
  /** Force of the air with the gap smaller and larger by the oil step; null where no air is left. */
  readonly airMoreOil: number | null;
  readonly airLessOil: number | null;
}
