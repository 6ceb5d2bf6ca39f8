import type { LimitsSI, PlaceLoad } from '../limits/limits.ts';
import type { FirstMoments } from '../masses/pointMass.ts';
import type { SpringSI } from '../springs/spring.ts';
import type { MachineSI } from '../statics/machine.ts';
import type { UncertainInput } from '../uncertainty/inputs.ts';
import type { AdjusterSI } from './adjuster.ts';
import type { AdjusterDoubt, SettingDoubt } from './settingDoubt.ts';
import type { WantedSI } from './wanted.ts';

/** What a plan is asked: a machine as found, loads, springs, adjusters, limits. All SI, plain data. */
export interface PlanQuestion {
  /** As found: its springs, preloads and body; what the load adds is 0. */
  readonly machine: MachineSI;
  /** What is uncertain about it, through the weighing already (`throughWeighing`). */
  readonly inputs: readonly UncertainInput[];
  /** The same on another shock length, clamp height or tyres that a person chose; left out: as found. */
  readonly chosen?: { readonly machine: MachineSI; readonly inputs: readonly UncertainInput[] };
  readonly loadCases: readonly LoadCaseSI[];
  readonly limits: LimitsSI;
  readonly rear: EndQuestion;
  readonly front: EndQuestion;
  /** Springs that a person picked; an end without one takes what is suggested. */
  readonly choice?: { readonly rear?: string; readonly front?: string };
}

/** The question with the machine as it shall stand: what is planned is worked out on it, what was found on the other. */
export function asChosen(question: PlanQuestion): PlanQuestion {
  const { chosen } = question;
  return chosen === undefined ? question : { ...question, ...chosen };
}

/** One load with its share of the riding (0 to 1; 0 = looked at, but it does not choose the spring). */
export interface LoadCaseSI {
  readonly id: string;
  readonly share: number;
  /** With the fuel that the sag is wanted at, and with the tank full (limits). */
  readonly load: FirstMoments;
  readonly loadFullTank: FirstMoments;
  /** Its own uncertain inputs, for either fuel; they move 'load.mass', 'load.momentX', 'load.momentHeight'. */
  readonly inputs: readonly UncertainInput[];
  readonly inputsFullTank: readonly UncertainInput[];
  readonly wanted: { readonly rear: WantedSI | null; readonly front: WantedSI | null };
  readonly places: readonly PlaceLoad[];
}

/** What can be changed at one end. */
export interface EndQuestion {
  /** Null where preload cannot be set. */
  readonly adjuster: AdjusterSI | null;
  /** What is uncertain about where it stands when it is set by counting; left out where it is read between two faces. */
  readonly doubt?: AdjusterDoubt;
  readonly choices: readonly SpringChoiceSI[];
  /** Positions of the adjusters as found, one for each strut [m]; null where nobody has read them. */
  readonly found: readonly number[] | null;
  /** What the air of each strut can be set to; left out where it has none that is set. */
  readonly pressure?: PressureRangeSI;
  /** Preload that must be left at full extension [m], and room that must be left before the coils touch [m]. */
  readonly keepPreload: number;
  readonly keepFromCoilBind: number;
}

/** Pressures of a pressure spring, absolute, strut fully out [Pa]; hands set it to `step`. */
export interface PressureRangeSI {
  readonly least: number;
  readonly most: number;
  readonly step: number;
  /** What the gauge shows when it is set [Pa], and what it may take with it [share of what it shows]; null: it takes nothing. */
  readonly reading: SettingDoubt;
  readonly loss: SettingDoubt | null;
}

/** A spring that could be fitted; the same one on every strut of the end. */
export interface SpringChoiceSI {
  readonly id: string;
  readonly fitted: boolean;
  readonly spring: SpringSI;
  /** Preload with the adjuster at its position 0 [m]; negative where the spring is loose there. */
  readonly preloadAtZero: number;
  readonly freeLength: number | null;
  readonly solidLength: number | null;
  /** Its own uncertain inputs; they move '<end>.struts.<i>.spring.…' and '<end>.struts.<i>.preload'. */
  readonly inputs: readonly UncertainInput[];
}
