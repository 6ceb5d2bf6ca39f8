import type { PartName } from './hardPoints.ts';
import type { TapedSI } from './tape.ts';
import { linearised, settled, squares } from './tapeFit.ts';

/** A fit that is this much worse, in deviations squared, is another one: less tells no two mirrored places apart. */
const TELLS = 11;
/** Rounds of looking on the other side of each part; a mistaken part may have misled the next. */
const ROUNDS = 6;

/**
 * The fit that is meant, where parts may have come out at their mirrored places: by two lengths a part may stand on either side of
 * the line between the two it was taped from. Of fits that the lengths hold alike it is the one nearest to where the parts are looked for.
 * places  of a fit, start  where each part is looked for: x and height of each part in turn, seen from the axle
 */
export function rightSides(
  taped: readonly TapedSI[],
  parts: readonly PartName[],
  places: readonly number[],
  start: readonly number[],
): readonly number[] {
  let best = rated(taped, parts, places, start);
  for (let round = 0; round < ROUNDS; round += 1) {
    const others = mirrored(taped, parts, best.places)
      .filter((other) => best.misfit > TELLS || away(other, start) < best.away)
      .map((other) => rated(taped, parts, settled(taped, parts, other), start));
    const better = others.filter((other) => isBetter(other, best));
    if (better.length === 0) break;
    best = better.reduce((a, b) => (isBetter(b, a) ? b : a));
  }
  return best.places;
}

interface Rated {
  readonly places: readonly number[];
  readonly misfit: number;
  readonly away: number;
}

function rated(
  taped: readonly TapedSI[],
  parts: readonly PartName[],
  places: readonly number[],
  start: readonly number[],
): Rated {
  return { places, misfit: squares(linearised(taped, parts, places).residuals), away: away(places, start) };
}

/**
 * Nearer, and held as well; or held where the other is not, and about as near: a length that is misread must not send its parts
 * to the other side.
 */
function isBetter(one: Rated, other: Rated): boolean {
  if (one.misfit <= TELLS && other.misfit > TELLS) return one.away < 2 * other.away;
  return one.misfit <= other.misfit + TELLS && one.away < other.away - 1e-9;
}

function away(places: readonly number[], start: readonly number[]): number {
  return places.reduce((sum, place, i) => sum + (place - start[i]!) ** 2, 0);
}

/** The same with one part on the other side of the line between two that it was taped from. */
function mirrored(
  taped: readonly TapedSI[],
  parts: readonly PartName[],
  places: readonly number[],
): readonly (readonly number[])[] {
  const at = (part: PartName): readonly [number, number] => {
    const i = parts.indexOf(part);
    return i < 0 ? [0, 0] : [places[2 * i]!, places[2 * i + 1]!];
  };
  return parts.flatMap((part, i) => {
    const from = neighbours(taped, part);
    return from.flatMap((one, k) =>
      from.slice(k + 1).map((other) => {
        const [x, height] = overLine(at(part), at(one), at(other));
        return places.map((place, j) => (j === 2 * i ? x : j === 2 * i + 1 ? height : place));
      }),
    );
  });
}

function neighbours(taped: readonly TapedSI[], part: PartName): readonly PartName[] {
  const others = taped.flatMap((each) => {
    if (each.kind !== 'between') return [];
    return each.from === part ? [each.to] : each.to === part ? [each.from] : [];
  });
  return [...new Set(others)];
}

function overLine(
  [x, height]: readonly [number, number],
  [ax, ah]: readonly [number, number],
  [bx, bh]: readonly [number, number],
): readonly [number, number] {
  const [dx, dh] = [bx - ax, bh - ah];
  const square = dx * dx + dh * dh;
  if (square === 0) return [x, height];
  const along = ((x - ax) * dx + (height - ah) * dh) / square;
  return [2 * (ax + along * dx) - x, 2 * (ah + along * dh) - height];
}
