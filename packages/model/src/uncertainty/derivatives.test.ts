import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gradientAt, type State } from '../statics/gradient.ts';
import type { MachineSI } from '../statics/machine.ts';
import { type Parameters, parameter, parametersOf } from '../statics/parameters.ts';
import { type Prepared, prepare } from '../statics/prepared.ts';
import { restOf } from '../statics/rest.ts';
import { type Held, type Settled, settle } from '../statics/settle.ts';
import { arbitraryMachine } from '../testing/arbitraryMachine.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { type Figures, figureDerivatives, type HeldTravel, stateDerivatives } from './derivatives.ts';
import { type Direction, directionsOf, figuresOf, moveAlong, restore } from './inputs.ts';

/** Each number of the machine as an input of its own, with a thousandth of itself (or of 1 mm, 1 kg, …) for a deviation. */
function eachNumber(parameters: Parameters): readonly Direction[] {
  return directionsOf(
    parameters,
    parameters.names.map((name, i) => ({
      name,
      deviation: 1e-3 * Math.max(1e-3, Math.abs(parameter(parameters, i))),
      moves: [{ parameter: name, by: 1 }],
    })),
  );
}

interface Resting {
  readonly parameters: Parameters;
  readonly prepared: Prepared;
  readonly state: State;
}

/** A machine at the one rest that it has; null where it has none or several. */
function resting(machine: MachineSI): Resting | null {
  const parameters = parametersOf(machine);
  const prepared = prepare(parameters.machine);
  const answer = restOf(prepared);
  if (answer.kind !== 'rest' || answer.rest.otherRests.length > 0) return null;
  return { parameters, prepared, state: Float64Array.from(answer.rest.state) };
}

/** Figures of the machine settled anew, from near its old rest, after an input was moved by `change`. */
function settledAnew(
  { parameters, prepared, state }: Resting,
  direction: Direction,
  change: number,
  figures: Figures,
  held: Held,
  heldTravel: HeldTravel | null,
): Float64Array {
  const saved = figuresOf(parameters);
  const settled: Settled = { converged: false, residual: 0, iterations: 0 };
  const out = new Float64Array(4);
  moveAlong(parameters, prepared, direction, change);
  const anew = Float64Array.from(state);
  if (heldTravel !== null) anew[held === 'rear' ? 2 : 3] = heldTravel(prepared);
  settle(prepared, anew, 0, held, settled);
  expect(settled.converged).toBe(true);
  figures(prepared, anew, out);
  restore(parameters, prepared, direction, saved);
  return out;
}

const theState: Figures = (_, state, out) => out.set(state);

/**
 * What is left of a solved state or figure: forces are found to 1e-11 of some 10 kN, travels to that over some 10 N/mm;
 * what the two sides of a difference leave, Richardson's limit makes three times as much of.
 */
const NOISE = 5e-10;

/**
 * Checks derivatives of four figures against central differences of solved machines, over a step and over half of it,
 * taken to their limit (Richardson). Where a kink lies within the step (a spring that takes hold, a stop, a point of a
 * drawn curve) a difference says nothing: step and half step then disagree, or the bend between the two sides does not
 * halve with the step. Those are not compared; returns the share that was.
 */
function compared(
  at: Resting,
  directions: readonly Direction[],
  derivatives: Float64Array,
  figures: Figures,
  held: Held = 'none',
  heldTravel: HeldTravel | null = null,
): number {
  const here = new Float64Array(4);
  figures(at.prepared, at.state, here);
  const differences = (direction: Direction, step: number): { slope: number; bend: number }[] => {
    const above = settledAnew(at, direction, step, figures, held, heldTravel);
    const below = settledAnew(at, direction, -step, figures, held, heldTravel);
    return Array.from(here, (middle, i) => ({
      slope: (above[i]! - below[i]!) / (2 * step),
      bend: (above[i]! + below[i]! - 2 * middle) / step,
    }));
  };
  let agreed = 0;
  directions.forEach((direction, j) => {
    const step = direction.input.deviation;
    const whole = differences(direction, step);
    const half = differences(direction, step / 2);
    const greatest = Math.max(...half.map(({ slope }) => Math.abs(slope)));
    const left = 1e-5 * greatest + NOISE / step;
    const isSmooth = half.every(
      ({ slope, bend }, i) =>
        Math.abs(slope - whole[i]!.slope) <= 1e-3 * greatest + left &&
        Math.abs(2 * bend - whole[i]!.bend) <= left,
    );
    if (!isSmooth) return;
    agreed += 1;
    half.forEach(({ slope }, i) => {
      const limit = (4 * slope - whole[i]!.slope) / 3;
      expect(Math.abs(derivatives[4 * j + i]! - limit), direction.input.name).toBeLessThanOrEqual(left);
    });
  });
  return agreed / directions.length;
}

