import type { Attitude } from '../attitude/attitude.ts';
import type { AxleLoads, LimitResult } from '../limits/limits.ts';
import type { EndStanding, FrictionBand, Rest, RestAnswer } from '../statics/rest.ts';
import type { Contribution } from '../uncertainty/spread.ts';
import type { AdjusterSetting } from './adjuster.ts';

/** A number with its 90 % half-width; null where the ± is not known. */
export interface Figure {
  readonly value: number;
  readonly plusMinus: number | null;
}

/** A computed plan, SI. Overload comes first. */
export interface Plan {
  /** The machine with nothing aboard, as found. */
  readonly alone: Stand;
  readonly loadCases: readonly LoadCaseResult[];
  readonly rear: EndPlan;
  readonly front: EndPlan;
  /** Both ends with the springs that are planned, at what hands can set. */
  readonly planned: PlannedSetUp;
}

/** How a machine stands with a load or with none. */
export interface Stand {
  readonly answer: RestAnswer;
  readonly attitude: Attitude | null;
  /** Wheel travels [m] with their ±, and between which friction lets it rest; null where there is no rest. */
  readonly travel: { readonly rear: Figure; readonly front: Figure } | null;
  readonly band: FrictionBand | null;
  /** Wheel loads [kg] with the fuel that sag is wanted at. */
  readonly loads: AxleLoads | null;
}

/** One load on the machine as found. */
export interface LoadCaseResult {
  readonly loadCase: string;
  readonly asFound: Stand;
  readonly loadsFullTank: AxleLoads | null;
  readonly limits: readonly LimitResult[];
  /** A limit is exceeded: no collar is planned for this load, less must go aboard. */
  readonly refused: boolean;
}

/** The springs that a person picked, or else those suggested, or else those fitted; each end at its setting for each load. */
export interface PlannedSetUp {
  readonly rear: PlannedSpring;
  readonly front: PlannedSpring;
  readonly loadCases: readonly PlannedLoad[];
}

/** A spring that is planned for an end, and who chose it; null where none is fitted that is known. */
export interface PlannedSpring {
  readonly spring: string | null;
  readonly by: 'choice' | 'suggestion' | 'as found';
}

/** One load with both ends set. An end that is not planned for it stands as found. */
export interface PlannedLoad {
  readonly loadCase: string;
  readonly stand: Stand;
  readonly rear: AdjusterSetting | null;
  readonly front: AdjusterSetting | null;
}

/** Every spring that could be fitted to an end, softest first, and which of them is suggested. */
export interface EndPlan {
  readonly springs: readonly SpringPlan[];
  readonly suggestion: Suggestion;
}

/** Everything about one spring. */
export interface SpringPlan {
  readonly spring: string;
  readonly fitted: boolean;
  /** Rate at the load that is ridden most [N/m]. */
  readonly rate: number;
  readonly cells: readonly PlanCell[];
  readonly reasons: readonly Reason[];
  /** Kilograms on that wheel that one turn of every adjuster of the end answers; null where nothing is turned. */
  readonly kilogramsPerTurn: number | null;
  /** It reaches every load that is ridden, stays clear of coil bind and keeps its preload. */
  readonly fits: boolean;
}

/** One spring with one load. */
export type PlanCell =
  | { readonly kind: 'planned'; readonly loadCase: string; readonly cell: Planned }
  | { readonly kind: 'refused' | 'not wanted'; readonly loadCase: string }
  | {
      readonly kind: 'target outside travel';
      readonly loadCase: string;
      readonly wanted: number;
      readonly travelMax: number;
    }
  | { readonly kind: 'no rest'; readonly loadCase: string; readonly residual: number };

/** What a spring needs for a load, how far its adjuster gets, and what the machine does at what hands can set. */
export interface Planned {
  /** Wanted travels [m] from the extension stop. */
  readonly wanted: { readonly low: number; readonly aim: number; readonly high: number };
  /** Preload that meets the aim [m]; null where the wheel is held up without any spring. */
  readonly preload: Figure | null;
  /** The same with the other end at its own target too; null where it has none. */
  readonly preloadBothAtTarget: number | null;
  /** Adjuster positions [m] that keep the sag in the wanted band: loosest, aim, tightest; null with no adjuster. */
  readonly positions: { readonly loosest: number; readonly aim: Figure; readonly tightest: number } | null;
  readonly reach: Reach;
  /** Where its air can be set: what pressure does it. */
  readonly pressure?: PlannedPressure;
  /** What hands can set, and what the machine does there. */
  readonly setting: AdjusterSetting | null;
  readonly set: AtSetting;
  /** What the aim's ± is made of, greatest first. */
  readonly contributions: readonly Contribution[];
}

