import { leastSquares } from '../numerics/leastSquares.ts';
import type { HardPoint, PartName } from './hardPoints.ts';
import type { TapedSI } from './tape.ts';
import { given, type Linearised, linearised, settled } from './tapeFit.ts';
import { type TapeGap, tapeGap } from './tapeGap.ts';
import { rightSides } from './tapeMirror.ts';

/** Places by name; only those asked for. */
export type Places = Readonly<Partial<Record<PartName, HardPoint>>>;

/** How the machine stood while it was taped. */
export interface TapedAttitude {
  /** Nose-down positive [rad]: 0 with the body level. */
  readonly pitch: number;
  /** Of the unloaded tyre: height of the axle in the reference attitude [m]. */
  readonly radius: number;
}

export type TapeAnswer =
  | TapedPoints
  /** These lengths leave parts free to move: fewer than two for each part, or two that pull the same way; at least so many are missing, the next one at `part`. */
  | { readonly kind: 'not held'; readonly fewer: number; readonly part: PartName }
  /** Two lengths together do not span what they should. */
  | ({ readonly kind: 'too short' } & TapeGap)
  /** Nothing comes near these lengths: the one that misses most, by its place in the list; taped less what the others ask for [m]. */
  | { readonly kind: 'do not meet'; readonly taped: number; readonly by: number };

/** Hard points in body coordinates, reference attitude. */
export interface TapedPoints {
  readonly kind: 'points';
  readonly points: Places;
  /** Standard deviations of both coordinates [m]. They hang together: for sums use `moves`. */
  readonly deviations: Places;
  /** Of each length in turn: how far every point moves for a metre more of it. */
  readonly moves: readonly Places[];
  /** Of each length in turn: taped less what the points give [m]. All 0 where no length was taped more than needed. */
  readonly misfits: readonly number[];
  /** Of each length in turn: the share of a slip in it that its misfit would show; 0 where no other length checks it. */
  readonly checked: readonly number[];
  /** Lengths taped more than needed. */
  readonly spare: number;
}

/** Of a column, what the others leave when the points hang on a length that nobody read. */
const HELD = 1e-6;
/** A length that misses by this many of its standard deviations is no reading of this machine. */
const FAR_OUT = 10;

/**
 * Hard points from taped lengths: the points with the least Σ ((taped − given)/deviation)², by Gauss and Newton with damping.
 * near  about where each part is to be found, body coordinates: it says which of two mirrored places is meant
 * The axle is where x counts from. The points come out turned level, with the axle at the radius of the tyre.
 * Throws RangeError for a length or deviation not above 0 (an 'above' or 'ahead' may be of either sign) and for a part that
 * is taped to but stands neither in `near` nor at the axle.
 * Source: least squares with the damping of K. Levenberg, Quart. Appl. Math. 2, 164–168 (1944).
 */
export function pointsFromTape(
  taped: readonly TapedSI[],
  near: Places,
  { pitch, radius }: TapedAttitude,
): TapeAnswer {
  const parts = (Object.keys(near) as PartName[]).filter((part) => part !== 'axle');
  requireLengths(taped, parts);
  const gap = tapeGap(taped);
  if (gap !== null) return { kind: 'too short', ...gap };
  const start = parts.flatMap((part) => {
    const { x, height } = near[part]!;
    return fromBody(x, height - radius, pitch);
  });
  const places = rightSides(taped, parts, settled(taped, parts, start), start);
  const { residuals, rows } = linearised(taped, parts, places);
  const solved = leastSquares(rows, residuals);
  const worst = worstOf(residuals);
  if (Math.abs(residuals[worst] ?? 0) > FAR_OUT) {
    return { kind: 'do not meet', taped: worst, by: offTheOthers(taped, parts, places, worst, residuals) };
  }
  if (solved === null || solved.independence < HELD) {
    const fewer = Math.max(1, 2 * parts.length - taped.length);
    return { kind: 'not held', fewer, part: freePart(rows, parts) };
  }
  return found(taped, parts, places, { pitch, radius }, { residuals, rows, gain: solved.gain });
}

/** The lengths about the points found, and how the points follow from them. */
interface Fit extends Linearised {
  readonly gain: readonly (readonly number[])[];
}