describe('derivatives of a rest', () => {
  test('are those of the machine solved again', () => {
    const shares: number[] = [];
    fc.assert(
      fc.property(arbitraryMachine, (machine) => {
        const at = resting(machine);
        if (at === null) return;
        const directions = eachNumber(at.parameters);
        const derivatives = stateDerivatives(at.parameters, at.prepared, at.state, directions);
        shares.push(compared(at, directions, derivatives, theState));
      }),
      { seed: 501, numRuns: 100, endOnFailure: true },
    );
    expect(shares.length).toBeGreaterThan(80);
    expect(mean(shares)).toBeGreaterThan(0.9);
  });

  test.each(['rear', 'front'] as const)('with the %s held at a share of its travel too', (held) => {
    const shares: number[] = [];
    fc.assert(
      fc.property(arbitraryMachine, fc.double({ min: 0.1, max: 0.9, noNaN: true }), (machine, share) => {
        const at = resting(machine);
        if (at === null) return;
        const heldTravel: HeldTravel = (prepared) =>
          share * (held === 'rear' ? prepared.rearTravelMax : prepared.frontTravelMax);
        const settled: Settled = { converged: false, residual: 0, iterations: 0 };
        at.state[held === 'rear' ? 2 : 3] = heldTravel(at.prepared);
        settle(at.prepared, at.state, 0, held, settled);
        const directions = eachNumber(at.parameters);
        const { parameters, prepared, state } = at;
        const derivatives = stateDerivatives(parameters, prepared, state, directions, held, heldTravel);
        shares.push(compared(at, directions, derivatives, theState, held, heldTravel));
      }),
      { seed: 502, numRuns: 60, endOnFailure: true },
    );
    expect(shares.length).toBeGreaterThan(40);
    expect(mean(shares)).toBeGreaterThan(0.9);
  });

  test('a wheel on its extension stop does not move; one on the metal moves as the metal does', () => {
    for (const [strut, travel] of [
      [plainStrut(40_000, 0.06), 0],
      [plainStrut(15_000, 0), 0.2],
    ] as const) {
      const at = resting(levelMachine(strut))!;
      expect(at.state[2]).toBe(travel);
      const directions = eachNumber(at.parameters);
      const derivatives = stateDerivatives(at.parameters, at.prepared, at.state, directions);
      expect(compared(at, directions, derivatives, theState)).toBe(1);
      const stroke = directions.findIndex(({ input }) => input.name === 'rear.strokeMax');
      // Half of it at the damper: a millimetre more stroke is two of wheel travel, where the wheel stands on the metal.
      expect(derivatives[4 * stroke + 2]).toBeCloseTo(travel === 0 ? 0 : 2, 7);
    }
  });

  test('do not hang on the order of the inputs', () => {
    fc.assert(
      fc.property(arbitraryMachine, (machine) => {
        const at = resting(machine);
        if (at === null) return;
        const directions = eachNumber(at.parameters);
        const derivatives = stateDerivatives(at.parameters, at.prepared, at.state, directions);
        const backwards = stateDerivatives(at.parameters, at.prepared, at.state, directions.toReversed());
        const last = directions.length - 1;
        directions.forEach(({ input }, j) => {
          const place = 4 * (last - j);
          expect(backwards.subarray(place, place + 4), input.name).toEqual(
            derivatives.subarray(4 * j, 4 * j + 4),
          );
        });
      }),
      { seed: 503, numRuns: 30 },
    );
  });

  test('are refused for a machine that does not rest stably', () => {
    const machine = levelMachine(plainStrut(40_000, 0.01));
    const tall = { ...machine, sprung: { ...machine.sprung, height: 40 } };
    const parameters = parametersOf(tall);
    const prepared = prepare(parameters.machine);
    const state = Float64Array.from([0, 0, 0.05, 0.05]);
    const directions = eachNumber(parameters);
    expect(() => stateDerivatives(parameters, prepared, state, directions)).toThrow('does not rest stably');
  });

  test('an input that moves nothing, or is known exactly, has derivative 0', () => {
    const { parameters, prepared, state } = resting(levelMachine(plainStrut(40_000, 0.01)))!;
    const directions = directionsOf(parameters, [
      { name: 'elsewhere', deviation: 1, moves: [{ parameter: 'springs.blue.rate', by: 1 }] },
      { name: 'exact', deviation: 0, moves: [{ parameter: 'sprung.mass', by: 1 }] },
    ]);
    const derivatives = stateDerivatives(parameters, prepared, state, directions);
    expect(Array.from(derivatives, Math.abs)).toEqual([0, 0, 0, 0, 0, 0, 0, 0]);
  });
});

test('derivatives of figures follow machine and rest together, nothing solved again', () => {
  /** Loads in kN and rates in N/mm, so that the four are of one size; the rate hangs on the spring directly. */
  const figures: Figures = (prepared, state, out) => {
    gradientAt(prepared, state, 0);
    const { rear, front } = prepared.gradient;
    out[0] = rear.wheelLoad / 1000;
    out[1] = front.wheelLoad / 1000;
    out[2] = rear.at.wheelRate / 1e6;
    out[3] = front.forward - rear.forward;
  };
  const shares: number[] = [];
  fc.assert(
    fc.property(arbitraryMachine, (machine) => {
      const at = resting(machine);
      if (at === null) return;
      const directions = eachNumber(at.parameters);
      const { parameters, prepared, state } = at;
      const derivatives = stateDerivatives(parameters, prepared, state, directions);
      const slopes = figureDerivatives(parameters, prepared, state, directions, derivatives, figures, 4);
      shares.push(compared(at, directions, slopes, figures));
    }),
    { seed: 503, numRuns: 60, endOnFailure: true },
  );
  expect(shares.length).toBeGreaterThan(40);
  expect(mean(shares)).toBeGreaterThan(0.85);
});

function mean(values: readonly number[]): number {
  return values.reduce((sum, each) => sum + each, 0) / values.length;
}
