import type { Move, UncertainInput } from '@sagwright/model/uncertainty/inputs';
import type { JobDocument } from '@sagwright/records/schema';
import { type Converted, convert } from './convert.ts';
import { takeAgain, type UsedFigure } from './take.ts';

/** Share of a figure's deviation by which it is moved to find what it moves; conversion is smooth, so the size hardly matters. */
const STEP = 1e-3;

/** Below this a ± is none: its steps would run out of digits. */
const LEAST_DEVIATION = 1e-200;

/** What one figure of the job moves among the numbers of the conversion, by their path there. */
export interface FigureMoves {
  readonly figure: UsedFigure;
  readonly moves: ReadonlyMap<string, number>;
}

/** ∂(number)/∂(figure) for every figure with a ±: a central difference of the conversion, which is closed arithmetic. */
export function movesOfFigures(
  job: JobDocument,
  figures: ReadonlyMap<string, UsedFigure>,
  converted: Converted,
): readonly FigureMoves[] {
  const paths = pathsOf(converted);
  const above = new Float64Array(paths.length);
  const below = new Float64Array(paths.length);
  return [...figures.values()]
    .filter((figure) => figure.deviation > LEAST_DEVIATION)
    .map((figure) => {
      const step = STEP * figure.deviation;
      numbersInto(convert(job, takeAgain(figures, figure.path, step)).converted, above);
      numbersInto(convert(job, takeAgain(figures, figure.path, -step)).converted, below);
      const moves = new Map<string, number>();
      for (let i = 0; i < paths.length; i += 1) {
        const change = above[i]! - below[i]!;
        if (change !== 0) moves.set(paths[i]!, change / (2 * step));
      }
      return { figure, moves };
    });
}

/** Figures that move numbers below one of `prefixes`, as inputs; each prefix is replaced by the names it stands for. */
export function inputsBelow(
  moves: readonly FigureMoves[],
  prefixes: Readonly<Record<string, readonly string[]>>,
): readonly UncertainInput[] {
  return moves.flatMap(({ figure, moves: all }): UncertainInput[] => {
    const own: Move[] = [];
    for (const [path, by] of all) {
      for (const [prefix, names] of Object.entries(prefixes)) {
        if (path.startsWith(prefix)) {
          for (const name of names) own.push({ parameter: name + path.slice(prefix.length), by });
        }
      }
    }
    return own.length === 0 ? [] : [{ name: figure.path, deviation: figure.deviation, moves: own }];
  });
}

/** Paths of every number of the conversion, in the order of `numbersInto`. A curve is left out: its table moves by its scale. */
function pathsOf(converted: Converted): readonly string[] {
  const paths: string[] = [];
  const walk = (value: object, path: string): void => {
    for (const [key, inner] of Object.entries(value)) {
      if (typeof inner === 'number') paths.push(path + key);
      else if (typeof inner === 'object' && inner !== null && key !== 'curve') walk(inner, `${path}${key}.`);
    }
  };
  walk(converted, '');
  return paths;
}

/** The numbers of a conversion of the same job, which has the same shape. */
function numbersInto(converted: Converted, out: Float64Array): void {
  let count = 0;
  const walk = (value: Record<string, unknown>): void => {
    for (const key in value) {
      const inner = value[key];
      if (typeof inner === 'number') {
        out[count] = inner;
        count += 1;
      } else if (typeof inner === 'object' && inner !== null && key !== 'curve') {
        walk(inner as Record<string, unknown>);
      }
    }
  };
  walk(converted as unknown as Record<string, unknown>);
}
