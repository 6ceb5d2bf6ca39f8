import type { FirstMoments } from '../masses/pointMass.ts';
import type { EndQuestion, LoadCaseSI, PlanQuestion, SpringChoiceSI } from '../plan/question.ts';
import type { EndSI, MachineSI } from '../statics/machine.ts';
import { parameter, parametersOf, setParameter } from '../statics/parameters.ts';
import { type EndName, prepare, refresh } from '../statics/prepared.ts';
import type { UncertainInput } from '../uncertainty/inputs.ts';
import type { Estimate } from './mostProbable.ts';
import type { Inquiry } from './readings.ts';

/**
 * A question as readings have it: each figure that they moved stands where they put it, and each input knows how they tied it to
 * the others, so that a plan made of it carries the ± that is left. Inputs that no reading saw stay as they were.
 * Where the collars stood follows with them: a collar that was misread stands elsewhere than was read.
 * Throws RangeError where the corrected machine cannot be (`refresh`); an estimate found it, so that none is meant to.
 */
export function corrected(question: PlanQuestion, inquiry: Inquiry, estimate: Estimate): PlanQuestion {
  const changes = changesOf(inquiry, estimate);
  const { chosen } = question;
  const machine = machineMoved(question.machine, question.inputs, changes);
  return {
    ...question,
    machine,
    inputs: tied(question.inputs, changes),
    ...(chosen !== undefined && {
      chosen: {
        machine: machineMoved(chosen.machine, chosen.inputs, changes),
        inputs: tied(chosen.inputs, changes),
      },
    }),
    loadCases: question.loadCases.map((loadCase) => loadMoved(loadCase, changes)),
    rear: endMoved(question, machine, 'rear', changes),
    front: endMoved(question, machine, 'front', changes),
  };
}

/** What became of an input: how far it moved, in its own unit, and its ties. */
interface Change {
  readonly by: number;
  readonly tied: readonly number[];
}

type Changes = ReadonlyMap<string, Change>;

function changesOf({ inputs }: Inquiry, { unknowns, ties }: Estimate): Changes {
  return new Map(
    inputs.map(({ name, deviation }, j) => [
      name,
      { by: unknowns.known[j]! * deviation, tied: ties.map((row) => row[j]!) },
    ]),
  );
}

function tied(inputs: readonly UncertainInput[], changes: Changes): readonly UncertainInput[] {
  return inputs.map((input) => {
    const change = changes.get(input.name);
    return change === undefined ? input : { ...input, tied: change.tied };
  });
}

function machineMoved<M extends MachineSI>(
  machine: M,
  inputs: readonly UncertainInput[],
  changes: Changes,
): M {
  const parameters = parametersOf(machine);
  const prepared = prepare(parameters.machine);
  for (const { name, moves } of inputs) {
    const by = changes.get(name)?.by ?? 0;
    if (by === 0) continue;
    for (const move of moves) {
      const index = parameters.indexOf.get(move.parameter);
      if (index !== undefined) setParameter(parameters, index, parameter(parameters, index) + move.by * by);
    }
  }
  refresh(prepared);
  return parameters.machine;
}

function loadMoved(loadCase: LoadCaseSI, changes: Changes): LoadCaseSI {
  return {
    ...loadCase,
    load: momentsMoved(loadCase.load, loadCase.inputs, changes),
    loadFullTank: momentsMoved(loadCase.loadFullTank, loadCase.inputsFullTank, changes),
    inputs: tied(loadCase.inputs, changes),
    inputsFullTank: tied(loadCase.inputsFullTank, changes),
  };
}

function momentsMoved(load: FirstMoments, inputs: readonly UncertainInput[], changes: Changes): FirstMoments {
  const moved = (figure: keyof FirstMoments): number =>
    inputs.reduce((sum, { name, moves }) => {
      const by = changes.get(name)?.by ?? 0;
      return moves.reduce(
        (inner, move) => (move.parameter === `load.${figure}` ? inner + move.by * by : inner),
        sum,
      );
    }, load[figure]);
  return { mass: moved('mass'), momentX: moved('momentX'), momentHeight: moved('momentHeight') };
}

/** moved  the machine as readings have it */
function endMoved(question: PlanQuestion, moved: MachineSI, name: EndName, changes: Changes): EndQuestion {
  const end = question[name];
  const choices = end.choices.map((choice) => choiceMoved(question.machine, name, choice, changes));
  return { ...end, choices, found: foundMoved(end.found, moved[name], choices) };
}

/** A spring is the same on every strut: what moves it on the first moves it. */
function choiceMoved(
  machine: MachineSI,
  name: EndName,
  choice: SpringChoiceSI,
  changes: Changes,
): SpringChoiceSI {
  const [strut] = machine[name].struts;
  const alone = { ...strut!, spring: choice.spring, preload: choice.preloadAtZero };
  const fitted = { ...machine, [name]: { ...machine[name], struts: [alone] } };
  const { spring, preload } = machineMoved(fitted, choice.inputs, changes)[name].struts[0]!;
  return { ...choice, spring, preloadAtZero: preload, inputs: tied(choice.inputs, changes) };
}

/** Where the adjusters stood: what the corrected preload of each strut is more than the fitted spring has at position 0. */
function foundMoved(
  found: readonly number[] | null,
  { struts }: EndSI,
  choices: readonly SpringChoiceSI[],
): readonly number[] | null {
  const fitted = choices.find((choice) => choice.fitted);
  if (found === null || fitted === undefined) return found;
  return found.map((_, i) => struts[i]!.preload - fitted.preloadAtZero);
}
