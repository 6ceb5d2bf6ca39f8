import type { Figure } from '@sagwright/model/plan/answer';
import type { Travel } from '@sagwright/records/schema/machine';

/** How the rear wheel moves its shock, and what the drive does to it. */
export interface RearMotionDocument {
  readonly knownBy: Travel['kind'];
  /** Wheel travel at which heights and places were read [m]; with hard points it follows from them. */
  readonly referenceTravel: number;
  /** What a rocker's link does while the shock is pressed; null where no link is known. */
  readonly link: 'pulls' | 'pushes' | null;
  /** What was known before the hard points, held against them; null where nothing was kept. */
  readonly earlier: EarlierDocument | null;
  /** Even steps from fully out to full bump. */
  readonly along: readonly TravelDocument[];
  /** Where front sprocket and axle are furthest apart; null with a shaft, and where pivot or drive are not known. */
  readonly tightest: { readonly travel: number; readonly centreDistance: number } | null;
  /** The machine alone as found, then each load with both ends as planned; those that rest. */
  readonly rests: readonly RearRestDocument[];
}

/** Wheel travel over the shock's stroke, of the whole travel. */
export interface EarlierDocument {
  /** As it was known before. */
  readonly leverage: Figure;
  readonly byPoints: Figure;
  /** By the points, less as it was known; its ± is that of both. */
  readonly difference: Figure;
  /** Whether the difference lies within its ±. */
  readonly verdict: 'agrees' | 'differs';
}

/** The rear at one wheel travel [m], body level. */
export interface TravelDocument {
  readonly travel: number;
  readonly stroke: number;
  readonly motionRatio: Figure;
  readonly leverage: Figure;
  /** From pivot down to the axle, against the body's level [rad]; null where no pivot is known. */
  readonly armAngle: Figure | null;
  readonly centreDistance: number | null;
}

/** The rear where a load rests. */
export interface RearRestDocument {
  /** Null: the machine alone, as found. */
  readonly loadCase: string | null;
  readonly travel: number;
  readonly motionRatio: Figure;
  readonly leverage: Figure;
  readonly armAngle: Figure | null;
  /** Against level ground [rad]; null where drive or pivot are not known. */
  readonly squatAngle: Figure | null;
  /** Above 1 thrust presses the rear down; null also where the squat line is level. */
  readonly squatRatio: Figure | null;
}
