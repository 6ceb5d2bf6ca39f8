import { describe, expect, test } from 'vitest';
import { momentsOf } from '../masses/pointMass.ts';
import { gradientAt } from '../statics/gradient.ts';
import { GRAVITY } from '../statics/machine.ts';
import { parametersOf, putOn } from '../statics/parameters.ts';
import { prepare } from '../statics/prepared.ts';
import { restOf } from '../statics/rest.ts';
import { type Settled, settle } from '../statics/settle.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { passenger, rider, tourer } from '../testing/tourer.ts';
import { figureDerivatives, stateDerivatives } from './derivatives.ts';
import { directionsOf, type UncertainInput } from './inputs.ts';
import { drawInputs } from './monteCarlo.ts';
import { halfWidthAt } from './spread.ts';

describe('drawing inputs', () => {
  const inputs: readonly UncertainInput[] = [
    {
      name: 'spring rate, both',
      deviation: 800,
      moves: [
        { parameter: 'rear.struts.0.spring.rate', by: 1 },
        { parameter: 'front.struts.0.spring.rate', by: 1 },
      ],
    },
    { name: 'rear stroke', deviation: 0.001, moves: [{ parameter: 'rear.strokeMax', by: 1 }] },
    {
      name: 'rear rate once more',
      deviation: 100,
      moves: [{ parameter: 'rear.struts.0.spring.rate', by: 1 }],
    },
  ];

  function drawn(count: number, seed: number): number[][] {
    const parameters = parametersOf(levelMachine(plainStrut(40_000, 0.01)));
    const prepared = prepare(parameters.machine);
    const seen: number[][] = [];
    drawInputs(parameters, prepared, directionsOf(parameters, inputs), count, seed, (draw) => {
      const { rear, front } = parameters.machine;
      const rates = [rear, front].map(({ struts }) => struts[0]!.spring as { rate: number });
      seen.push([draw, rates[0]!.rate, rates[1]!.rate, prepared.rearTravelMax, rear.strokeMax]);
    });
    return seen;
  }

  test('gives the same machines for the same seed, others for another', () => {
    expect(drawn(5, 1)).toEqual(drawn(5, 1));
    expect(drawn(5, 1)).not.toEqual(drawn(5, 2));
    expect(drawn(5, 1).map(([draw]) => draw)).toEqual([0, 1, 2, 3, 4]);
  });

  test('moves together what one input stands for, and the travel with the stroke', () => {
    for (const [, rear, front, travelMax, stroke] of drawn(20, 3)) {
      // Apart only by the third input's 100 N/m: six deviations at the most in so few draws.
      expect(Math.abs(rear! - front!)).toBeLessThan(600);
      expect(travelMax).toBeCloseTo(2 * stroke!, 12);
    }
  });

  test('draws from the normal law of each input', () => {
    const count = 4000;
    const fronts = drawn(count, 4).map(([, , front]) => (front! - 40_000) / 800);
    const mean = fronts.reduce((sum, each) => sum + each, 0) / count;
    const variance = fronts.reduce((sum, each) => sum + each * each, 0) / count;
    // Standard errors 1/√n and √(2/n); five of each.
    expect(Math.abs(mean)).toBeLessThan(5 / Math.sqrt(count));
    expect(Math.abs(variance - 1)).toBeLessThan(5 * Math.sqrt(2 / count));
  });

  test('puts the machine back to the last bit, also after a visit that throws', () => {
    const parameters = parametersOf(levelMachine(plainStrut(40_000, 0.01)));
    const prepared = prepare(parameters.machine);
    const before = structuredClone({ machine: parameters.machine, travelMax: prepared.rearTravelMax });
    const directions = directionsOf(parameters, inputs);
    drawInputs(parameters, prepared, directions, 50, 5, () => undefined);
    expect({ machine: parameters.machine, travelMax: prepared.rearTravelMax }).toEqual(before);
    const refuse = (): void => {
      throw new Error('enough');
    };
    expect(() => drawInputs(parameters, prepared, directions, 1, 5, refuse)).toThrow('enough');
    expect({ machine: parameters.machine, travelMax: prepared.rearTravelMax }).toEqual(before);
  });
});

const both = (end: 'rear' | 'front', figure: string, deviation: number): UncertainInput => ({
  name: `${end}.${figure}`,
  deviation,
  moves: [0, 1].map((i) => ({ parameter: `${end}.struts.${i}.${figure}`, by: 1 })),
});
const one = (parameter: string, deviation: number): UncertainInput => ({
  name: parameter,
  deviation,
  moves: [{ parameter, by: 1 }],
});

test('the 90 % half-widths by derivatives are those of 20 000 drawn machines', () => {
  const parameters = parametersOf(tourer());
  const prepared = prepare(parameters.machine);
  // Clear of every stop and kink.
  putOn(parameters, momentsOf([rider, passenger]));
  const directions = directionsOf(parameters, [
    both('rear', 'spring.rate', 500),
    both('rear', 'preload', 0.001),
    both('rear', 'gas.pressure', 5e4),
    both('front', 'spring.rate', 250),
    both('front', 'preload', 0.001),
    one('rear.kinematics.motionRatio', 0.01),
    one('rear.strokeMax', 0.0005),
    one('load.mass', 2),
    one('load.momentX', 4),
    one('sprung.x', 0.004),
    one('rear.tyre.rate', 9_000),
    one('geometry.rake', 0.006),
  ]);
  const answer = restOf(prepared);
  if (answer.kind !== 'rest') throw new Error(answer.kind);
  const state = Float64Array.from(answer.rest.state);
  const derivatives = stateDerivatives(parameters, prepared, state, directions);
  const loads = figureDerivatives(
    parameters,
    prepared,
    state,
    directions,
    derivatives,
    (machine, at, out) => {
      gradientAt(machine, at, 0);
      out[0] = machine.gradient.rear.wheelLoad / GRAVITY;
    },
    1,
  );
  const expected = [
    halfWidthAt(directions, derivatives, 2, 4),
    halfWidthAt(directions, derivatives, 3, 4),
    halfWidthAt(directions, loads, 0, 1),
  ];

  const count = 20_000;
  const figures = expected.map(() => new Float64Array(count));
  const settled: Settled = { converged: false, residual: 0, iterations: 0 };
  const drawn = new Float64Array(4);
  drawInputs(parameters, prepared, directions, count, 6, (draw) => {
    drawn.set(state);
    settle(prepared, drawn, 0, 'none', settled);
    if (!settled.converged) throw new Error(`draw ${draw} has no rest`);
    figures[0]![draw] = drawn[2]!;
    figures[1]![draw] = drawn[3]!;
    figures[2]![draw] = prepared.gradient.rear.wheelLoad / GRAVITY;
  });
  // Half of what lies between the 5 % and the 95 % point of n draws has a standard error of √(0.05 · 0.45 / n) over the
  // normal density there, 0.1031 in deviations: of the half-width, 1.645 deviations, that is 0.63 %. Five of them. The
  // balance is bent over a deviation by far less: sag is some 60 mm, its ± some 6, and bends with the square of that.
  figures.forEach((figure, i) => {
    const sorted = figure.sort();
    const halfWidth = 0.5 * (sorted[0.95 * count]! - sorted[0.05 * count]!);
    expect(Math.abs(halfWidth / expected[i]! - 1)).toBeLessThan(5 * 0.0063);
  });
});
