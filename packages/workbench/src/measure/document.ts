import type { Reach } from '@sagwright/model/plan/answer';
import type { Dimension } from '@sagwright/records/units';

export const measuredFormat = 'sagwright-measured';
export const measuredVersion = 1;

/** A figure with its 90 % half-width, SI. */
export interface Doubted {
  readonly value: number;
  readonly plusMinus: number;
}

/** What was read, held against the sum, as a document for programs: SI, plain data, explained in docs/measured-json.md. */
export interface MeasuredDocument {
  readonly format: typeof measuredFormat;
  readonly version: typeof measuredVersion;
  readonly job: { readonly name: string; readonly machine: string };
  readonly sags: readonly SagRead[];
  /** Every figure that was read, in the order of the readings. */
  readonly figures: readonly FigureRead[];
  /** Null where no most probable machine was found: `trouble` says why. */
  readonly found: FoundDocument | null;
  readonly trouble: Trouble | null;
}

/** `nothing read`: the job has no readings; `not told`: marks hang on nothing that was read; `no rest`: it does not stand as thought. */
export type Trouble = 'nothing read' | 'not told' | 'no rest' | 'not found';

/** One sag reading, worked out. */
export interface SagRead {
  readonly id: string;
  readonly loadCase: string | null;
  readonly end: 'rear' | 'front';
  readonly side: 'left' | 'right' | null;
  /** At a telescopic fork a tape shows the stroke. */
  readonly along: 'wheel' | 'stroke';
  /** Hanging less the mean of both settled readings; null where one of the three is missing for these marks. */
  readonly sag: Doubted | null;
  /** What the sum says that sag is, before it was read. */
  readonly expected: Doubted | null;
  /** Whether both meet within their ± together; null where one is missing. */
  readonly verdict: 'agrees' | 'apart' | null;
  /** After a lift less after a push; null where one of them is missing. */
  readonly band: Doubted | null;
  readonly faults: readonly FaultCode[];
}

export type FaultCode =
  | 'lift below push'
  | 'hangs shorter'
  | 'band too wide'
  | 'beyond travel'
  | 'unit of another'
  | 'sides apart'
  | 'settled once'
  | 'never hanging';

/** One figure read. */
export interface FigureRead {
  /** 'first.hanging', 'second.rear': id of the reading, and what of it. */
  readonly id: string;
  readonly dimension: 'length' | 'mass';
  readonly read: Doubted;
  /** As the most probable machine would read; null where none was found. */
  readonly found: number | null;
  /** read less found, in standard deviations of the reading. */
  readonly miss: number | null;
}

export interface FoundDocument {
  /** Sum of squares that is left, in deviations, and what it comes to on average if all is as stated. */
  readonly misfit: number;
  readonly freedom: number;
  /** More is left than chance leaves once in a thousand, though no single suspect need stand out. */
  readonly beyondChance: boolean;
  /** What is most likely off, if anything is; null where nothing surprises more than chance does. */
  readonly suspect: SuspectDocument | null;
  /** Inputs that readings moved or narrowed, those first that moved furthest in their own ±. */
  readonly inputs: readonly InputFound[];
  /** Where the collar answers each load with the fitted spring: as the job stands, and as readings have it. */
  readonly collars: readonly CollarFound[];
  readonly springs: readonly SpringFound[];
}

/** A figure of `figures`, or the path of an input. */
export interface Suspected {
  readonly kind: 'figure' | 'input';
  readonly id: string;
}

/** One thing that would explain what does not fit. */
export interface SuspectDocument extends Suspected {
  /** Null where the input is no single figure of the job. */
  readonly dimension: Dimension | null;
  /** By how much it would be off, read or stated less true. */
  readonly off: Doubted;
  /** `off` in its own standard deviations: beyond 3.3 by chance once in a thousand. */
  readonly score: number;
  /** What these readings can hardly tell from it. */
  readonly alike: readonly Suspected[];
}

export interface InputFound {
  readonly path: string;
  readonly dimension: Dimension;
  readonly before: Doubted;
  readonly after: Doubted;
  /** Change in standard deviations of what was known before. */
  readonly moved: number;
}

export interface CollarFound {
  readonly end: 'rear' | 'front';
  readonly loadCase: string;
  readonly spring: string;
  /** Whether the length is the one that is read at the adjuster (a collar between its faces, a spacer), or how far it stands from its loosest end. */
  readonly along: 'reading' | 'from loosest';
  readonly before: Doubted;
  readonly after: Doubted;
  /** Whether the adjuster gets there, as readings have it. */
  readonly reach: Reach['kind'];
}

/** Which spring is suggested at an end; null where none fits, or there is none to choose. */
export interface SpringFound {
  readonly end: 'rear' | 'front';
  readonly before: string | null;
  readonly after: string | null;
}
