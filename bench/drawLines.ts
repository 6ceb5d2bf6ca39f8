import type { PlanQuestion } from '@sagwright/model/plan/question';
import { REAR_TRAVEL } from '@sagwright/model/statics/gradient';
import { parametersOf, putOn } from '@sagwright/model/statics/parameters';
import { prepare } from '@sagwright/model/statics/prepared';
import { type Settled, settle, startState } from '@sagwright/model/statics/settle';
import { stateDerivatives } from '@sagwright/model/uncertainty/derivatives';
import { directionsOf } from '@sagwright/model/uncertainty/inputs';
import { mergeInputs } from '@sagwright/model/uncertainty/merge';
import { drawInputs } from '@sagwright/model/uncertainty/monteCarlo';
import { halfWidthAt, halfWidthOf } from '@sagwright/model/uncertainty/spread';
import { invented } from './question.ts';
import { type Line, rounded } from './table.ts';
import { timesOf } from './times.ts';
import { twinShocks } from './tourer.ts';

const DRAWS = 10_000;
const RUNS = 10;

/** One load case with all its inputs drawn many times, beside its ± by derivatives; stops where the two disagree. */
export function drawLines(): readonly Line[] {
  const question = invented(twinShocks);
  let ratio = 0;
  const times = timesOf(
    () => {
      ratio = drawnOverDerived(question);
    },
    2,
    RUNS,
  );
  if (!(Math.abs(ratio - 1) < 0.05)) {
    throw new Error(
      `the drawn ± of the rear sag is ${ratio} of the derived one; within 0.05 of 1 is expected`,
    );
  }
  const inputs = question.inputs.length + question.loadCases[3]!.inputs.length;
  return [
    { name: `One load case, ${DRAWS} draws of ${inputs} inputs, each solved cold` },
    { name: 'median', figure: rounded(times.median), unit: 'ms' },
    { name: '95th percentile', figure: rounded(times.p95), unit: 'ms' },
    { name: 'drawn ± of the rear sag over the derived one', figure: ratio.toFixed(3), unit: '' },
  ];
}

function drawnOverDerived(question: PlanQuestion): number {
  const parameters = parametersOf(question.machine);
  const prepared = prepare(parameters.machine);
  const loadCase = question.loadCases[3]!;
  putOn(parameters, loadCase.load);
  const directions = directionsOf(parameters, mergeInputs(question.inputs, loadCase.inputs));
  const state = new Float64Array(4);
  const settled: Settled = { converged: false, residual: 0, iterations: 0 };
  startState(prepared, state);
  settle(prepared, state, 0, 'none', settled);
  const derived = halfWidthAt(
    directions,
    stateDerivatives(parameters, prepared, state, directions),
    REAR_TRAVEL,
    4,
  );
  let sum = 0;
  let squares = 0;
  drawInputs(parameters, prepared, directions, DRAWS, 1, () => {
    startState(prepared, state);
    settle(prepared, state, 0, 'none', settled);
    sum += state[REAR_TRAVEL]!;
    squares += state[REAR_TRAVEL]! ** 2;
  });
  const deviation = Math.sqrt(squares / DRAWS - (sum / DRAWS) ** 2);
  return halfWidthOf(deviation) / derived;
}
