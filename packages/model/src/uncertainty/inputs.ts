import { type Parameters, parameter, setParameter } from '../statics/parameters.ts';
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
  /** What it moves of the masses that the body bears: their forces are known in closed form (`stateDerivatives`). */
  readonly borne: BorneMoves;
  /** The rest of what it moves: places in the parameters and how much. */
  readonly otherIndices: readonly number[];
  readonly otherBy: readonly number[];
  /** Whether the whole travel of an end hangs on it, so that the machine must be refreshed. */
  readonly movesTravel: boolean;
  /** Change of the input for a central difference: a small share of its deviation, so that no kink lies between. */
  readonly step: number;
}

/** ∂/∂(input) of the sprung body's figures and of the load's. */
export interface BorneMoves {
  'sprung.mass': number;
  'sprung.x': number;
  'sprung.height': number;
  'load.mass': number;
  'load.momentX': number;
  'load.momentHeight': number;
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
  const otherIndices: number[] = [];
  const otherBy: number[] = [];
  const borne: BorneMoves = {
    'sprung.mass': 0,
    'sprung.x': 0,
    'sprung.height': 0,
    'load.mass': 0,
    'load.momentX': 0,
    'load.momentHeight': 0,
  };
  let movesTravel = false;
  for (const move of input.moves) {
    const index = parameters.indexOf.get(move.parameter);
    if (index === undefined) continue;
    indices.push(index);
    by.push(move.by);
    movesTravel ||= parameters.onTravel[index]!;
    if (isBorne(borne, move.parameter)) {
      borne[move.parameter] += move.by;
    } else {
      otherIndices.push(index);
      otherBy.push(move.by);
    }
  }
  return { input, indices, by, borne, otherIndices, otherBy, movesTravel, step: STEP * input.deviation };
}

function isBorne(borne: BorneMoves, name: string): name is keyof BorneMoves {
  return Object.hasOwn(borne, name);
}

/** Moves the machine along a direction by `change` of its input; `prepared` follows. Undo with the opposite change. */
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
  if (direction.movesTravel) refresh(prepared);
}

/** Puts the figures of a direction back to what `saved` holds, to the last bit. */
export function restore(
  parameters: Parameters,
  prepared: Prepared,
  direction: Direction,
  saved: readonly number[],
): void {
  for (let i = 0; i < direction.indices.length; i += 1)
    setParameter(parameters, direction.indices[i]!, saved[i]!);
  if (direction.movesTravel) refresh(prepared);
}

/** The figures of a direction as they stand. */
export function figuresOf(parameters: Parameters, direction: Direction): readonly number[] {
  return direction.indices.map((index) => parameter(parameters, index));
}
