import type { StrutSI } from '../dampers/strut.ts';
import type { MachineSI } from '../statics/machine.ts';
import { parametersOf, putOn } from '../statics/parameters.ts';
import { type EndName, prepare } from '../statics/prepared.ts';
import { directionsOf, type UncertainInput } from '../uncertainty/inputs.ts';
import { mergeInputs } from '../uncertainty/merge.ts';
import type { EndPlan, Planned, PlannedLoad, PlannedSetUp, PlannedSpring } from './answer.ts';
import { withoutStruts } from './endPlan.ts';
import { withPressureSet } from './pressureInputs.ts';
import type { EndQuestion, LoadCaseSI, PlanQuestion, SpringChoiceSI } from './question.ts';
import { settingInputs } from './settingDoubt.ts';
import { standOf } from './stand.ts';

/** Each load with both ends set at once: each end was planned with the other as found, so what is shown is worked out again. */
export function bothEndsPlanned(question: PlanQuestion, rear: EndPlan, front: EndPlan): PlannedSetUp {
  const loadCases = question.loadCases.map((loadCase): PlannedLoad => {
    const { machine, inputs, rear: rearCell, front: frontCell } = asPlanned(question, rear, front, loadCase);
    const parameters = parametersOf(machine);
    const prepared = prepare(parameters.machine);
    putOn(parameters, loadCase.load);
    return {
      loadCase: loadCase.id,
      stand: standOf(parameters, prepared, directionsOf(parameters, inputs)),
      rear: rearCell?.setting ?? null,
      front: frontCell?.setting ?? null,
    };
  });
  return {
    rear: plannedSpring(question, 'rear', rear),
    front: plannedSpring(question, 'front', front),
    loadCases,
  };
}

/** The machine as it is planned for a load, with what is uncertain about both, and the cells of the plan that it is set by. */
export interface AsPlanned {
  readonly machine: MachineSI;
  readonly inputs: readonly UncertainInput[];
  readonly rear: Planned | null;
  readonly front: Planned | null;
}

/** Both ends at their planned setting for a load; an end without a plan for it is as found. The load is not on it yet. */
export function asPlanned(
  question: PlanQuestion,
  rear: EndPlan,
  front: EndPlan,
  loadCase: LoadCaseSI,
): AsPlanned {
  const rearSpring = plannedSpring(question, 'rear', rear).spring;
  const frontSpring = plannedSpring(question, 'front', front).spring;
  const rearCell = cellOf(rear, rearSpring, loadCase.id);
  const frontCell = cellOf(front, frontSpring, loadCase.id);
  const rearSet = withEnd(question, question.machine, 'rear', rearSpring, rearCell);
  const rearInputs = inputsOf(question, question.inputs, 'rear', rearSpring, rearCell);
  const inputs = inputsOf(question, rearInputs, 'front', frontSpring, frontCell);
  return {
    machine: withEnd(question, rearSet, 'front', frontSpring, frontCell),
    inputs: mergeInputs(inputs, loadCase.inputs),
    rear: rearCell,
    front: frontCell,
  };
}

function plannedSpring(question: PlanQuestion, name: EndName, plan: EndPlan): PlannedSpring {
  const picked = question.choice?.[name];
  if (picked !== undefined) return { spring: picked, by: 'choice' };
  if (plan.suggestion.kind === 'spring') return { spring: plan.suggestion.spring, by: 'suggestion' };
  return { spring: question[name].choices.find((choice) => choice.fitted)?.id ?? null, by: 'as found' };
}

function choiceOf(question: PlanQuestion, name: EndName, spring: string | null): SpringChoiceSI | null {
  return question[name].choices.find((choice) => choice.id === spring) ?? null;
}

/** Inputs with what an end is set to: those of the spring and pressure that it replaces act through the weighing only. */
function inputsOf(
  question: PlanQuestion,
  inputs: readonly UncertainInput[],
  name: EndName,
  spring: string | null,
  cell: Planned | null,
): readonly UncertainInput[] {
  const choice = choiceOf(question, name, spring);
  if (choice === null || cell === null) return inputs;
  const { setting, pressure } = cell;
  const { struts } = question.machine[name];
  const counted = setting === null ? [] : settingInputs(question[name].doubt, name, setting, struts.length);
  const own = staysAsFound(choice, cell)
    ? inputs
    : mergeInputs(withoutStruts(name, inputs), choice.inputs, counted);
  if (!pressure?.isPlanned) return own;
  return withPressureSet(name, own, question[name].pressure!, pressure.set, struts.length);
}

/** Neither spring nor adjuster is touched. */
function staysAsFound({ fitted }: SpringChoiceSI, { setting }: Planned): boolean {
  return fitted && setting === null;
}

function cellOf(plan: EndPlan, spring: string | null, loadCase: string): Planned | null {
  const cell = plan.springs
    .find((each) => each.spring === spring)
    ?.cells.find((each) => each.loadCase === loadCase);
  return cell?.kind === 'planned' ? cell.cell : null;
}

/** The machine with a spring at its planned setting on every strut of an end; as it is where that end has no plan. */
function withEnd(
  question: PlanQuestion,
  machine: MachineSI,
  name: EndName,
  spring: string | null,
  cell: Planned | null,
): MachineSI {
  const choice = choiceOf(question, name, spring);
  if (choice === null || cell === null) return machine;
  const { pressure } = cell;
  const { struts: found } = machine[name];
  const withAir = (strut: StrutSI): StrutSI =>
    strut.air === undefined || pressure?.isPlanned !== true
      ? strut
      : { ...strut, air: { ...strut.air, pressure: pressure.set } };
  const withSpring = (strut: StrutSI, i: number): StrutSI =>
    staysAsFound(choice, cell)
      ? strut
      : { ...strut, spring: choice.spring, preload: preloadOf(question[name], choice, cell, i) };
  const struts = found.map((strut, i) => withSpring(withAir(strut), i));
  return { ...machine, [name]: { ...machine[name], struts } };
}

/** Of one strut: as set, or where nothing is set, with the adjuster where it was found. */
function preloadOf(
  { found }: EndQuestion,
  { preloadAtZero }: SpringChoiceSI,
  { setting }: Planned,
  strut: number,
): number {
  return preloadAtZero + (setting?.position ?? found?.[strut] ?? 0);
}