function found(
  taped: readonly TapedSI[],
  parts: readonly PartName[],
  places: readonly number[],
  { pitch, radius }: TapedAttitude,
  { residuals, rows, gain }: Fit,
): TapedPoints {
  return {
    kind: 'points',
    points: inBody(parts, places, pitch, radius),
    deviations: deviationsOf(parts, gain, pitch),
    moves: taped.map(({ deviation }, j) => {
      const column = gain.map((row) => row[j]! / deviation);
      return inBody(parts, column, pitch, 0);
    }),
    misfits: residuals.map((each, i) => each * taped[i]!.deviation),
    // What the points follow of it is aᵢ · gain, column i: W. Baarda, A testing procedure for use in geodetic networks (1968), from memory.
    checked: rows.map((row, i) => Math.max(0, 1 - row.reduce((sum, a, k) => sum + a * gain[k]![i]!, 0))),
    spare: taped.length - 2 * parts.length,
  };
}

function worstOf(residuals: readonly number[]): number {
  return residuals.reduce((most, each, i) => (Math.abs(each) > Math.abs(residuals[most]!) ? i : most), 0);
}

/** A length less what all others ask for, where they hold the points without it; else its misfit [m]. */
function offTheOthers(
  taped: readonly TapedSI[],
  parts: readonly PartName[],
  places: readonly number[],
  worst: number,
  misses: readonly number[],
): number {
  const others = taped.filter((_, i) => i !== worst);
  const without = settled(others, parts, places);
  const { rows, residuals } = linearised(others, parts, without);
  const held = (leastSquares(rows, residuals)?.independence ?? 0) >= HELD;
  const { length, deviation } = taped[worst]!;
  if (!held) return misses[worst]! * deviation;
  return length - given(taped[worst]!, parts, without, []);
}

/** The part that is free to move: the first that would hold all of them if it stood still, else the one with fewest lengths. */
function freePart(rows: readonly (readonly number[])[], parts: readonly PartName[]): PartName {
  const holdsAll = (part: number): boolean => {
    const pins = [0, 1].map((k) =>
      parts.flatMap((_, i) => [0, 1].map((l) => (i === part && k === l ? 1 : 0))),
    );
    const pinned = [...rows, ...pins];
    const solved = leastSquares(pinned, new Array<number>(pinned.length).fill(0));
    return solved !== null && solved.independence >= HELD;
  };
  const touching = (part: number): number =>
    rows.filter((row) => row[2 * part] !== 0 || row[2 * part + 1] !== 0).length;
  const fewest = parts.reduce((least, _, i) => (touching(i) < touching(least) ? i : least), 0);
  return parts.find((_, i) => holdsAll(i)) ?? parts[fewest]!;
}

function inBody(
  parts: readonly PartName[],
  places: readonly number[],
  pitch: number,
  axleHeight: number,
): Places {
  return Object.fromEntries(
    parts.map((part, i) => {
      const [x, height] = toBody(places[2 * i]!, places[2 * i + 1]!, pitch);
      return [part, { x, height: axleHeight + height }];
    }),
  );
}

/** Half-axes are no vectors: variances are turned, not deviations. */
function deviationsOf(
  parts: readonly PartName[],
  gain: readonly (readonly number[])[],
  pitch: number,
): Places {
  return Object.fromEntries(
    parts.map((part, i) => {
      const turned = gain[2 * i]!.map((x, j) => toBody(x, gain[2 * i + 1]![j]!, pitch));
      const along = (place: 0 | 1): number => Math.hypot(...turned.map((each) => each[place]));
      return [part, { x: along(0), height: along(1) }];
    }),
  );
}

/** X = x cos θ − z sin θ, Z = x sin θ + z cos θ: the inverse of how a pitched body's points stand in the world. */
function toBody(x: number, height: number, pitch: number): readonly [number, number] {
  const [sin, cos] = [Math.sin(pitch), Math.cos(pitch)];
  return [x * cos - height * sin, x * sin + height * cos];
}

function fromBody(x: number, height: number, pitch: number): readonly [number, number] {
  return toBody(x, height, -pitch);
}

function requireLengths(taped: readonly TapedSI[], parts: readonly PartName[]): void {
  taped.forEach((each, i) => {
    const isLength = Number.isFinite(each.length) && (each.kind !== 'between' || each.length > 0);
    if (!isLength || !(each.deviation > 0)) {
      throw new RangeError(
        `pointsFromTape: length ${i} is ${each.length} ± ${each.deviation} m; both must be above 0`,
      );
    }
    for (const part of each.kind === 'between' ? [each.from, each.to] : [each.of]) {
      if (part !== 'axle' && !parts.includes(part)) {
        throw new RangeError(
          `pointsFromTape: length ${i} goes to the ${part}, which is not looked for anywhere`,
        );
      }
    }
  });
}
