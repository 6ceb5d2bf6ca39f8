import { isHardPoints } from '../rear/kinematics.ts';
import type { MachineSI } from '../statics/machine.ts';
import { type Parameters, parameter, parametersOf, setParameter } from '../statics/parameters.ts';
import type { Move, UncertainInput } from '../uncertainty/inputs.ts';
import { withShockLength } from './otherGeometry.ts';

/** Share of a figure of the ratio by which it is moved for its differences. */
const STEP = 1e-6;

const OF_RATIO = /^rear\.kinematics\./;
const OF_LENGTH = /^rear\.(kinematics\.|referenceTravel$)/;

/**
 * Inputs of a machine as those of the same machine on a shock that is longer by `change` [m]: what moves its ratio also moves how far
 * out the wheel then stands, and the ratio counted from there:
 *   ∂q'/∂q for every q of the ratio, q' of ratio and reference travel of `withShockLength`
 * By differences, since that is closed arithmetic. By hard points all follows from the points and the length: nothing is added.
 * Where a length just barely fits, so that its neighbours do not, what moves the ratio is left as it was.
 */
export function throughShockLength(
  machine: MachineSI,
  change: number,
  inputs: readonly UncertainInput[],
): readonly UncertainInput[] {
  if (change === 0 || isHardPoints(machine.rear.kinematics)) return inputs;
  const parameters = parametersOf(machine);
  const known = new Map<string, readonly Move[]>();
  const lengthened = (name: string): readonly Move[] => {
    const moves = known.get(name) ?? movesOf(parameters, name, change);
    known.set(name, moves);
    return moves;
  };
  return inputs.map((input) => ({
    ...input,
    moves: input.moves.flatMap((move): readonly Move[] =>
      OF_RATIO.test(move.parameter)
        ? lengthened(move.parameter).map(({ parameter: to, by }) => ({ parameter: to, by: by * move.by }))
        : [move],
    ),
  }));
}

/** ∂q'/∂q for one figure q of the ratio. */
function movesOf(parameters: Parameters, name: string, change: number): readonly Move[] {
  const index = parameters.indexOf.get(name);
  if (index === undefined) return [];
  const value = parameter(parameters, index);
  const step = STEP * Math.max(Math.abs(value), 1);
  const at = (moved: number): Parameters | null => {
    setParameter(parameters, index, moved);
    const longer = withShockLength(parameters.machine, change);
    return longer === null ? null : parametersOf(longer);
  };
  const [above, below] = [at(value + step), at(value - step)];
  setParameter(parameters, index, value);
  if (above === null || below === null) return [{ parameter: name, by: 1 }];
  return above.names.flatMap((to, i): readonly Move[] => {
    if (!OF_LENGTH.test(to)) return [];
    const by = (parameter(above, i) - parameter(below, i)) / (2 * step);
    return by === 0 ? [] : [{ parameter: to, by }];
  });
}
