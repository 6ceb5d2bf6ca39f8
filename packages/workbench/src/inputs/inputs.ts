import type { FirstMoments } from '@sagwright/model/masses/pointMass';
import type { EndQuestion, LoadCaseSI, PlanQuestion, SpringChoiceSI } from '@sagwright/model/plan/question';
import type { FinalDriveSI } from '@sagwright/model/rear/finalDrive';
import type { MachineSI } from '@sagwright/model/statics/machine';
import { weigh, weighLoad } from '@sagwright/model/statics/weighing';
import type { UncertainInput } from '@sagwright/model/uncertainty/inputs';
import { throughLoadWeighing, throughWeighing } from '@sagwright/model/uncertainty/weighed';
import type { JobDocument } from '@sagwright/records/schema';
import type { Adjuster } from '@sagwright/records/schema/adjusters';
import type { LoadCase } from '@sagwright/records/schema/loads';
import type { TargetSet } from '@sagwright/records/schema/targets';
import type { ShockDocument } from '../shock/document.ts';
import { adjusterDoubt, adjusterOf } from './adjusters.ts';
import { chosenMachine } from './chosen.ts';
import { type Converted, convert, partName, partsOf } from './convert.ts';
import { type Desk, deskOf, type InputProblem, inOrder, type Note, note } from './desk.ts';
import { driveOf } from './drive.ts';
import { lengthAdjusterFigures } from './lengthAdjuster.ts';
import { type LimitReadings, limitReadings } from './limitReadings.ts';
import { limitsFigures } from './limits.ts';
import { type LoadFigures, placeLoads } from './loads.ts';
import { margins } from './margins.ts';
import { type RaisedHeight, raisedHeight } from './massCentre.ts';
import { type FigureMoves, inputsBelow, movesByPart } from './moves.ts';
import { outOfScope } from './scope.ts';
import { pressureRange } from './shockAir.ts';
import { shockGasFigures } from './shockGas.ts';
import { takeFitFigures } from './springFit.ts';
import { type StanceFigures, stanceFigures } from './stance.ts';
import { takeFrom, type UsedFigure } from './take.ts';
import { tapedPlacesOf } from './tapedPlaces.ts';
import type { TapedPlaces } from './tapedRows.ts';
import { tapeOf } from './tapeFitted.ts';
import { targetSetInUse, wantedOfLoad } from './targets.ts';

