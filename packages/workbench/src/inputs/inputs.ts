import type { FirstMoments } from '@sagwright/model/masses/pointMass';
import type { EndQuestion, LoadCaseSI, PlanQuestion, SpringChoiceSI } from '@sagwright/model/plan/question';
import type { MachineSI } from '@sagwright/model/statics/machine';
import { weigh, weighLoad } from '@sagwright/model/statics/weighing';
import type { UncertainInput } from '@sagwright/model/uncertainty/inputs';
import { throughLoadWeighing, throughWeighing } from '@sagwright/model/uncertainty/weighed';
import type { JobDocument } from '@sagwright/records/schema';
import type { Adjuster } from '@sagwright/records/schema/adjusters';
import type { LoadCase } from '@sagwright/records/schema/loads';
import type { TargetSet } from '@sagwright/records/schema/targets';
import { adjusterOf } from './adjusters.ts';
import { type Converted, convert } from './convert.ts';
import { type Desk, type InputProblem, inOrder, type Note, note } from './desk.ts';
import type { ChoiceFigures, EndFigures } from './ends.ts';
import { limitsFigures } from './limits.ts';
import { type LoadFigures, placeLoads } from './loads.ts';
import { margins } from './margins.ts';
import { type FigureMoves, inputsBelow, movesOfFigures } from './moves.ts';
import { outOfScope } from './scope.ts';
import { takeFrom, type UsedFigure } from './take.ts';
import { targetSetInUse, wantedOfLoad } from './targets.ts';

/** A job made into a question for the physics, with every figure that went into it. */
export interface Inputs {
  readonly question: PlanQuestion;
  /** Every figure by its path: typed and assumed. */
  readonly figures: ReadonlyMap<string, UsedFigure>;
  readonly notes: readonly Note[];
  readonly targetSet: { readonly id: string; readonly set: TargetSet };
}

export type InputsResult =
  | { readonly ok: true; readonly inputs: Inputs }
  | { readonly ok: false; readonly problems: readonly InputProblem[] };

/**
 * A job document as SI inputs: units come off here, once; unknown figures become named assumptions; the machine's body is
 * found from the weighing; every ± becomes a standard deviation with what it moves. What cannot be computed is told with its path.
 */
export function inputsOf(job: JobDocument): InputsResult {
  const stranger = outOfScope(job);
  if (stranger !== null) return { ok: false, problems: [stranger] };
  const take = takeFrom();
  const { converted, problems, notes } = convert(job, take);
  if (problems.length > 0) return { ok: false, problems };
  const desk: Desk = { job, take, problems, notes };
  if (job.machine.ridingHeightControl !== undefined && job.machine.ridingHeightControl !== 'none') {
    note(desk, 'riding height control', 'machine.ridingHeightControl');
  }
  const machine = weighedMachine(desk, converted);
  if (machine === null) return { ok: false, problems };
  const moves = movesOfFigures(job, take.figures, converted);
  const machineInputs = throughWeighing(
    { ...machine, weighing: converted.machine.weighing },
    inputsBelow(moves, { 'machine.machine.': [''], 'machine.weighing.': ['weighing.'] }),
  );
  const targetSet = targetSetInUse(desk);
  const loadCases = inOrder(job.loadCases).flatMap(([id, loadCase]) => {
    const figures = converted.loads[id]!;
    const load = loadOf(desk, id, figures, machine, machineInputs, moves);
    return load === null ? [] : [loadCaseSI(desk, id, loadCase, load, targetSet.set)];
  });
  if (problems.length > 0) return { ok: false, problems };
  const { rear, front } = job.machine;
  const question: PlanQuestion = {
    machine,
    inputs: machineInputs,
    loadCases,
    limits: limitsFigures(desk),
    rear: endQuestion('rear', rear.shock.adjuster, converted.machine.rear, machine, moves),
    front: endQuestion('front', front.fork?.adjuster, converted.machine.front, machine, moves),
    ...(job.choice === undefined ? {} : { choice: job.choice }),
  };
  return { ok: true, inputs: { question, figures: take.figures, notes, targetSet } };
}

function weighedMachine(desk: Desk, converted: Converted): MachineSI | null {
  const { machine, weighing } = converted.machine;
  const answer = weigh(machine, weighing);
  if (answer.kind === 'body') return { ...machine, sprung: answer.sprung };
  desk.problems.push({
    path: 'machine.weighing',
    code: 'impossible',
    message: `Weighing: no place of the machine's mass puts ${weighing.front.toFixed(1)} kg on the front wheel and ${weighing.rear.toFixed(1)} kg on the rear with these springs and preloads. Check both scale readings and the collar.`,
  });
  return null;
}

