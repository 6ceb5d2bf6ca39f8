import type { LimitResult } from '@sagwright/model/limits/limits';
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

/** Whether a rear spring fits its shock. Lengths [m]. */
export interface FitDocument {
  /** Its inner diameter less what it goes over. */
  readonly around: RoomLeft;
  /** Height of what it stands on; null where it stands on none. */
  readonly spacer: Figure | null;
  readonly loosest: FittedAt;
  readonly tightest: FittedAt;
  /**
   * At its loosest, shock fully out: `held` (a compressor is needed to fit it), `loose` (it goes in by hand, and hangs loose), or too near to
   * tell.
   */
  readonly atLoosest: 'held' | 'loose' | 'within its ±';
  /** Stroke left before its coils touch at full bump with the adjuster at its tightest, less what is kept in hand. */
  readonly coilBind: RoomLeft;
}

/** The spring with its adjuster at one end, shock fully out. */
export interface FittedAt {
  /** How much shorter than free; below 0 it is loose by so much. */
  readonly preload: Figure;
  /** Its own length; null where its free length is not known. */
  readonly length: Figure | null;
}

export interface RoomLeft {
  /** Below 0: too little by so much; null where a figure is needed. */
  readonly room: Figure | null;
  readonly verdict: LimitResult['verdict'];
  /** Fields of the job that must be read first. */
  readonly needs: readonly string[];
}
