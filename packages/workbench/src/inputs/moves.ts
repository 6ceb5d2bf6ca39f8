import type { Move, UncertainInput } from '@sagwright/model/uncertainty/inputs';
import { type Part, partName } from './convert.ts';
import type { Desk } from './desk.ts';
import { noting, takeAgain, type UsedFigure } from './take.ts';

/** Share of a figure's deviation by which it is moved to find what it moves; conversion is smooth, so the size hardly matters. */
const STEP = 1e-3;

/** Below this a ± is none: its steps would run out of digits. */
export const LEAST_DEVIATION = 1e-200;

/** What one figure of the job moves among the numbers of a part, by their path there. */
export interface FigureMoves {
  readonly figure: UsedFigure;
  readonly moves: ReadonlyMap<string, number>;
}

/**
 * ∂(number)/∂(figure) for every figure with a ± that a part took: a central difference of the part, which is closed arithmetic.
 * By part, `partName`.
 */
export function movesByPart(desk: Desk, parts: readonly Part[]): ReadonlyMap<string, readonly FigureMoves[]> {
  return new Map(parts.map((part) => [partName(part), movesIn(desk, part)]));
}

function movesIn(desk: Desk, part: Part): readonly FigureMoves[] {
  const taken = new Set<string>();
  const paths = pathsOf(part.convert({ ...desk, take: noting(desk.take, taken) }));
  return [...taken].flatMap((path) => {
    const figure = desk.take.figures.get(path)!;
    return figure.deviation > LEAST_DEVIATION ? [{ figure, moves: movesOf(desk, part, figure, paths) }] : [];
  });
}

function movesOf(
  desk: Desk,
  part: Part,
  figure: UsedFigure,
  paths: readonly string[],
): ReadonlyMap<string, number> {
  const step = STEP * figure.deviation;
  const numbers = (by: number): Float64Array => {
    const out = new Float64Array(paths.length);
    numbersInto(part.convert({ ...desk, take: takeAgain(desk.take.figures, figure.path, by) }), out);
    return out;
  };
  const above = numbers(step);
  const below = numbers(-step);
  const moves = new Map<string, number>();
  for (let i = 0; i < paths.length; i += 1) {
    const change = above[i]! - below[i]!;
    if (change !== 0) moves.set(paths[i]!, change / (2 * step));
  }
  return moves;
}

/** Figures that move numbers below one of `prefixes`, as inputs; each prefix is replaced by the names it stands for. */
export function inputsBelow(
  moves: readonly FigureMoves[],
  prefixes: Readonly<Record<string, readonly string[]>>,
): readonly UncertainInput[] {
  const entries = Object.entries(prefixes);
  return moves.flatMap(({ figure, moves: all }): UncertainInput[] => {
    const own: Move[] = [];
    for (const [path, by] of all) {
      for (const [prefix, names] of entries) {
        if (path.startsWith(prefix)) {
          for (const name of names) own.push({ parameter: name + path.slice(prefix.length), by });
        }
      }
    }
    return own.length === 0 ? [] : [{ name: figure.path, deviation: figure.deviation, moves: own }];
  });
}

/** Paths of every number of a part, in the order of `numbersInto`. A curve is left out: its table moves by its scale. */
function pathsOf(part: object): readonly string[] {
  const paths: string[] = [];
  const walk = (value: object, path: string): void => {
    for (const [key, inner] of Object.entries(value)) {
      if (typeof inner === 'number') paths.push(path + key);
      else if (typeof inner === 'object' && inner !== null && key !== 'curve') walk(inner, `${path}${key}.`);
    }
  };
  walk(part, '');
  return paths;
}

/** The numbers of a part of the same job, which has the same shape. */
function numbersInto(part: object, out: Float64Array): void {
  let count = 0;
  const walk = (value: object): void => {
    for (const [key, inner] of Object.entries(value)) {
      if (typeof inner === 'number') {
        out[count] = inner;
        count += 1;
      } else if (typeof inner === 'object' && inner !== null && key !== 'curve') {
        walk(inner);
      }
    }
  };
  walk(part);
}
