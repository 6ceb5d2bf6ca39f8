import { attitudeAt } from '../attitude/attitude.ts';
import { type AxleLoads, limitsOf } from '../limits/limits.ts';
import { gradientAt } from '../statics/gradient.ts';
import { GRAVITY } from '../statics/machine.ts';
import { type Parameters, parametersOf, putOn } from '../statics/parameters.ts';
import { type Prepared, prepare } from '../statics/prepared.ts';
import { type Rest, restOf } from '../statics/rest.ts';
import { figureDerivatives, stateDerivatives } from '../uncertainty/derivatives.ts';
import { type Direction, directionsOf } from '../uncertainty/inputs.ts';
import { mergeInputs } from '../uncertainty/merge.ts';
import { halfWidthAt } from '../uncertainty/spread.ts';
import type { LoadCaseResult, Plan } from './answer.ts';
import { planEnd } from './endPlan.ts';
import type { LoadCaseSI, PlanQuestion } from './question.ts';

/**
 * The plan: every load against its limits first, then every spring with every load at both ends, and one suggestion for each
 * end. Overload is never cured with preload: a load over a limit is refused, and no collar is planned for it.
 */
export function plan(question: PlanQuestion): Plan {
  const loadCases = loadCaseResults(question);
  const refused = new Set(loadCases.filter((load) => load.refused).map((load) => load.loadCase));
  return {
    loadCases,
    rear: planEnd(question, 'rear', refused),
    front: planEnd(question, 'front', refused),
  };
}

function loadCaseResults(question: PlanQuestion): readonly LoadCaseResult[] {
  const parameters = parametersOf(question.machine);
  const prepared = prepare(parameters.machine);
  return question.loadCases.map((loadCase) => {
    putOn(parameters, loadCase.load);
    const asFound = restOf(prepared);
    const attitude = asFound.kind === 'rest' ? attitudeAt(prepared, asFound.rest.state) : null;
    const limits = limitsAtFullTank(question, parameters, prepared, loadCase);
    return {
      loadCase: loadCase.id,
      asFound,
      attitude,
      limits,
      refused: limits.some((limit) => limit.verdict === 'over'),
    };
  });
}

function limitsAtFullTank(
  question: PlanQuestion,
  parameters: Parameters,
  prepared: Prepared,
  loadCase: LoadCaseSI,
): LoadCaseResult['limits'] {
  putOn(parameters, loadCase.loadFullTank);
  const answer = restOf(prepared);
  if (answer.kind !== 'rest') return [];
  const directions = directionsOf(parameters, mergeInputs(question.inputs, loadCase.inputsFullTank));
  const loads = axleLoads(parameters, prepared, answer.rest, directions);
  return limitsOf(loads, question.limits, loadCase.places);
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
