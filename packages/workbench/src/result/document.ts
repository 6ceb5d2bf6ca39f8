import type { Attitude } from '@sagwright/model/attitude/attitude';
import type { AxleLoads, LimitResult } from '@sagwright/model/limits/limits';
import type {
  Figure,
  PlanCell,
  Planned,
  PlannedSpring,
  Reason,
  Suggestion,
} from '@sagwright/model/plan/answer';
import type { EndStanding, Rest } from '@sagwright/model/statics/rest';
import type { Contribution } from '@sagwright/model/uncertainty/spread';
import type { Adjuster } from '@sagwright/records/schema/adjusters';
import type { Dimension } from '@sagwright/records/units';
import type { ForkDocument } from '../fork/document.ts';
import type { Note } from '../inputs/desk.ts';
import type { Strut } from '../inputs/sides.ts';
import type { LimitListDocument } from '../limits/document.ts';
import type { RubberDocument } from '../rubber/document.ts';
import type { PressureDocument, ShockDocument } from '../shock/document.ts';
import type { FitDocument, RateDocument } from '../springs/document.ts';
import type { StanceDocument } from '../stance/document.ts';
import type { RearMotionDocument } from './rearMotionDocument.ts';

export const planFormat = 'sagwright-plan';
export const planVersion = 1;

/**
 * A plan for programs: SI throughout, signs as in docs/conventions.md, every field explained in docs/plan-json.md. Codes
 * where a person would get a sentence. Fields are only ever added within a version.
 */
export interface PlanDocument {
  readonly format: typeof planFormat;
  readonly version: typeof planVersion;
  readonly job: { readonly name: string; readonly machine: string };
  readonly targetSet: { readonly id: string; readonly name: string; readonly origin: string };
  /** As found, with nothing aboard. */
  readonly alone: StandingDocument;
  readonly loadCases: readonly LoadDocument[];
  readonly rear: EndDocument;
  readonly front: EndDocument;
  readonly rearMotion: RearMotionDocument;
  readonly shock: ShockDocument;
  /** Null where the front is no telescopic fork. */
  readonly fork: ForkDocument | null;
  readonly stance: StanceDocument;
  /** One list of every limit, and the room that is left. */
  readonly limits: LimitListDocument;
  /** Both ends with their springs in view, each at its setting for the load. */
  readonly planned: readonly PlannedLoadDocument[];
  readonly assumptions: readonly AssumptionDocument[];
  readonly notes: readonly Note[];
}

/** How a machine stands, or that it does not. */
export type StandingDocument =
  | {
      readonly kind: 'rest';
      readonly rear: SagDocument;
      readonly front: SagDocument;
      readonly attitude: Attitude | null;
      readonly axleLoads: AxleLoads | null;
    }
  | { readonly kind: 'tips'; readonly over: 'rear' | 'front' }
  | { readonly kind: 'no rest'; readonly residual: number };

/** One wheel at rest. Lengths along the wheel [m]. */
export interface SagDocument {
  /** From the hard extension stop. */
  readonly travel: Figure;
  /** From where the wheel hangs in the air, as a tape shows it. */
  readonly sag: Figure;
  /** Travel as a share of the whole travel, 0 to 1. */
  readonly share: number;
  /** Travels between which friction lets it rest. */
  readonly band: Band | null;
  readonly standing: EndStanding;
}

export interface Band {
  readonly least: number;
  readonly most: number;
}

export interface LoadDocument {
  readonly id: string;
  readonly name: string;
  readonly share: number;
  /** A limit is exceeded, so that nothing is planned for it. */
  readonly refused: boolean;
  readonly asFound: StandingDocument;
  readonly axleLoadsFullTank: AxleLoads | null;
  readonly limits: readonly LimitResult[];
}

/** One load with both ends set; an end that is not planned for it stands as found. */
export interface PlannedLoadDocument {
  readonly loadCase: string;
  readonly standing: StandingDocument;
  /** Against as found with the same load. */
  readonly attitudeChange: AttitudeChange | null;
}

export type AttitudeChange = { readonly [K in keyof Attitude]: number | null };

