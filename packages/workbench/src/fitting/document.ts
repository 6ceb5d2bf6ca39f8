import type { Forgotten } from '@sagwright/model/fitting/workOrder';
import type { Figure } from '@sagwright/model/plan/answer';
import type { Fastening, Gripped } from '@sagwright/records/schema/fastenings';
import type { Mount, Tool } from '@sagwright/records/schema/fitting';
import type { Unit } from '@sagwright/records/units';

export const workListFormat = 'sagwright-worklist';
export const workListVersion = 1;

/** The work list of a job as a document for programs: SI, plain data, explained in docs/worklist-json.md. */
export interface WorkListDocument {
  readonly format: typeof workListFormat;
  readonly version: typeof workListVersion;
  readonly job: { readonly name: string; readonly machine: string };
  /** Null where nothing is being fitted. */
  readonly rear: RearWorkDocument | null;
}

/** New shocks at the rear: what to do, in which order, and what goes on what. */
export interface RearWorkDocument {
  /** As the job calls what is fitted; null where it has no name. */
  readonly unit: string | null;
  /** Every step, in a shortest safe order from the beginning. */
  readonly steps: readonly StepDocument[];
  /** What is left to be done now, as the machine stands for it. */
  readonly left: readonly PhaseDocument[];
  /** How often the machine is made to stand another way in it. */
  readonly changes: number;
  /** To be undone first, in this order. */
  readonly undo: readonly string[];
  readonly done: readonly DoneDocument[];
  /** Can no longer be done as it was meant. */
  readonly lost: readonly { readonly step: string; readonly by: string }[];
  /** Noted as done in the job, but no steps of this work. */
  readonly unknown: readonly string[];
  readonly mounts: readonly MountDocument[];
  /** How far the mounts lie beside each other; null where not known. */
  readonly offset: Judged | null;
  /** Thread that the length adjuster has left where the chosen length has it stand; null where no length is chosen or nobody read it. */
  readonly threadLeft: Judged | null;
  readonly bracket: BracketDocument | null;
  /** Figures of what is fitted that were typed without a ±, and the usual one that stands in. */
  readonly usualWidths: readonly { readonly path: string; readonly plusMinus: number }[];
  readonly cautions: readonly CautionCode[];
}

/** How the machine stands while a step is done. */
export type Stance = 'wheels' | 'air';

export type Side = 'left' | 'right';

export type MountEnd = 'top' | 'bottom';

export interface StepDocument {
  /** Unchanging: 'found', 'tighten-top-left'. */
  readonly id: string;
  readonly kind: StepKind;
  readonly side: Side | null;
  readonly mount: MountEnd | null;
  /** The part in the way, as the job calls it; null for all other steps. */
  readonly of: string | null;
  /** Null: it does not matter. */
  readonly stance: Stance | null;
  readonly after: readonly { readonly step: string; readonly why: WhyCode; readonly forgotten: Forgotten }[];
  readonly tools: readonly ToolDocument[];
  readonly torque: TorqueDocument | null;
  /** What does not fit and keeps it from being done; empty where nothing that was measured does. */
  readonly stops: readonly FittedPart[];
}

/** What is held against what it must keep: an end on its bolt, both mounts, the length adjuster's thread. */
export type FittedPart = MountEnd | 'offset' | 'thread';

export type StepKind =
  | 'found'
  | 'uncover'
  | 'loosen'
  | 'compare'
  | 'spring'
  | 'slacken'
  | 'turn'
  | 'lock'
  | 'mark'
  | 'sleeve'
  | 'carry'
  | 'out'
  | 'clean'
  | 'in'
  | 'nuts'
  | 'float'
  | 'reservoir'
  | 'bracket'
  | 'flush'
  | 'set'
  | 'tighten'
  | 'witness'
  | 'settle'
  | 'sweep'
  | 'clamp'
  | 'cover'
  | 'height'
  | 'look'
  | 'ridden';

/** Why one step comes before another. */
export type WhyCode =
  | 'cannot be read later'
  | 'in the way'
  | 'never off'
  | 'held while it stands'
  | 'known to fit first'
  | 'locked until slack'
  | 'where it shall stand'
  | 'seats only when tight'
  | 'out of reach once in'
  | 'arm would drop'
  | 'one holds the arm'
  | 'place is taken'
  | 'not in yet'
  | 'dirt and damage'
  | 'bolts are in it'
  | 'all its thread'
  | 'felt while slack'
  | 'hose hangs on it'
  | 'hose too stiff'
  | 'rubber twisted'
  | 'bears on it'
  | 'second look at it'
  | 'seen through travel'
  | 'lies on it'
  | 'hidden afterwards'
  | 'stands anew'
  | 'whole machine'
  | 'ridden first';

export interface ToolDocument {
  readonly kind: Tool['kind'];
  readonly on: Gripped;
  /** Across flats, as typed; null where nobody said. */
  readonly size: AsTyped | null;
}

/** A figure that hands set on a tool: in the unit that stands on it, and in SI beside. */
export interface AsTyped {
  readonly value: number;
  readonly unit: Unit;
  readonly si: number;
}

/** A torque as read from the manual, never one of ours. */
export interface TorqueDocument {
  readonly part: Fastening;
  /** As it stands in the manual; null where nobody read it. */
  readonly value: AsTyped | null;
  readonly page: string | null;
  readonly readBy: string | null;
  readonly checkedBy: string | null;
  readonly state: TorqueState;
}

/** Whether one may work by it, and who has read it. Without figure, page or reader one may not. */
export type TorqueState =
  | 'no figure'
  | 'no page'
  | 'no reader'
  | 'read once'
  | 'read twice by one'
  | 'read by two';

/** Stance null: none of its steps asks how the machine stands. */
export interface PhaseDocument {
  readonly stance: Stance | null;
  readonly steps: readonly string[];
}

export interface DoneDocument {
  readonly step: string;
  readonly by: string | null;
  readonly when: string | null;
  readonly standing: 'stands' | 'undo' | 'again';
  readonly because: readonly { readonly step: string; readonly why: WhyCode }[];
}

/** A figure against what it must keep. 'close': within its ±. */
export interface Judged {
  readonly found: Figure;
  readonly least: number | null;
  readonly most: number | null;
  readonly verdict: 'fits' | 'close' | 'too little' | 'too much';
}

export interface MountDocument {
  readonly mount: MountEnd;
  readonly bush: NonNullable<Mount['bush']> | null;
  /** The sleeve that it needs; null where it needs none or that is not known. */
  readonly needs: {
    readonly inner: Figure;
    readonly outer: Figure;
    readonly wall: Figure;
    readonly longerThan: number | null;
    readonly atMost: number | null;
  } | null;
  readonly checks: readonly MountCheck[];
  /** What must be measured before the rest can be checked. */
  readonly needed: readonly MountNeed[];
}

/** Play across the bolt and of the sleeve in the eye, side float, room between the faces, thread beyond what must be engaged. */
export interface MountCheck extends Judged {
  readonly of: 'bolt play' | 'sleeve play' | 'side float' | 'face room' | 'thread';
}

export type MountNeed = 'bore' | 'bolt' | 'sleeve' | 'eyeWidth' | 'clampWidth' | 'thread';

/** How many spacers bring the bracket out, and how far they do. */
export interface BracketDocument {
  readonly offset: number;
  readonly spacers: number | null;
  readonly standsOff: number | null;
}

export type CautionCode = 'manual' | 'two people' | 'gas' | 'spring' | 'electronic' | 'levelling';
