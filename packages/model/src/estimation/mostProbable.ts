import { backward, cholesky, forward } from '../numerics/cholesky.ts';
import { dot } from '../numerics/dot.ts';
import { leastSquares } from '../numerics/leastSquares.ts';
import { type Evidence, weighed } from './evidence.ts';

/**
 * Where the unknowns stand. `known`: those of which something was known before, each as its distance from what it was
 * thought to be, in its own standard deviations. `free`: those of which nothing was known, in any unit of their own.
 */
export interface Unknowns {
  readonly known: readonly number[];
  readonly free: readonly number[];
}

/** What the model makes of unknowns: a figure for each reading, and its slope by each unknown. */
export interface Predicted {
  readonly figures: readonly number[];
  /** One row for each reading. */
  readonly byKnown: readonly (readonly number[])[];
  readonly byFree: readonly (readonly number[])[];
}

/** Null where nothing can be predicted: no such machine stands. */
export type Predict = (unknowns: Unknowns) => Predicted | null;

/**
 * The most probable unknowns, and how well they are known then. Rows are in deviations of their readings; a space of as many
 * dimensions as there are readings holds all that readings say, see `seenAs`.
 */
export interface Estimate {
  readonly unknowns: Unknowns;
  readonly predicted: Predicted;
  /** |known|² + the misfit of each reading; what was made least. */
  readonly misfit: number;
  /** Number of readings less number of free unknowns: what `misfit` comes to on average if all is as stated. */
  readonly freedom: number;
  /**
   * Covariance of `known` is 1 − KᵀK (1: they were independent, each of deviation 1); K has a row for each reading.
   * So a figure with slopes g has the variance |g|² − |K g|².
   */
  readonly ties: readonly (readonly number[])[];
  /** Covariance of `free`. */
  readonly freeCovariance: readonly (readonly number[])[];
  /** What readings say against what was known, in that space; its length squared is the misfit at the end. */
  readonly surprise: readonly number[];
  readonly lens: Lens;
  readonly iterations: number;
}

/** Takes a change of the readings into the space of `surprise`: correlation taken off by L, the free unknowns' part taken out. */
interface Lens {
  readonly lower: readonly (readonly number[])[];
  readonly freeColumns: readonly (readonly number[])[];
  readonly freeGain: readonly (readonly number[])[];
  /** Slopes of the rows by each known unknown. */
  readonly rows: readonly (readonly number[])[];
  /** What a shift of each reading by its own deviation does to its row: 1, less where it is cut off. */
  readonly weights: readonly number[];
}

/** Steps this short, in deviations, end the search. */
const STILL = 1e-9;
/** Steps from here on are taken whole, as rounding hides whether they lead down; once they get no shorter they are rounding. */
const NEAR = 1e-4;
const STEPS_MAX = 40;
const HALVINGS_MAX = 10;

export type EstimateAnswer =
  | { readonly kind: 'estimate'; readonly estimate: Estimate }
  /** The free unknowns cannot be told from one another by these readings. */
  | { readonly kind: 'not told' }
  /** Nothing can be predicted at the start, or no step leads on: `misfit` is what was left. */
  | { readonly kind: 'not found'; readonly misfit: number | null };

/**
 * Unknowns of greatest probability after readings (maximum a posteriori): least |known|² + Σ misfit, by Gauss and Newton, a
 * step halved until it leads down. Linear algebra is done among the readings, of which there are few:
 *   S = J Jᵀ + 1 = L Lᵀ,   free += least squares of L⁻¹A on L⁻¹e,   known = Jᵀ L⁻ᵀ(the rest),   e = residual + J·known
 * J, A  slopes of the rows by known and free unknowns
 * start  known and free unknowns to begin with; free ones must be near enough for the model to be smooth up to the answer
 * Throws RangeError where a deviation is not above 0.
 * Source: Bayes' rule with normal laws, e.g. A. Tarantola, Inverse Problem Theory (2005), section 3.2 (section from memory).
 * Checked: checks/nist-misra1a.test.ts; one reading by hand, and against the same in its long form, in mostProbable.test.ts.
 */
export function mostProbable(
  evidence: readonly Evidence[],
  predict: Predict,
  start: Unknowns,
): EstimateAnswer {
  for (const { deviation } of evidence) {
    if (!(deviation > 0))
      throw new RangeError(`mostProbable: a reading's deviation is ${deviation}; must be > 0`);
  }
  const first = stateAt(evidence, predict, start);
  if (first === null) return { kind: 'not found', misfit: null };
  let at: Here = first;
  let before = Number.POSITIVE_INFINITY;
  for (let iteration = 0; iteration < STEPS_MAX; iteration += 1) {
    const step = stepFrom(at);
    if (step === null) return { kind: 'not told' };
    const length = stepLength(at, step);
    if (length <= STILL || (length <= NEAR && length > before / 2))
      return { kind: 'estimate', estimate: estimateAt(at, step, iteration) };
    const next =
      length <= NEAR ? stepped(evidence, predict, at, step, 1) : downhill(evidence, predict, at, step);
    if (next === null) return { kind: 'not found', misfit: at.misfit };
    at = next;
    before = length;
  }
  return { kind: 'not found', misfit: at.misfit };
}

