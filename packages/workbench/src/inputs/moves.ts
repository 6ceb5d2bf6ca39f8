import type { Move, UncertainInput } from '@sagwright/model/uncertainty/inputs';
import type { JobDocument } from '@sagwright/records/schema';
import { type Converted, convert } from './convert.ts';
import type { UsedFigure } from './take.ts';

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
): readonly FigureMoves[] {
  return [...figures.values()]
    .filter((figure) => figure.deviation > LEAST_DEVIATION)
    .map((figure) => {
      const step = STEP * figure.deviation;
      const above = numbersOf(convert(job, { path: figure.path, by: step }).converted);
      const below = numbersOf(convert(job, { path: figure.path, by: -step }).converted);
      const moves = new Map<string, number>();
      for (const [path, value] of above) {
        const change = value - (below.get(path) ?? value);
        if (change !== 0) moves.set(path, change / (2 * step));
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

/** Every number of the conversion by its path. A curve is left out: its table moves by its scale. */
function numbersOf(converted: Converted): ReadonlyMap<string, number> {
  const numbers = new Map<string, number>();
  const walk = (value: unknown, path: string): void => {
    if (typeof value === 'number') numbers.set(path, value);
    if (typeof value !== 'object' || value === null) return;
    for (const [key, inner] of Object.entries(value)) {
      if (key !== 'curve') walk(inner, path === '' ? key : `${path}.${key}`);
    }
  };
  walk(converted, '');
  return numbers;
}
