import { type AxleLoads, limitsOf } from '../limits/limits.ts';
import { type Parameters, parametersOf, putOn } from '../statics/parameters.ts';
import { type Prepared, prepare } from '../statics/prepared.ts';
import { restOf } from '../statics/rest.ts';
import { stateDerivatives } from '../uncertainty/derivatives.ts';
import { type Direction, directionsOf } from '../uncertainty/inputs.ts';
import { mergeInputs } from '../uncertainty/merge.ts';
import type { LoadCaseResult, Plan } from './answer.ts';
import { planEnd } from './endPlan.ts';
import { asChosen, type LoadCaseSI, type PlanQuestion } from './question.ts';
import { axleLoads, loadsOnOneWheel, standOf } from './stand.ts';
import { bothEndsPlanned } from './together.ts';

/**
 * The plan: every load against its limits first, then every spring with every load at both ends, one suggestion for each
 * end, and the machine with both ends set. Overload is never cured with preload: a load over a limit is refused, and no
 * collar is planned for it.
 */
export function plan(question: PlanQuestion): Plan {
  const parameters = parametersOf(question.machine);
  const prepared = prepare(parameters.machine);
  const loadCases = question.loadCases.map((loadCase) => withLoad(question, parameters, prepared, loadCase));
  putOn(parameters, question.machine.load);
  const alone = standOf(parameters, prepared, directionsOf(parameters, question.inputs));
  const refused = new Set(loadCases.filter((load) => load.refused).map((load) => load.loadCase));
  const chosen = asChosen(question);
  const rear = planEnd(chosen, 'rear', refused);
  const front = planEnd(chosen, 'front', refused);
  return { alone, loadCases, rear, front, planned: bothEndsPlanned(chosen, rear, front) };
}

function withLoad(
  question: PlanQuestion,
  parameters: Parameters,
  prepared: Prepared,
  loadCase: LoadCaseSI,
): LoadCaseResult {
  putOn(parameters, loadCase.load);
  const directions = directionsOf(parameters, mergeInputs(question.inputs, loadCase.inputs));
  const asFound = standOf(parameters, prepared, directions);
  putOn(parameters, loadCase.loadFullTank);
  const full = directionsOf(parameters, mergeInputs(question.inputs, loadCase.inputsFullTank));
  const loadsFullTank = wheelLoads(parameters, prepared, full);
  const limits = loadsFullTank === null ? [] : limitsOf(loadsFullTank, question.limits, loadCase.places);
  return {
    loadCase: loadCase.id,
    asFound,
    loadsFullTank,
    limits,
    refused: limits.some((limit) => limit.verdict === 'over'),
  };
}

/** What the wheels bear with what is aboard now, tipping included: overload is told all the same. */
function wheelLoads(
  parameters: Parameters,
  prepared: Prepared,
  directions: readonly Direction[],
): AxleLoads | null {
  const answer = restOf(prepared);
  switch (answer.kind) {
    case 'rest': {
      const state = Float64Array.from(answer.rest.state);
      const derivatives = stateDerivatives(parameters, prepared, state, directions);
      return axleLoads(parameters, prepared, answer.rest, directions, derivatives);
    }
    case 'tips':
      return loadsOnOneWheel(parameters, prepared, answer.over, directions);
    case 'no rest':
      return null;
  }
}