/** What a pressure spring needs for a load, absolute, strut fully out [Pa]; the coil with its preload stays as it is. */
export interface PlannedPressure {
  readonly aim: Figure;
  /** Pressures that keep the sag in the wanted band: least and most. */
  readonly least: number;
  readonly most: number;
  /** How far the unit's range gets, in Pa. */
  readonly reach: Reach;
  /** What hands can set. */
  readonly set: number;
  /** Nothing else sets this end: what is planned stands on this pressure. */
  readonly isPlanned: boolean;
  /** What the aim's ± is made of, greatest first. */
  readonly contributions: readonly Contribution[];
}

/** How far an adjuster gets with a load; lengths [m] along it, for a pressure [Pa]. `left` to its tightest; `nearest` step less aim. */
export type Reach =
  | { readonly kind: 'reached'; readonly left: number }
  | { readonly kind: 'at the edge'; readonly short: number; readonly past: 'tightest' | 'loosest' }
  | { readonly kind: 'out of reach'; readonly short: number; readonly past: 'tightest' | 'loosest' }
  | { readonly kind: 'between steps'; readonly nearest: number }
  | { readonly kind: 'no spring wanted' }
  | { readonly kind: 'no adjuster' };

/** The machine with this spring at this setting and load. */
export interface AtSetting {
  readonly preload: number;
  /** Installed spring length, shock fully out [m]: its free length where it is loose; null where that is not known. */
  readonly springLength: number | null;
  readonly turnsFromFound: readonly number[] | null;
  readonly turnsFromZero: number | null;
  readonly rest: Rest | null;
  readonly travel: Figure;
  /** Travels that friction allows [m]. */
  readonly band: { readonly least: number; readonly most: number } | null;
  readonly otherTravel: Figure;
  readonly otherBand: AtSetting['band'];
  readonly attitude: Attitude | null;
  readonly wheelRate: number;
  readonly rideFrequency: number | null;
  readonly frequencyWithoutTyre: number | null;
  /** Wheel travel left to the rubber (null: none known) and to metal [m]. */
  readonly travelToRubber: number | null;
  readonly travelToMetal: number;
  /** Spring stroke left to coil bind at full bump with this preload [m]; null: lengths not known. */
  readonly strokeToCoilBind: number | null;
  readonly preloadAtExtension: number;
  /** The machine alone at this setting: this end's travel and band [m], and where it stands. */
  readonly alone: {
    readonly travel: Figure;
    readonly band: AtSetting['band'];
    readonly standing: EndStanding;
  } | null;
}

/** Why a spring is for or against, as a code with figures (SI); words are made elsewhere. */
export interface Reason {
  readonly code: ReasonCode;
  readonly side: 'for' | 'against' | 'not checked';
  readonly loadCase?: string;
  readonly figures: Readonly<Record<string, number>>;
}

/** What a reason says; its figures are named where it is made (`reasonsOf`). */
export type ReasonCode =
  | 'fitted'
  | 'reaches'
  | 'only at the edge'
  | 'past the tightest'
  | 'past the loosest'
  | 'between steps'
  | 'no spring wanted'
  | 'no adjuster'
  | 'pressure reaches'
  | 'pressure only at the edge'
  | 'pressure past its most'
  | 'pressure past its least'
  | 'target outside travel'
  | 'no rest'
  | 'rests elsewhere'
  | 'clear of coil bind'
  | 'coil bind'
  | 'coil bind not checked'
  | 'keeps preload'
  | 'little preload'
  | 'machine alone tops out'
  | 'rests on rubber'
  | 'rests on metal'
  | 'rubber not checked';

/** Which spring, and why; or what would have to change. */
export type Suggestion =
  | {
      readonly kind: 'spring';
      readonly spring: string;
      /** The next softer spring (or, with none, the next stiffer that fits), and what it fails on. */
      readonly runnerUp: { readonly spring: string; readonly failsOn: Reason | null } | null;
      /** Kilograms on that wheel: less, and the runner-up would do; more, and this one would no longer. */
      readonly flips: readonly Flip[];
    }
  | { readonly kind: 'none'; readonly remedies: readonly Remedy[] }
  | { readonly kind: 'nothing to choose' };

/** A load that would change the suggestion. */
export interface Flip {
  readonly to: 'runner-up' | 'fails';
  readonly loadCase: string;
  readonly kilograms: number;
}

/** What would help where nothing fits, in order of honesty. */
export type Remedy =
  | {
      readonly kind: 'less load';
      readonly loadCase: string;
      readonly spring: string;
      readonly kilograms: number;
    }
  | {
      readonly kind: 'other rate';
      readonly least: number;
      readonly most: number;
      readonly freeLength: number | null;
    }
  | { readonly kind: 'other damper'; readonly moreRange: number; readonly spring: string }
  /** Where a pressure sets the end: a coil beside the air [N/m], and pressures that the unit would have to hold, gauge [Pa]. */
  | { readonly kind: 'other coil'; readonly least: number; readonly most: number }
  | {
      readonly kind: 'other pressures';
      readonly least: number;
      readonly most: number;
      readonly spring: string;
    };
