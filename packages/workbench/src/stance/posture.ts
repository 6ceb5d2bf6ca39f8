import type { Figure } from '@sagwright/model/plan/answer';
import { PITCH } from '@sagwright/model/statics/gradient';
import type { JobPlan } from '../path.ts';
import { doubtAt, type Slopes, type Standing, slopesOf } from '../why/standing.ts';
import { bendOf } from './bend.ts';
import { OWN_STEP, type OwnFigures, ownSlope } from './own.ts';
import type { ReadStance, StanceRow } from './rows.ts';

/** The figures of one stand, row by row, with how each moves with every input. */
export interface Posture {
  readonly values: readonly (number | null)[];
  readonly slopes: Slopes;
}

/** Slopes that are gathered: by input, one for each row. */
type Gathered = Map<string, number[]>;

/** Reads every row at a stand. */
export function postureAt(
  planned: JobPlan,
  rows: readonly StanceRow[],
  standing: Standing,
  mine: OwnFigures,
): Posture {
  const { prepared, state } = standing;
  const { own } = mine;
  const values = rows.map((row) => upright(row)?.(prepared, state, own) ?? null);
  const slopes = throughRest(rows, standing, mine);
  addOwn(planned, rows, standing, mine, slopes);
  addBeam(rows, standing, mine, slopes);
  rows.forEach((row, place) => {
    if (row.figure === 'lean-in-bend') values[place] = addBend(planned, row, place, standing, mine, slopes);
  });
  return { values, slopes };
}

/** A row's figure with its ±; null where it is not known. */
export function figureAt(posture: Posture | null, place: number): Figure | null {
  const value = posture?.values[place] ?? null;
  return value === null ? null : { value, plusMinus: doubtAt(place, posture!.slopes) };
}

/** How a row's figure changed between two stands, with the ± of the change: what both share cancels. */
export function changeAt(now: Posture | null, before: Posture | null, place: number): Figure | null {
  const [value, was] = [now?.values[place] ?? null, before?.values[place] ?? null];
  if (value === null || was === null) return null;
  return { value: value - was, plusMinus: doubtAt(place, now!.slopes, before!.slopes) };
}

/** How a row is read from the stand itself; a lean in a bend has another. */
function upright({ figure, read }: StanceRow): ReadStance | null {
  return figure === 'lean-in-bend' ? null : read;
}

function throughRest(rows: readonly StanceRow[], standing: Standing, { own }: OwnFigures): Gathered {
  const slopes = slopesOf(
    standing,
    (prepared, beside, out) => {
      for (let i = 0; i < rows.length; i += 1) out[i] = upright(rows[i]!)?.(prepared, beside, own) ?? 0;
    },
    rows.length,
  );
  return new Map([...slopes].map(([name, each]) => [name, [...each]]));
}

function addOwn(
  planned: JobPlan,
  rows: readonly StanceRow[],
  { prepared, state }: Standing,
  { own, paths }: OwnFigures,
  slopes: Gathered,
): void {
  for (const path of paths) {
    const { deviation } = planned.inputs.figures.get(path)!;
    slopes.set(
      path,
      rows.map((row) => {
        const read = upright(row);
        if (read === null) return 0;
        return deviation * ownSlope((moved) => read(prepared, state, moved), own, path);
      }),
    );
  }
}

/** The beam was read at a pitch that has a doubt of its own, much of it shared with the pitch that is looked at. */
function addBeam(
  rows: readonly StanceRow[],
  { prepared, state }: Standing,
  { own, beamRead }: OwnFigures,
  slopes: Gathered,
): void {
  const place = rows.findIndex(({ figure, read }) => figure === 'beam-drop' && read !== null);
  const { pitchOfBeam } = own;
  if (place < 0 || beamRead === null || pitchOfBeam === null) return;
  const at = (by: number): number =>
    rows[place]!.read!(prepared, state, { ...own, pitchOfBeam: pitchOfBeam + by }) ?? 0;
  const slope = (at(OWN_STEP) - at(-OWN_STEP)) / (2 * OWN_STEP);
  const pitches = slopesOf(
    beamRead,
    (_prepared, beside, out) => {
      out[0] = beside[PITCH]!;
    },
    1,
  );
  for (const [name, [pitch]] of pitches) addTo(slopes, name, place, rows.length, slope * pitch!);
}

/** The lean in a bend, its slopes added; null where it never touches. */
function addBend(
  planned: JobPlan,
  { point, read }: StanceRow,
  place: number,
  standing: Standing,
  mine: OwnFigures,
  slopes: Gathered,
): number | null {
  if (point === null || read === null) return null;
  const { stance, figures } = planned.inputs;
  const bend = bendOf(standing, point, stance.crowns, read, mine);
  if (bend === null) return null;
  const add = (name: string, slope: number): void =>
    addTo(slopes, name, place, place + 1, slope * bend.share);
  for (const [name, [slope]] of bend.through) add(name, slope!);
  for (const path of mine.paths) {
    const slope = ownSlope((moved) => read(bend.at.prepared, bend.at.state, moved), mine.own, path);
    add(path, slope * figures.get(path)!.deviation);
  }
  return bend.angle;
}

function addTo(slopes: Gathered, name: string, place: number, count: number, slope: number): void {
  const row = slopes.get(name) ?? new Array<number>(count).fill(0);
  row[place] = (row[place] ?? 0) + slope;
  slopes.set(name, row);
}
