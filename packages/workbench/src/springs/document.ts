import type { Figure } from '@sagwright/model/plan/answer';

/** Where a spring's rate comes from, and how sure it is. SI. */
export interface RateDocument {
  /** `none`: no coil at all. */
  readonly by: 'marked' | 'two marked' | 'tested' | 'coil' | 'winding' | 'none';
  /** Of `rate`, at the load that is ridden most; null without a coil. */
  readonly plusMinus: number | null;
  /** Of a wound spring: how its sections close, one after another; else empty. */
  readonly stages: readonly StageDocument[];
  /** Where a measured coil is marked too; else null. */
  readonly marked: MarkedDocument | null;
}

/** A stretch of one rate; it ends where a section closes, the last where all coils touch. */
export interface StageDocument {
  readonly rate: Figure;
  /** Where it ends: compression from free [m], and the spring's force there [N]. */
  readonly to: Figure;
  readonly force: Figure;
}

/** What is marked on a spring, against what its coil makes it. */
export interface MarkedDocument {
  readonly marked: Figure;
  readonly coil: Figure;
  /** The coil's less the marked one; its ± is of both. */
  readonly difference: Figure;
  readonly verdict: 'agrees' | 'differs';
  /** The one with the smaller ±; neither where they differ: it has to be tested. */
  readonly trust: 'marked' | 'coil' | 'neither';
  /** The one that the sum takes. */
  readonly counts: 'marked' | 'coil';
}
