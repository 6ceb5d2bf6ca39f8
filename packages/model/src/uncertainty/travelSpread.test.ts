import { describe, expect, test } from 'vitest';
import { parametersOf } from '../statics/parameters.ts';
import { prepare } from '../statics/prepared.ts';
import { restOf } from '../statics/rest.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { stateDerivatives } from './derivatives.ts';
import { directionsOf, type UncertainInput } from './inputs.ts';
import { HALF_WIDTH_90 } from './spread.ts';
import { type TravelSpread, travelHalfWidths } from './travelSpread.ts';

function spreadOf(rate: number, preload: number, ...inputs: readonly UncertainInput[]): TravelSpread {
  const parameters = parametersOf(levelMachine(plainStrut(rate, preload)));
  const prepared = prepare(parameters.machine);
  const answer = restOf(prepared);
  if (answer.kind !== 'rest') throw new Error(answer.kind);
  const state = Float64Array.from(answer.rest.state);
  const directions = directionsOf(parameters, inputs);
  const derivatives = stateDerivatives(parameters, prepared, state, directions);
  return travelHalfWidths(parameters, prepared, state, directions, derivatives);
}

function both(name: string, figure: string, deviation: number): UncertainInput {
  const moves = ['rear', 'front'].map((end) => ({ parameter: `${end}.${figure}`, by: 1 }));
  return { name, deviation, moves };
}

describe('the ± of wheel travel', () => {
  test('of wheels that are free is that of the balance', () => {
    // Both preloads at once, so the machine stays level: a millimetre of preload is 2 mm at the wheel.
    const spread = spreadOf(40_000, 0.01, both('preload', 'struts.0.preload', 0.001));
    expect(spread.rear).toBeCloseTo(0.002 * HALF_WIDTH_90, 9);
    expect(spread.front).toBeCloseTo(0.002 * HALF_WIDTH_90, 9);
  });

  test('of a wheel held topped out beyond doubt is none', () => {
    // The stop bears 219.335 N at the wheel; 1 mm of preload is 20 N there, ± 33 N.
    const spread = spreadOf(40_000, 0.06, both('preload', 'struts.0.preload', 0.001));
    expect(spread).toEqual({ rear: 0, front: 0 });
  });

  test('of a wheel that may well leave its stop is not known', () => {
    // 8 mm of preload are 160 N there, ± 263 N: it may stand free.
    const spread = spreadOf(40_000, 0.06, both('preload', 'struts.0.preload', 0.008));
    expect(spread).toEqual({ rear: null, front: null });
  });

  test('of a wheel on the metal is that of the metal', () => {
    // 230.665 N on the stop; 1 mm of stroke at a ratio of 0.5.
    const spread = spreadOf(15_000, 0, both('stroke', 'strokeMax', 0.001));
    expect(spread.rear).toBeCloseTo(0.002 * HALF_WIDTH_90, 9);
  });
});