/** A job made into a question for the physics, with every figure that went into it. */
export interface Inputs {
  readonly question: PlanQuestion;
  /** Null where nobody said how the rear wheel is driven. */
  readonly drive: FinalDriveSI | null;
  /** Points, beam, braking and driving: what is told beside the balance. */
  readonly stance: StanceFigures;
  /** By a wheel that was raised; null where none was. */
  readonly massCentre: RaisedHeight | null;
  /** Every figure by its path: typed and assumed. */
  readonly figures: ReadonlyMap<string, UsedFigure>;
  /** Hard points as a tape gives them; null where none was laid. */
  readonly places: TapedPlaces | null;
  /** What limits are held against beside the loads. */
  readonly limits: LimitReadings;
  /** What is told of the rear shock by itself. */
  readonly shock: ShockDocument;
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
  const desk: Desk = { ...deskOf(job, takeFrom()), tape: tapeOf(job), places: tapedPlacesOf(job) };
  const { take, problems, notes } = desk;
  const parts = partsOf(job);
  const converted = convert(desk, parts);
  if (problems.length > 0) return { ok: false, problems };
  const drive = driveOf(desk, converted.machine.machine.rear);
  if (problems.length > 0) return { ok: false, problems };
  if (job.machine.ridingHeightControl !== undefined && job.machine.ridingHeightControl !== 'none') {
    note(desk, 'riding height control', 'machine.ridingHeightControl');
  }
  const machine = weighedMachine(desk, converted);
  if (machine === null) return { ok: false, problems };
  const moves = movesByPart(desk, parts);
  const machineInputs = throughWeighing(
    { ...machine, weighing: converted.machine.weighing },
    inputsBelow(moves.get(partName({ of: 'machine', id: '' }))!, {
      'machine.': [''],
      'weighing.': ['weighing.'],
    }),
  );
  const targetSet = targetSetInUse(desk);
  const loadCases = inOrder(job.loadCases).flatMap(([id, loadCase]) => {
    const figures = converted.loads[id]!;
    const own = moves.get(partName({ of: 'loads', id }))!;
    const load = loadOf(desk, id, figures, machine, machineInputs, own);
    return load === null ? [] : [loadCaseSI(desk, id, loadCase, load, targetSet.set)];
  });
  const chosen = chosenMachine(desk, machine, machineInputs);
  const stance = stanceFigures(desk);
  if (problems.length > 0) return { ok: false, problems };
  const { rear, front } = job.machine;
  const question: PlanQuestion = {
    machine,
    inputs: machineInputs,
    ...(chosen !== null && { chosen }),
    loadCases,
    limits: limitsFigures(desk),
    rear: endQuestion(desk, 'rear', rear.shock.adjuster, converted, moves),
    front: endQuestion(desk, 'front', front.fork?.adjuster, converted, moves),
    ...(job.choice === undefined ? {} : { choice: job.choice }),
  };
  takeFitFigures(desk);
  const limits = limitReadings(desk);
  const shock: ShockDocument = { lengthAdjuster: lengthAdjusterFigures(desk), gas: shockGasFigures(desk) };
  const massCentre = raisedHeight(desk);
  return {
    ok: true,
    inputs: {
      question,
      drive,
      stance,
      massCentre,
      places: desk.places,
      limits,
      shock,
      figures: take.figures,
      notes,
      targetSet,
    },
  };
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
  if (figures.kind === 'aboard') {
    return {
      load: figures.load,
      fullTank: figures.fullTank,
      inputs: inputsBelow(moves, { 'load.': ['load.'] }),
      inputsFullTank: inputsBelow(moves, { 'fullTank.': ['load.'] }),
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
    ...inputsBelow(moves, { front: ['aboard.front'], rear: ['aboard.rear'], height: ['aboard.height'] }),
  ]).map((input) => ({ ...input, moves: input.moves.filter((move) => move.parameter.startsWith('load.')) }));
  const { topUp } = figures;
  const fullTank = {
    mass: load.mass + topUp.mass,
    momentX: load.momentX + topUp.momentX,
    momentHeight: load.momentHeight + topUp.momentHeight,
  };
  const topUpInputs = inputsBelow(moves, { 'topUp.': ['load.'] });
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
    places: placeLoads(desk, id, loadCase),
  };
}

/** What can be done at an end today: the springs at hand, the one fitted, and the one that a person picked. */
function endQuestion(
  desk: Desk,
  name: 'rear' | 'front',
  adjuster: Adjuster | undefined,
  converted: Converted,
  moves: ReadonlyMap<string, readonly FigureMoves[]>,
): EndQuestion {
  const { fitted, found } = converted.machine[name];
  const count = converted.machine.machine[name].struts.length;
  const strutsOf = (figure: string): readonly string[] =>
    Array.from({ length: count }, (_, i) => `${name}.struts.${i}.${figure}`);
  const choices = inOrder(desk.job.springs).flatMap(([id, { end, hand }]): SpringChoiceSI[] => {
    const choice = converted.choices[id];
    if (end !== name || choice === undefined) return [];
    if (hand === false && id !== fitted && id !== desk.job.choice?.[name]) return [];
    const inputs = inputsBelow(moves.get(partName({ of: 'choices', id }))!, {
      'spring.': strutsOf('spring.'),
      preloadAtZero: strutsOf('preload'),
    });
    return [{ id, fitted: id === fitted, ...choice, inputs }];
  });
  const pressure = name === 'rear' ? pressureRange(desk) : null;
  const doubt = adjusterDoubt(desk, name, adjuster);
  return {
    adjuster: adjusterOf(adjuster),
    choices,
    found,
    ...(pressure !== null && { pressure }),
    ...(doubt !== null && { doubt }),
    ...margins,
  };
}
