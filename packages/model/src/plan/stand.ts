import { attitudeAt } from '../attitude/attitude.ts';
import type { AxleLoads } from '../limits/limits.ts';
import { gradientAt, type State } from '../statics/gradient.ts';
import { GRAVITY } from '../statics/machine.ts';
import type { Parameters } from '../statics/parameters.ts';
import type { EndName, Prepared } from '../statics/prepared.ts';
import { frictionBand, type Rest, restOf } from '../statics/rest.ts';
import { figureDerivatives, stateDerivatives } from '../uncertainty/derivatives.ts';
import type { Direction } from '../uncertainty/inputs.ts';
import { halfWidthAt } from '../uncertainty/spread.ts';
import { travelHalfWidths } from '../uncertainty/travelSpread.ts';
import type { Stand } from './answer.ts';

/** How the machine stands with the springs, preloads and load it has now. */
export function standOf(parameters: Parameters, prepared: Prepared, directions: readonly Direction[]): Stand {
  const answer = restOf(prepared);
  if (answer.kind !== 'rest') return { answer, attitude: null, travel: null, band: null, loads: null };
  const { rest } = answer;
  const state = Float64Array.from(rest.state);
  const derivatives = stateDerivatives(parameters, prepared, state, directions);
  const spread = travelHalfWidths(parameters, prepared, state, directions, derivatives);
  const travel = {
    rear: { value: rest.rear.travel, plusMinus: spread.rear },
    front: { value: rest.front.travel, plusMinus: spread.front },
  };
  return {
    answer,
    attitude: attitudeAt(prepared, rest.state),
    travel,
    band: frictionBand(prepared, rest),
    loads: axleLoads(parameters, prepared, rest, directions, derivatives),
  };
}

/**
 * Wheel loads as masses with their ±; the whole follows from both, since their doubts hang together.
 * derivatives  of the rest, as `stateDerivatives` gives them
 */
export function axleLoads(
  parameters: Parameters,
  prepared: Prepared,
  rest: Rest,
  directions: readonly Direction[],
  derivatives: Float64Array,
): AxleLoads {
  const count = 3;
  const slopes = figureDerivatives(
    parameters,
    prepared,
    Float64Array.from(rest.state),
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

/** Wheel loads of a machine that tips: the wheel it goes over bears everything. `state` may be any, masses hang on none. */
export function loadsOnOneWheel(
  parameters: Parameters,
  prepared: Prepared,
  over: EndName,
  directions: readonly Direction[],
): AxleLoads {
  const state = new Float64Array(4);
  const unmoved = new Float64Array(4 * directions.length);
  const whole = new Float64Array(1);
  wholeMass(prepared, state, whole);
  const slopes = figureDerivatives(parameters, prepared, state, directions, unmoved, wholeMass, 1);
  const [total, totalPlusMinus] = [whole[0]!, halfWidthAt(directions, slopes, 0, 1)];
  const on = (end: EndName): readonly [number, number] => (over === end ? [total, totalPlusMinus] : [0, 0]);
  const [front, frontPlusMinus] = on('front');
  const [rear, rearPlusMinus] = on('rear');
  return { front, frontPlusMinus, rear, rearPlusMinus, total, totalPlusMinus };
}

function wholeMass({ machine }: Prepared, _: State, out: Float64Array): void {
  out[0] = machine.sprung.mass + machine.load.mass + machine.rear.unsprung + machine.front.unsprung;
}
