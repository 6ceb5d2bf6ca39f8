import { type Parameters, parameter, type Reach, setParameter } from '../statics/parameters.ts';
import { type Prepared, refresh } from '../statics/prepared.ts';

/**
 * One thing that was read, typed or assumed, and what it moves: an input of the sum. A value typed once for both shocks
 * is one input with two moves; two taped coefficients that belong together are inputs along their own axes.
 */
export interface UncertainInput {
  /** Where it stands in the job: 'machine.rear.unsprung', 'springs.blue-pair.rate'. */
  readonly name: string;
  /** Standard deviation, in the input's own SI unit. */
  readonly deviation: number;
  /** ∂(parameter)/∂(input) for each figure of the machine that it moves. */
  readonly moves: readonly Move[];
  /**
   * How readings tied it to other inputs: column of K, in whose rows all inputs of a sum agree; left out where it stands for
   * itself. In deviations, the covariance of two inputs is (1 where they are the same) − tied·tied.
   */
  readonly tied?: readonly number[];
}

/** A figure of the machine by its path (`Parameters.names`), and how much it moves for one unit of the input. */
export interface Move {
  readonly parameter: string;
  readonly by: number;
}

/** An input made ready: places in a machine's parameters, and the step for its differences. */
export interface Direction {
  readonly input: UncertainInput;
  readonly indices: readonly number[];
  readonly by: readonly number[];
  /** What hangs on its figures. */
  readonly reach: Reach;
  /** Change of the input for a central difference: a small share of its deviation, so that no kink lies between. */
  readonly step: number;
}

const STEP = 1e-4;

/** The directions of inputs in a machine's parameters; moves of figures that this machine has not are left out. */
export function directionsOf(
  parameters: Parameters,
  inputs: readonly UncertainInput[],
): readonly Direction[] {
  return inputs.map((input) => directionOf(parameters, input));
}

function directionOf(parameters: Parameters, input: UncertainInput): Direction {
  const indices: number[] = [];
  const by: number[] = [];
  const reach = { rear: false, front: false, travel: false };
  for (const move of input.moves) {
    const index = parameters.indexOf.get(move.parameter);
    if (index === undefined) continue;
    const known = indices.indexOf(index);
    if (known >= 0) {
      by[known] = by[known]! + move.by;
      continue;
    }
    indices.push(index);
    by.push(move.by);
    const { rear, front, travel } = parameters.reaches[index]!;
    reach.rear ||= rear;
    reach.front ||= front;
    reach.travel ||= travel;
  }
  return { input, indices, by, reach, step: STEP * input.deviation };
}

/** Moves the machine along a direction by `change` of its input; `prepared` follows. Undo with `restore`. */
export function moveAlong(
  parameters: Parameters,
  prepared: Prepared,
  direction: Direction,
  change: number,
): void {
  for (let i = 0; i < direction.indices.length; i += 1) {
    const index = direction.indices[i]!;
    setParameter(parameters, index, parameter(parameters, index) + direction.by[i]! * change);
  }
  if (direction.reach.travel) refresh(prepared);
}

/** All figures of the machine as they stand, in the order of `Parameters.names`. */
export function figuresOf(parameters: Parameters): Float64Array {
  const figures = new Float64Array(parameters.names.length);
  for (let i = 0; i < figures.length; i += 1) figures[i] = parameter(parameters, i);
  return figures;
}

/** The same as `moveAlong`, but from `figures`, wherever the direction's figures stand now. */
export function moveFrom(
  parameters: Parameters,
  prepared: Prepared,
  direction: Direction,
  figures: Float64Array,
  change: number,
): void {
  for (let i = 0; i < direction.indices.length; i += 1) {
    const index = direction.indices[i]!;
    setParameter(parameters, index, figures[index]! + direction.by[i]! * change);
  }
  if (direction.reach.travel) refresh(prepared);
}

/** Puts the figures of a direction back to what `figures` holds, to the last bit. */
export function restore(
  parameters: Parameters,
  prepared: Prepared,
  direction: Direction,
  figures: Float64Array,
): void {
  moveFrom(parameters, prepared, direction, figures, 0);
}
