import type { LadderAxis } from './axis.ts';

/**
 * One end's ladder. All lengths are millimetres of wheel travel from the hard extension stop, compression positive.
 * Words come ready for the eye and the ear: only they know how many digits the ± supports.
 */
export interface LadderInput {
  readonly end: 'rear' | 'front';
  /** What the ladder measures, over it: "Rear wheel travel, mm". */
  readonly title: string;
  /** The unit of the numbers at the left: `axisInMm` or `axisInInches`. Everything else is placed in millimetres. */
  readonly axis: LadderAxis;
  readonly travelMaxMm: number;
  /** Total travel in words, as in "59 of 86". */
  readonly travelMaxWords: string;
  readonly hangsAtMm: number;
  /** "hangs 4". */
  readonly hangsWords: string;
  /** Where the bump rubber begins; null where nobody has read it. */
  readonly rubberFromMm: number | null;
  /** The machine alone first, then the loads in the order of their making. */
  readonly lanes: readonly LadderLane[];
  /** Lane whose ± is written and whose column is tinted. */
  readonly chosenId: string;
  /** Which load (0 the first after the machine alone) stands first when there are more than fit. */
  readonly firstLoad: number;
}

export interface LadderLane {
  readonly id: string;
  /** Null for the machine alone, which has a sign of its own. */
  readonly letter: string | null;
  /** As it is spoken: "Machine alone", "Load C". */
  readonly name: string;
  /** Null while it cannot be worked out; `note` then says what is needed. */
  readonly rest: LadderRest | null;
  readonly measured: { readonly atMm: number; readonly words: string } | null;
  readonly wanted: { readonly fromMm: number; readonly toMm: number; readonly words: string } | null;
  /** What else is to be said: "on the rubber", "fully out", "figure needed: spring rate". */
  readonly note: string | null;
  /** The band of a moment ago, while it is still shown. */
  readonly ghost: { readonly fromMm: number; readonly toMm: number } | null;
}

/** Where a wheel rests: a band, since friction holds it anywhere between after a lift and after a push. */
export interface LadderRest {
  readonly fromMm: number;
  readonly toMm: number;
  /** Half-width of the doubt, beyond either edge of the band. */
  readonly plusMinusMm: number;
  readonly words: string;
  /** "2", beside "59"; empty where the doubt is not known. */
  readonly plusMinusWords: string;
}