/** A load with its inputs, for the fuel that sag is wanted at and for a full tank. */
interface Load {
  readonly load: FirstMoments;
  readonly fullTank: FirstMoments;
  readonly inputs: readonly UncertainInput[];
  readonly inputsFullTank: readonly UncertainInput[];
}

function loadOf(
  desk: Desk,
  id: string,
  figures: LoadFigures,
  machine: MachineSI,
  machineInputs: readonly UncertainInput[],
  moves: readonly FigureMoves[],
): Load | null {
  const below = `loads.${id}.`;
  if (figures.kind === 'aboard') {
    return {
      load: figures.load,
      fullTank: figures.fullTank,
      inputs: inputsBelow(moves, { [`${below}load.`]: ['load.'] }),
      inputsFullTank: inputsBelow(moves, { [`${below}fullTank.`]: ['load.'] }),
    };
  }
  const { front, rear, height } = figures;
  const alone = machine.sprung.mass + machine.rear.unsprung + machine.front.unsprung;
  const path = `loadCases.${id}.scales`;
  if (!(front + rear > alone + 0.5)) {
    desk.problems.push({
      path,
      code: 'impossible',
      message: `Scales with all aboard: ${(front + rear).toFixed(1)} kg together, but the machine alone weighs ${alone.toFixed(1)} kg; they must read more. Were they read with everybody aboard?`,
    });
    return null;
  }
  const answer = weighLoad(machine, { front, rear }, height);
  if (answer.kind === 'not found') {
    desk.problems.push({
      path,
      code: 'impossible',
      message: `Scales with all aboard: no place of a load puts ${front.toFixed(1)} kg on the front wheel and ${rear.toFixed(1)} kg on the rear. Check both readings.`,
    });
    return null;
  }
  const { mass, x } = answer.load;
  const load = { mass, momentX: mass * x, momentHeight: mass * height };
  const aboard = { front, rear, height };
  const inputs = throughLoadWeighing({ ...machine, load, aboard }, [
    ...machineInputs,
    ...inputsBelow(moves, { [below]: ['aboard.'] }),
  ]).map((input) => ({ ...input, moves: input.moves.filter((move) => move.parameter.startsWith('load.')) }));
  const { topUp } = figures;
  const fullTank = {
    mass: load.mass + topUp.mass,
    momentX: load.momentX + topUp.momentX,
    momentHeight: load.momentHeight + topUp.momentHeight,
  };
  const topUpInputs = inputsBelow(moves, { [`${below}topUp.`]: ['load.'] });
  return { load, fullTank, inputs, inputsFullTank: [...inputs, ...topUpInputs] };
}

function loadCaseSI(desk: Desk, id: string, loadCase: LoadCase, load: Load, set: TargetSet): LoadCaseSI {
  return {
    id,
    share: loadCase.share / 100,
    load: load.load,
    loadFullTank: load.fullTank,
    inputs: load.inputs,
    inputsFullTank: load.inputsFullTank,
    wanted: wantedOfLoad(desk, id, loadCase, set),
    places: placeLoads(desk, loadCase),
  };
}

function endQuestion(
  name: 'rear' | 'front',
  adjuster: Adjuster | undefined,
  figures: EndFigures,
  machine: MachineSI,
  moves: readonly FigureMoves[],
): EndQuestion {
  const count = machine[name].struts.length;
  const strutsOf = (figure: string): readonly string[] =>
    Array.from({ length: count }, (_, i) => `${name}.struts.${i}.${figure}`);
  const choices = Object.entries(figures.choices).map(([id, choice]): SpringChoiceSI => {
    const below = `machine.${name}.choices.${id}.`;
    return {
      id,
      fitted: id === figures.fitted,
      ...choiceFigures(choice),
      inputs: inputsBelow(moves, {
        [`${below}spring.`]: strutsOf('spring.'),
        [`${below}preloadAtZero`]: strutsOf('preload'),
      }),
    };
  });
  return { adjuster: adjusterOf(adjuster), choices, found: figures.found, ...margins };
}

function choiceFigures(choice: ChoiceFigures): Omit<SpringChoiceSI, 'id' | 'fitted' | 'inputs'> {
  const { spring, preloadAtZero, freeLength, solidLength } = choice;
  return { spring, preloadAtZero, freeLength, solidLength };
}
