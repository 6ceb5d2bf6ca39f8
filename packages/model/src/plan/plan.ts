import { attitudeAt } from '../attitude/attitude.ts';
import { type AxleLoads, limitsOf } from '../limits/limits.ts';
import { FRONT_TRAVEL, gradientAt, REAR_TRAVEL } from '../statics/gradient.ts';
import { GRAVITY } from '../statics/machine.ts';
import { type Parameters, parametersOf, putOn } from '../statics/parameters.ts';
import { type Prepared, prepare } from '../statics/prepared.ts';
import { frictionBand, type Rest, restOf } from '../statics/rest.ts';
import { figureDerivatives, stateDerivatives } from '../uncertainty/derivatives.ts';
import { type Direction, directionsOf } from '../uncertainty/inputs.ts';
import { mergeInputs } from '../uncertainty/merge.ts';
import { halfWidthAt } from '../uncertainty/spread.ts';
import type { AsFound, LoadCaseResult, Plan } from './answer.ts';
import { planEnd } from './endPlan.ts';
import type { LoadCaseSI, PlanQuestion } from './question.ts';

/**
 * The plan: every load against its limits first, then every spring with every load at both ends, and one suggestion for each
 * end. Overload is never cured with preload: a load over a limit is refused, and no collar is planned for it.
 */
export function plan(question: PlanQuestion): Plan {
  const parameters = parametersOf(question.machine);
  const prepared = prepare(parameters.machine);
  const loadCases = question.loadCases.map((loadCase) => withLoad(question, parameters, prepared, loadCase));
  putOn(parameters, question.machine.load);
  const alone = asFound(parameters, prepared, directionsOf(parameters, question.inputs));
  const refused = new Set(loadCases.filter((load) => load.refused).map((load) => load.loadCase));
  return {
    alone,
    loadCases,
    rear: planEnd(question, 'rear', refused),
    front: planEnd(question, 'front', refused),
  };
}

function withLoad(
  question: PlanQuestion,
  parameters: Parameters,
  prepared: Prepared,
  loadCase: LoadCaseSI,
): LoadCaseResult {
  putOn(parameters, loadCase.load);
  const directions = directionsOf(parameters, mergeInputs(question.inputs, loadCase.inputs));
  const found = asFound(parameters, prepared, directions);
  putOn(parameters, loadCase.loadFullTank);
  const full = directionsOf(parameters, mergeInputs(question.inputs, loadCase.inputsFullTank));
  const answer = restOf(prepared);
  const loadsFullTank = answer.kind === 'rest' ? axleLoads(parameters, prepared, answer.rest, full) : null;
  const limits = loadsFullTank === null ? [] : limitsOf(loadsFullTank, question.limits, loadCase.places);
  return {
    ...found,
    loadCase: loadCase.id,
    loadsFullTank,
    limits,
    refused: limits.some((limit) => limit.verdict === 'over'),
  };
}

/** The machine as found with the load it carries now. */
function asFound(parameters: Parameters, prepared: Prepared, directions: readonly Direction[]): AsFound {
  const answer = restOf(prepared);
  if (answer.kind !== 'rest')
    return { asFound: answer, attitude: null, travel: null, band: null, loads: null };
  const { rest } = answer;
  const derivatives = stateDerivatives(parameters, prepared, Float64Array.from(rest.state), directions);
  const travel = {
    rear: { value: rest.rear.travel, plusMinus: halfWidthAt(directions, derivatives, REAR_TRAVEL, 4) },
    front: { value: rest.front.travel, plusMinus: halfWidthAt(directions, derivatives, FRONT_TRAVEL, 4) },
  };
  return {
    asFound: answer,
    attitude: attitudeAt(prepared, rest.state),
    travel,
    band: frictionBand(prepared, rest),
    loads: axleLoads(parameters, prepared, rest, directions),
  };
}

/** Wheel loads as masses with their ±; the whole follows from both, since their doubts hang together. */
function axleLoads(
  parameters: Parameters,
  prepared: Prepared,
  rest: Rest,
  directions: readonly Direction[],
): AxleLoads {
  const state = Float64Array.from(rest.state);
  const derivatives = stateDerivatives(parameters, prepared, state, directions);
  const count = 3;
  const slopes = figureDerivatives(
    parameters,
    prepared,
    state,
    directions,
    derivatives,
    (machine, beside, out) => {
      gradientAt(machine, beside, 0);
      const { rear, front } = machine.gradient;
      out[0] = front.wheelLoad / GRAVITY;
      out[1] = rear.wheelLoad / GRAVITY;
      out[2] = out[0] + out[1];
    },
    count,
  );
  const front = rest.front.wheelLoad / GRAVITY;
  const rear = rest.rear.wheelLoad / GRAVITY;
  return {
    front,
    frontPlusMinus: halfWidthAt(directions, slopes, 0, count),
    rear,
    rearPlusMinus: halfWidthAt(directions, slopes, 1, count),
    total: front + rear,
    totalPlusMinus: halfWidthAt(directions, slopes, 2, count),
  };
}
