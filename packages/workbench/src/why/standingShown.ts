import { asChosen } from '@sagwright/model/plan/question';
import { asPlanned } from '@sagwright/model/plan/together';
import { mergeInputs } from '@sagwright/model/uncertainty/merge';
import type { JobPlan } from '../path.ts';
import { type Standing, standing } from './standing.ts';

/** Which set-up of a load is looked at. */
export type SetUpShown = 'asFound' | 'planned';

/** A load (null: the machine alone, as found) at rest in a set-up, for its ± and what they are made of. */
export function standingShown(planned: JobPlan, load: string | null, setUp: SetUpShown): Standing | null {
  const { question } = planned.inputs;
  if (load === null) return standing(question.machine, null, question.inputs);
  const loadCase = question.loadCases.find((each) => each.id === load)!;
  if (setUp === 'asFound') {
    return standing(question.machine, loadCase.load, mergeInputs(question.inputs, loadCase.inputs));
  }
  const { machine, inputs } = asPlanned(asChosen(question), planned.plan.rear, planned.plan.front, loadCase);
  return standing(machine, loadCase.load, inputs);
}