interface Here {
  readonly unknowns: Unknowns;
  readonly predicted: Predicted;
  readonly rows: readonly (readonly number[])[];
  readonly freeRows: readonly (readonly number[])[];
  readonly weights: readonly number[];
  readonly residuals: readonly number[];
  readonly misfit: number;
}

function stateAt(evidence: readonly Evidence[], predict: Predict, unknowns: Unknowns): Here | null {
  const predicted = predict(unknowns);
  if (predicted === null) return null;
  const lines = evidence.map((each, i) => weighed(each, predicted.figures[i]!));
  const misfit = lines.reduce((sum, line) => sum + line.misfit, dot(unknowns.known, unknowns.known));
  if (!Number.isFinite(misfit)) return null;
  return {
    unknowns,
    predicted,
    rows: predicted.byKnown.map((row, i) => row.map((slope) => slope * lines[i]!.slope)),
    freeRows: predicted.byFree.map((row, i) => row.map((slope) => slope * lines[i]!.slope)),
    weights: lines.map((line, i) => Math.abs(line.slope) * evidence[i]!.deviation),
    residuals: lines.map((line) => line.residual),
    misfit,
  };
}

interface Step {
  readonly toKnown: readonly number[];
  readonly freeChange: readonly number[];
  readonly surprise: readonly number[];
  readonly lens: Lens;
}

/** Where the linearised problem has its least misfit; null where the free unknowns cannot be told. */
function stepFrom({ unknowns, rows, freeRows, weights, residuals }: Here): Step | null {
  const covariance = rows.map((row, i) => rows.map((other, j) => dot(row, other) + (i === j ? 1 : 0)));
  // 1 is added to what is never below 0: always positive.
  const lower = cholesky(covariance)!;
  const told = forward(
    lower,
    residuals.map((residual, i) => residual + dot(rows[i]!, unknowns.known)),
  );
  const freeColumns = unknowns.free.map((_, j) =>
    forward(
      lower,
      freeRows.map((row) => row[j]!),
    ),
  );
  const solved =
    freeColumns.length === 0
      ? { x: [], gain: [] }
      : leastSquares(
          told.map((_, i) => freeColumns.map((column) => column[i]!)),
          told,
        );
  if (solved === null) return null;
  const lens: Lens = { lower, freeColumns, freeGain: solved.gain, rows, weights };
  const surprise = withoutFree(lens, told);
  const shares = backward(lower, surprise);
  const toKnown = unknowns.known.map((_, j) => rows.reduce((sum, row, i) => sum + row[j]! * shares[i]!, 0));
  return { toKnown, freeChange: solved.x, surprise, lens };
}

function withoutFree({ freeColumns, freeGain }: Lens, told: readonly number[]): readonly number[] {
  const free = freeGain.map((row) => dot(row, told));
  return told.map((each, i) => free.reduce((left, x, j) => left - freeColumns[j]![i]! * x, each));
}

/** How far a step goes, in deviations: of the known unknowns, and of the readings. */
function stepLength({ unknowns, rows, freeRows }: Here, { toKnown, freeChange }: Step): number {
  const change = toKnown.map((to, j) => to - unknowns.known[j]!);
  const inReadings = rows.map((row, i) => dot(row, change) + dot(freeRows[i]!, freeChange));
  return Math.sqrt(dot(change, change) + dot(inReadings, inReadings));
}

function downhill(evidence: readonly Evidence[], predict: Predict, from: Here, step: Step): Here | null {
  for (let halving = 0, share = 1; halving < HALVINGS_MAX; halving += 1, share /= 2) {
    const next = stepped(evidence, predict, from, step, share);
    if (next !== null && next.misfit < from.misfit) return next;
  }
  return null;
}

function stepped(
  evidence: readonly Evidence[],
  predict: Predict,
  { unknowns: { known, free } }: Here,
  { toKnown, freeChange }: Step,
  share: number,
): Here | null {
  return stateAt(evidence, predict, {
    known: known.map((each, j) => each + share * (toKnown[j]! - each)),
    free: free.map((each, j) => each + share * freeChange[j]!),
  });
}

function estimateAt(at: Here, { surprise, lens }: Step, iterations: number): Estimate {
  const columns = at.unknowns.known.map((_, j) => seenAs(lens, columnOf(at.rows, j)));
  return {
    unknowns: at.unknowns,
    predicted: at.predicted,
    misfit: at.misfit,
    freedom: at.residuals.length - at.unknowns.free.length,
    ties: at.residuals.map((_, i) => columns.map((column) => column[i]!)),
    freeCovariance: lens.freeGain.map((row) => lens.freeGain.map((other) => dot(row, other))),
    surprise,
    lens,
    iterations,
  };
}

/** A change of the rows as it would stand in `surprise`: what of it neither what was known nor a free unknown explains. */
export function seenAs(lens: Lens, change: readonly number[]): readonly number[] {
  return withoutFree(lens, forward(lens.lower, change));
}

function columnOf(rows: readonly (readonly number[])[], j: number): readonly number[] {
  return rows.map((row) => row[j]!);
}
