import type { Places, TapeAnswer } from '@sagwright/model/rear/pointsFromTape';
import type { TapedSI } from '@sagwright/model/rear/tape';
import type { PointLength } from '@sagwright/records/schema/pointTape';
import type { Quantity } from '@sagwright/records/schema/quantity';

/** The hard points of a job by the tape that was laid to them, found once; null where no tape was. */
export interface TapedPlaces {
  readonly rows: readonly TapedRow[];
  /** Where each part was looked for; a place with its ± is a row too. */
  readonly near: Places;
  /** Of the tyre, as typed: the axle's height [m]. */
  readonly radius: number;
  readonly answer: TapeAnswer;
}

/** One reading that the points are found from. */
export interface TapedRow {
  readonly path: string;
  readonly typed: Quantity<'length'>;
  /** Null for a place that was typed with its ±. */
  readonly length: PointLength | null;
  readonly taped: TapedSI;
  /** How much further out one end stands, where that is known. */
  readonly leans: { readonly path: string; readonly typed: Quantity<'length'> } | null;
}
