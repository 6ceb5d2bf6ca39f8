import { dot } from '../numerics/dot.ts';
import { leastSquares } from '../numerics/leastSquares.ts';
import type { PartName } from './hardPoints.ts';
import type { TapedSI } from './tape.ts';

const ITERATIONS = 500;
/** A step that no tape can tell [m]. */
const STILL = 1e-13;

/** Walks from `start` to where the lengths fit best; x and height of each part in turn, seen from the axle. */
export function settled(
  taped: readonly TapedSI[],
  parts: readonly PartName[],
  start: readonly number[],
): number[] {
  let places = [...start];
  let damping = 1e-3;
  let { residuals, rows } = linearised(taped, parts, places);
  for (let iteration = 0; iteration < ITERATIONS; iteration += 1) {
    // Damping as lengths that say "stay": it also keeps the step bounded where the lengths do not hold a part.
    const stays = places.map((_, i) => places.map((__, j) => (i === j ? damping / TAPE : 0)));
    const step = leastSquares([...rows, ...stays], [...residuals, ...places.map(() => 0)]);
    if (step === null) return places;
    const next = places.map((each, i) => each + step.x[i]!);
    const there = linearised(taped, parts, next);
    const better = squares(there.residuals) <= squares(residuals);
    if (better) [places, residuals, rows] = [next, there.residuals, there.rows];
    damping = better ? Math.max(1e-9, 0.2 * damping) : 10 * damping;
    if (Math.hypot(...step.x) < STILL) break;
  }
  return places;
}

/** What a tape reads to [m]: the scale of the damping. */
const TAPE = 0.001;

export function squares(residuals: readonly number[]): number {
  return dot(residuals, residuals);
}

/** Taped less given, and how the given lengths change with each coordinate: both in deviations of the length. */
export interface Linearised {
  readonly residuals: readonly number[];
  readonly rows: readonly (readonly number[])[];
}

export function linearised(
  taped: readonly TapedSI[],
  parts: readonly PartName[],
  places: readonly number[],
): Linearised {
  const residuals: number[] = [];
  const rows: number[][] = [];
  for (const each of taped) {
    const row = places.map(() => 0);
    residuals.push((each.length - given(each, parts, places, row)) / each.deviation);
    rows.push(row.map((slope) => slope / each.deviation));
  }
  return { residuals, rows };
}

export function given(
  taped: TapedSI,
  parts: readonly PartName[],
  places: readonly number[],
  row: number[],
): number {
  if (taped.kind !== 'between') {
    const place = 2 * parts.indexOf(taped.of) + (taped.kind === 'above axle' ? 1 : 0);
    row[place] = 1;
    return places[place]!;
  }
  const from = 2 * parts.indexOf(taped.from);
  const to = 2 * parts.indexOf(taped.to);
  const x = (places[to] ?? 0) - (places[from] ?? 0);
  const height = (places[to + 1] ?? 0) - (places[from + 1] ?? 0);
  const length = Math.hypot(x, height, taped.sideways);
  if (from >= 0) [row[from], row[from + 1]] = [-x / length, -height / length];
  if (to >= 0) [row[to], row[to + 1]] = [x / length, height / length];
  return length;
}
