import type { Figure } from '@sagwright/model/plan/answer';
import type { PartName } from '@sagwright/model/rear/hardPoints';
import type { Travel } from '@sagwright/records/schema/machine';

/** How the rear wheel moves its shock, and what the drive does to it. */
export interface RearMotionDocument {
  readonly knownBy: Travel['kind'];
  /** Wheel travel at which heights and places were read [m]; with hard points it follows from them. */
  readonly referenceTravel: number;
  /** What a rocker's link does while the shock is pressed; null where no link is known. */
  readonly link: 'pulls' | 'pushes' | null;
  /** One ratio that was known before rows or hard points, held against them; null where nothing was kept. */
  readonly earlier: EarlierDocument | null;
  /** A table or tape that was known before the hard points, held against them; null where nothing was kept. */
  readonly earlierSurvey: EarlierSurveyDocument | null;
  /** Hard points that were found from lengths; null where no tape was laid to them. */
  readonly tape: PointTapeDocument | null;
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
  /** As it is worked with now. */
  readonly now: Figure;
  /** As it is now, less as it was known; its ± is that of both. */
  readonly difference: Figure;
  /** Whether the difference lies within its ±. */
  readonly verdict: 'agrees' | 'differs';
}

export interface EarlierSurveyDocument {
  /** Wheel travel by the points at which its wheel reading is 0 [m], as it fits best. */
  readonly zero: Figure;
  readonly rows: readonly EarlierRowDocument[];
  /** Id of the row that is furthest off in its own ±; null where all agree. */
  readonly worst: string | null;
}

/** One row, by its id in the job: wheel reading, and the shock's length there, the wheel's ± within its own [m]. */
export interface EarlierRowDocument {
  readonly id: string;
  readonly wheel: number;
  readonly shock: Figure;
  readonly byPoints: Figure;
  /** As read, less by the points; its ± is that of both. */
  readonly difference: Figure;
  readonly verdict: 'agrees' | 'differs';
}

export interface PointTapeDocument {
  readonly points: readonly TapedPartDocument[];
  /** Lengths in their order, then places that were typed with their ±. */
  readonly lengths: readonly TapedLengthDocument[];
  /** Readings more than the points need. */
  readonly spare: number;
  /** Path of the reading that is furthest off in its own ±; null where all agree. */
  readonly worst: string | null;
}

/** A part as found: forward of the rear axle, and above the ground [m]. */
export interface TapedPartDocument {
  readonly part: Exclude<PartName, 'axle'>;
  readonly x: Figure;
  readonly height: Figure;
  /** From where it was looked for. */
  readonly away: number;
}

/** A reading that the points were found from, by the path of its field [m]; heights count from the axle. */
export interface TapedLengthDocument {
  readonly path: string;
  readonly taped: Figure;
  readonly byPoints: number;
  /** Taped less by the points; ± what its own ± leaves of it once the points have followed. */
  readonly misfit: Figure;
  /** Share of a slip in it that would show. */
  readonly checked: number;
  readonly verdict: 'agrees' | 'differs' | 'not checked';
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
  /** How far forward of where it was measured the axle stands [m]; null where no pivot is known. */
  readonly axleForward: number | null;
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
