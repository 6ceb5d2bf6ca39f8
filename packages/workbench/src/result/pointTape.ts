import type { Figure } from '@sagwright/model/plan/answer';
import type { HardPoint } from '@sagwright/model/rear/hardPoints';
import type { TapedPoints } from '@sagwright/model/rear/pointsFromTape';
import { halfWidthOf } from '@sagwright/model/uncertainty/spread';
import { awayOf } from '../inputs/tapedPlaces.ts';
import type { TapedPlaces, TapedRow } from '../inputs/tapedRows.ts';
import type { JobPlan } from '../path.ts';
import type { PointTapeDocument, TapedLengthDocument, TapedPartDocument } from './rearMotionDocument.ts';

type Figures = JobPlan['inputs']['figures'];

/** The hard points that a tape gave, and how its lengths bear each other out; null where none was laid. */
export function pointTapeOf({ inputs: { places, figures } }: JobPlan): PointTapeDocument | null {
  if (places === null || places.answer.kind !== 'points') return null;
  const { rows, answer } = places;
  const lengths = rows.map((row, i) => lengthDocument(row, answer.misfits[i]!, answer.checked[i]!));
  return {
    points: Object.keys(answer.points).map((part) =>
      partDocument(part as TapedPartDocument['part'], places, answer, figures),
    ),
    lengths,
    spare: answer.spare,
    worst: worstOf(lengths),
  };
}

/** What less than this of a slip would show is checked by nothing: the rounding of the sums. */
const CHECKED = 0.005;

function lengthDocument({ path, taped }: TapedRow, misfit: number, checked: number): TapedLengthDocument {
  const plusMinus = halfWidthOf(taped.deviation);
  // What is left of a length's own ± once the points have followed it: √r of it.
  const shows = plusMinus * Math.sqrt(checked);
  return {
    path,
    taped: { value: taped.length, plusMinus },
    byPoints: taped.length - misfit,
    misfit: { value: misfit, plusMinus: shows },
    checked,
    verdict: checked < CHECKED ? 'not checked' : Math.abs(misfit) <= shows ? 'agrees' : 'differs',
  };
}

/** The one furthest off in its own ±, of those that differ. */
function worstOf(lengths: readonly TapedLengthDocument[]): string | null {
  const off = ({ misfit }: TapedLengthDocument): number => Math.abs(misfit.value) / misfit.plusMinus!;
  const [worst] = lengths.filter(({ verdict }) => verdict === 'differs').toSorted((a, b) => off(b) - off(a));
  return worst?.path ?? null;
}

function partDocument(
  part: TapedPartDocument['part'],
  places: TapedPlaces,
  answer: TapedPoints,
  figures: Figures,
): TapedPartDocument {
  const place = answer.points[part]!;
  const figure = (axis: keyof HardPoint): Figure => ({
    value: place[axis],
    plusMinus: halfWidthOf(deviationOf(part, axis, places, answer, figures)),
  });
  return {
    part,
    x: figure('x'),
    height: figure('height'),
    away: awayOf(places, part),
  };
}

/** Of a place: by each reading, by how far the tape leant, and a height by the axle's too. */
function deviationOf(
  part: TapedPartDocument['part'],
  axis: keyof HardPoint,
  { rows }: TapedPlaces,
  { moves, misfits }: TapedPoints,
  figures: Figures,
): number {
  const slopes = moves.map((each) => each[part]![axis]);
  const lean = new Map<string, number>();
  let axle = axis === 'height' ? 1 : 0;
  rows.forEach(({ length, taped, leans }, i) => {
    if (length === null && taped.kind === 'above axle') axle -= slopes[i]!;
    if (leans === null || taped.kind !== 'between') return;
    const by = (-slopes[i]! * taped.sideways) / (taped.length - misfits[i]!);
    lean.set(leans.path, (lean.get(leans.path) ?? 0) + by);
  });
  const others = [...lean, ['machine.rear.tyre.radius', axle] as const];
  return Math.hypot(
    ...slopes.map((slope, i) => slope * rows[i]!.taped.deviation),
    ...others.map(([path, slope]) => slope * figures.get(path)!.deviation),
  );
}
