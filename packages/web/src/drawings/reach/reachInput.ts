/**
 * One spring of Choose: where its adjuster must stand for each load, and how far that goes. All lengths are millimetres
 * along the preload, from wherever the caller counts them; the words beside each bar come ready.
 */
export interface ReachInput {
  /** The spring in words, for the table and the ear: "30.6 newtons per millimetre, shelf C3". */
  readonly spring: string;
  /** What every row of the page shows, so that a millimetre is as long in each: from `reachDomain`. */
  readonly domain: ReachSpan;
  /** What the adjuster reaches. */
  readonly collar: ReachSpan;
  /** What a lane's words count: "preload", "air". */
  readonly counts: string;
  /** The same in words: "collar, mm: 5.0 to 30.5". */
  readonly reaches: string;
  /** Where alone the adjuster can stand, as a cam's steps; empty where it stands anywhere. */
  readonly stepsMm: readonly number[];
  readonly lanes: readonly ReachLane[];
}

export interface ReachSpan {
  readonly fromMm: number;
  readonly toMm: number;
}

/** Whole inside the adjuster's reach; partly; all of it past one end; or inside, with no step of it in the interval. */
export type ReachVerdict = 'in reach' | 'only at the edge' | 'past the end' | 'between steps';

export type ReachLane = PlannedLane | UnplannedLane;

export interface PlannedLane {
  readonly id: string;
  readonly letter: string;
  /** As it is spoken: "Load C". */
  readonly name: string;
  readonly kind: 'planned';
  readonly verdict: ReachVerdict;
  /** The adjuster positions that keep this load's sag in its wanted band. */
  readonly fromMm: number;
  readonly toMm: number;
  /** Half-width of the doubt of either end. */
  readonly fromPlusMinusMm: number;
  readonly toPlusMinusMm: number;
  /** Beside the bar: "24.6", "past by 5.6", "only at the edge". */
  readonly label: string;
  /** The preload of the interval and its doubt in words, for the table and the ear: "19.2 to 22.6 mm", "2 mm". */
  readonly words: string;
  readonly plusMinusWords: string;
}

/** A load that this spring was not planned for, or that was refused; `label` is the reason alone: "9 kg over the plate". */
export interface UnplannedLane {
  readonly id: string;
  readonly letter: string;
  readonly name: string;
  readonly kind: 'refused' | 'not planned';
  readonly label: string;
}

/** The stretch of preload that shows all of these rows, in whole multiples of 5 mm. */
export function reachDomain(rows: readonly Omit<ReachInput, 'domain'>[]): ReachSpan {
  const ends = rows.flatMap((row) => [
    row.collar.fromMm,
    row.collar.toMm,
    ...row.lanes.flatMap((lane) =>
      lane.kind === 'planned' ? [lane.fromMm - lane.fromPlusMinusMm, lane.toMm + lane.toPlusMinusMm] : [],
    ),
  ]);
  if (ends.length === 0) return { fromMm: 0, toMm: 5 };
  const fromMm = 5 * Math.floor(Math.min(...ends) / 5);
  const toMm = 5 * Math.ceil(Math.max(...ends) / 5);
  return { fromMm, toMm: Math.max(toMm, fromMm + 5) };
}
