import type { KeptBy, KeptPart } from '@sagwright/model/attitude/keep';
import type { TwoParts } from '@sagwright/model/attitude/keepTwo';
import type { Figure } from '@sagwright/model/plan/answer';
import type { EndName } from '@sagwright/model/statics/prepared';
import type { RaisedHeight } from '../inputs/massCentre.ts';
import type { StanceFigure, StanceNeed } from './rows.ts';

/** How the machine stands and steers with each load, what would keep its attitude, and what braking and driving do. SI. */
export interface StanceDocument {
  /** Of the machine alone by a wheel that was raised; null where none was. */
  readonly massCentre: RaisedHeight | null;
  /** The machine alone first, then each load in its order; those that rest. */
  readonly loads: readonly StanceLoadDocument[];
}

export interface StanceLoadDocument {
  /** Null: the machine alone. */
  readonly loadCase: string | null;
  readonly figures: readonly StanceFigureDocument[];
  readonly beam: BeamDocument | null;
  /** Nothing where nothing is planned and no other load to compare with. */
  readonly keep: readonly KeepDocument[];
  readonly keepTwo: readonly KeepTwoDocument[];
  readonly steady: readonly SteadyDocument[];
}

/** One figure as found and as planned, with the change and its own ±: what both share cancels. */
export interface StanceFigureDocument {
  readonly figure: StanceFigure;
  /** Id of the point it is of; null where it is of the whole machine. */
  readonly point: string | null;
  readonly needs: StanceNeed | null;
  readonly asFound: Figure | null;
  /** Null for the machine alone, and where nothing is planned. */
  readonly planned: Figure | null;
  readonly change: Figure | null;
  /** What a rider may feel of the change; null where it is within its ±. Common practice, no source. */
  readonly felt: 'more' | 'less' | null;
}

/** The dipped beam against a rule, as information: in the set-up that is planned, else as found. */
export interface BeamDocument {
  readonly rule: string;
  readonly where: string;
  readonly source: string;
  readonly distance: number;
  /** What the rule asks of the drop at that distance [m]; null while the height of the lamp is not known. */
  readonly least: number | null;
  readonly most: number | null;
  readonly drop: Figure;
  readonly verdict: 'within' | 'too high' | 'too low' | 'within its ±' | 'not checked';
}

/** What shock length or clamp height would bring a part of the planned attitude back to what it is compared with. */
export interface KeepDocument {
  readonly part: KeptPart;
  readonly by: KeptBy;
  /** The load as found whose attitude is wanted. */
  readonly like: string;
  /** Against what is planned now [m]; null where no change does it, or the part is not known. */
  readonly change: Figure | null;
  /** Against as found: what the job's choice would hold [m]. */
  readonly choice: number | null;
  /** What its adjuster leaves either way, against as found [m]; null: figure needed. */
  readonly range: { readonly least: number | null; readonly most: number | null };
  readonly verdict: 'within' | 'outside' | 'within its ±' | 'not checked' | 'no change does' | 'not known';
}

/** Shock length and clamp height that together bring two parts of the planned attitude back. */
export interface KeepTwoDocument {
  readonly parts: TwoParts;
  readonly like: string;
  readonly shockLength: KeptChange;
  readonly clampHeight: KeptChange;
}

export type KeptChange = Pick<KeepDocument, 'change' | 'choice' | 'range' | 'verdict'>;

/** Steady braking or driving with a load, in the set-up that is planned, else as found. */
export type SteadyDocument =
  | { readonly action: 'braking' | 'driving'; readonly kind: 'needs'; readonly needs: SteadyNeed }
  | { readonly action: 'braking' | 'driving'; readonly kind: 'not found' }
  | (SteadyFigures & { readonly kind: 'lifts'; readonly wheel: EndName })
  | (SteadyFigures & {
      readonly kind: 'stands';
      readonly rear: SteadyEnd;
      readonly front: SteadyEnd;
      /** Nose-down positive, against standing [rad]. */
      readonly pitch: Figure;
    });

export type SteadyNeed = 'deceleration' | 'thrust' | 'drive' | 'pivot';

interface SteadyFigures {
  readonly action: 'braking' | 'driving';
  /** Along the ground, forward positive [m/s²]. */
  readonly gain: number;
  /** From which deceleration or acceleration on a wheel lifts [m/s²]; null where none does up to 15. */
  readonly liftsFrom: number | null;
}

export interface SteadyEnd {
  /** Of the wheel [m]; its change against standing; what is left to metal. */
  readonly travel: Figure;
  readonly change: Figure;
  readonly left: Figure;
  /** On the wheel [kg]. */
  readonly load: Figure;
  /** Share of its load that this tyre must hold along the road. */
  readonly grip: number;
}