export interface EndDocument {
  /** Whole wheel travel [m]; null where the machine has no rest. */
  readonly travelMax: number | null;
  readonly adjuster: AdjusterDocument | null;
  /** Null where there is none, or nobody knows of one. */
  readonly rubber: RubberDocument | null;
  /** The spring that speaks for this end, and who says so; null where the job has none. */
  readonly inView: PlannedSpring;
  readonly suggestion: Suggestion;
  readonly springs: readonly SpringDocument[];
}

export interface AdjusterDocument {
  readonly kind: Adjuster['kind'];
  /** From its loosest to its tightest end, at the spring [m]. */
  readonly range: number;
  /** Advance of one turn [m]; null where nothing is turned. */
  readonly lead: number | null;
}

export interface SpringDocument {
  readonly id: string;
  readonly name: string;
  readonly fitted: boolean;
  readonly fits: boolean;
  readonly rate: number;
  readonly rateFrom: RateDocument;
  /** Null for a fork spring. */
  readonly fit: FitDocument | null;
  readonly freeLength: number | null;
  readonly solidLength: number | null;
  /** With the adjuster at its loosest end [m]. */
  readonly preloadAtLoosest: number;
  readonly kilogramsPerTurn: number | null;
  readonly reasons: readonly Reason[];
  readonly cells: readonly CellDocument[];
}

export type CellDocument = Exclude<PlanCell, { readonly kind: 'planned' }> | PlannedDocument;

export interface PlannedDocument
  extends Pick<Planned, 'wanted' | 'preload' | 'preloadBothAtTarget' | 'positions' | 'reach'> {
  readonly kind: 'planned';
  readonly loadCase: string;
  /** Null where no air is set. */
  readonly pressure: PressureDocument | null;
  /** Preloads that keep the sag in the wanted band [m]. */
  readonly preloadInterval: { readonly loosest: number; readonly tightest: number } | null;
  readonly set: SetDocument;
  readonly contributions: readonly Contribution[];
}

/** The machine with the adjuster where hands can set it. */
export interface SetDocument {
  readonly setting: SettingDocument | null;
  readonly preload: number;
  readonly springLength: number | null;
  /** Laden; the machine alone at this setting; and the other end. Null where there is no rest. */
  readonly sag: SagDocument | null;
  readonly free: SagDocument | null;
  readonly other: SagDocument | null;
  /** Travel of the other end against as found with the same load [m]. */
  readonly otherChange: number | null;
  readonly wheelRate: number | null;
  readonly rideRate: number | null;
  readonly frequency: number | null;
  readonly frequencyWithoutTyre: number | null;
  readonly travelToRubber: number | null;
  readonly travelToMetal: number | null;
  readonly strokeToCoilBind: number | null;
  readonly preloadAtExtension: number;
  readonly attitude: Attitude | null;
  /** Against as found with the same load. */
  readonly attitudeChange: AttitudeChange | null;
  readonly otherRests: Rest['otherRests'];
}

/** Where an adjuster stands. */
export interface SettingDocument {
  /** In the terms of the job file. */
  readonly at: SettingAt;
  /** How far it squeezes the spring from its loosest end, and how much further it can [m]. */
  readonly position: number;
  readonly left: number;
  /** To the nearest quarter, tighter positive; null where nothing is turned. */
  readonly turnsFromLoosest: number | null;
  /** For each strut as found; null where that was not read, or nothing is turned. */
  readonly turnsFromFound: readonly { readonly strut: Strut; readonly turns: number }[] | null;
  /** From each other load's setting to this one: turns, or steps where it has steps. */
  readonly fromLoads: readonly {
    readonly loadCase: string;
    readonly turns: number | null;
    readonly steps: number | null;
  }[];
}

export type SettingAt =
  | { readonly reading: number }
  | { readonly turns: number }
  | { readonly step: number }
  | { readonly click: number }
  | { readonly spacer: number };

/** A figure that nobody gave, or that came without its ±. SI. */
export interface AssumptionDocument {
  readonly path: string;
  readonly assumed: 'value' | 'plusMinus';
  readonly dimension: Dimension;
  readonly value: number;
  readonly plusMinus: number;
  readonly why: string | null;
  /** Half-width that it alone gives the adjuster's aim, the greatest of all loads that are ridden [m]. */
  readonly effect: { readonly rear: number | null; readonly front: number | null };
}
