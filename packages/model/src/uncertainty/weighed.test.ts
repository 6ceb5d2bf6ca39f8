import { describe, expect, test } from 'vitest';
import type { PointMass } from '../masses/pointMass.ts';
import type { MachineSI } from '../statics/machine.ts';
import { parametersOf } from '../statics/parameters.ts';
import { prepare } from '../statics/prepared.ts';
import { restOf } from '../statics/rest.ts';
import { type Settled, settle } from '../statics/settle.ts';
import { weigh, weighLoad } from '../statics/weighing.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { stateDerivatives } from './derivatives.ts';
import { directionsOf, figuresOf, moveAlong, restore, type UncertainInput } from './inputs.ts';
import { drawInputs } from './monteCarlo.ts';
import { halfWidthAt } from './spread.ts';
import { throughLoadWeighing, throughWeighing, type WeighedSI } from './weighed.ts';

/** Nose-up by some 3° on its own sag, so that the weighing is felt. */
function low(): MachineSI {
  const machine = levelMachine(plainStrut(40_000, 0.03));
  return { ...machine, rear: { ...machine.rear, struts: [plainStrut(32_000, 0.005)] } };
}

const INPUTS: readonly UncertainInput[] = [
  ['weighing.front', 0.5],
  ['weighing.rear', 0.5],
  ['weighing.wholeHeight', 0.02],
  ['geometry.wheelbase', 0.003],
  ['rear.unsprung', 1],
  ['front.unsprung', 1],
  ['rear.tyre.radius', 0.003],
  ['rear.tyre.rate', 9_000],
  ['rear.struts.0.spring.rate', 500],
  ['rear.struts.0.preload', 0.001],
  ['front.struts.0.preload', 0.001],
  ['rear.kinematics.motionRatio', 0.01],
].map(([parameter, deviation]) => ({
  name: `read ${parameter}`,
  deviation: deviation as number,
  moves: [{ parameter: parameter as string, by: 1 }],
}));

function weighedOn(attitude: 'own sag' | 'level'): WeighedSI {
  const weighing = { front: 119, rear: 121, wholeHeight: 0.47, attitude };
  const answer = weigh(low(), weighing);
  if (answer.kind !== 'body') throw new Error(answer.kind);
  return { ...low(), sprung: answer.sprung, weighing };
}

/** What each input does to the body when the machine is weighed again with it a little up and down. */
function weighedAgain(machine: WeighedSI, input: UncertainInput): PointMass {
  const parameters = parametersOf(machine);
  const prepared = prepare(parameters.machine);
  const [direction] = directionsOf(parameters, [input]);
  const saved = figuresOf(parameters);
  const side = (change: number): PointMass => {
    moveAlong(parameters, prepared, direction!, change);
    const answer = weigh(parameters.machine, parameters.machine.weighing);
    restore(parameters, prepared, direction!, saved);
    if (answer.kind !== 'body') throw new Error(answer.kind);
    return answer.sprung;
  };
  const step = 0.1 * input.deviation;
  const [above, below] = [side(step), side(-step)];
  const slope = (name: keyof PointMass): number => (above[name] - below[name]) / (2 * step);
  return { mass: slope('mass'), x: slope('x'), height: slope('height') };
}

function bodyMoves(input: UncertainInput): PointMass {
  const by = (figure: string): number =>
    input.moves.find((move) => move.parameter === `sprung.${figure}`)?.by ?? 0;
  return { mass: by('mass'), x: by('x'), height: by('height') };
}

describe.each(['own sag', 'level'] as const)('a machine weighed on %s', (attitude) => {
  const machine = weighedOn(attitude);
  const through = throughWeighing(machine, INPUTS);

  test.each(INPUTS.map((input, i) => [input.name, i] as const))('carries its body with %s', (_, i) => {
    const mine = bodyMoves(through[i]!);
    const again = weighedAgain(machine, INPUTS[i]!);
    // The scales are met to 1e-9 of 119 kg, 1e-7 kg: over the step of a tenth of a deviation and 200 kg of body that is
    // 1e-7 of what half a kilogram does to x. The bend over the step is less: steps are a hundredth of what they move.
    const scale = {
      mass: 1,
      x: Math.max(1e-4, Math.abs(again.x)),
      height: Math.max(1e-3, Math.abs(again.height)),
    };
    for (const figure of ['mass', 'x', 'height'] as const)
      expect(Math.abs(mine[figure] - again[figure]) / scale[figure], figure).toBeLessThan(1e-4);
  });

  test('keeps what else an input moves, and uses up the readings', () => {
    through.forEach((input, i) => {
      const before = INPUTS[i]!.moves.filter((move) => !move.parameter.startsWith('weighing.'));
      expect(input.moves.filter((move) => !move.parameter.startsWith('sprung.'))).toEqual(before);
      expect(input.deviation).toBe(INPUTS[i]!.deviation);
    });
  });
});

test('settings do nothing to a body weighed level, and shift one weighed on its own sag', () => {
  const preload = INPUTS.filter((input) => input.name.includes('rear.struts.0.preload'));
  expect(bodyMoves(throughWeighing(weighedOn('level'), preload)[0]!)).toEqual({ mass: 0, x: 0, height: 0 });
  expect(bodyMoves(throughWeighing(weighedOn('own sag'), preload)[0]!).x).not.toBe(0);
});

describe('a load weighed aboard', () => {
  const alone = weighedOn('level');
  const readings = { front: 140, rear: 190, height: 0.9 };
  const aboard = loadOf(alone, readings);
  const weighed = { ...alone, load: aboard, aboard: readings };
  const inputs: readonly UncertainInput[] = [
    ['aboard.front', 0.5],
    ['aboard.rear', 0.5],
    ['aboard.height', 0.05],
    ['sprung.mass', 0.7],
    ['sprung.x', 0.004],
    ['rear.struts.0.preload', 0.001],
    ['rear.tyre.rate', 9_000],
  ].map(([parameter, deviation]) => ({
    name: `read ${parameter}`,
    deviation: deviation as number,
    moves: [{ parameter: parameter as string, by: 1 }],
  }));
  const through = throughLoadWeighing(weighed, inputs);

  test.each(inputs.map((input, i) => [input.name, i] as const))('follows %s', (_, i) => {
    const input = inputs[i]!;
    const parameters = parametersOf(weighed);
    const prepared = prepare(parameters.machine);
    const [direction] = directionsOf(parameters, [input]);
    const saved = figuresOf(parameters);
    const step = 0.1 * input.deviation;
    const [above, below] = [step, -step].map((change) => {
      moveAlong(parameters, prepared, direction!, change);
      const load = loadOf(parameters.machine, parameters.machine.aboard);
      restore(parameters, prepared, direction!, saved);
      return load;
    });
    for (const figure of ['mass', 'momentX', 'momentHeight'] as const) {
      const again = (above![figure] - below![figure]) / (2 * step);
      const mine = through[i]!.moves.find((move) => move.parameter === `load.${figure}`)?.by ?? 0;
      expect(Math.abs(mine - again), figure).toBeLessThan(1e-4 * Math.max(1, Math.abs(again)));
    }
  });
});

/** The first moments of a load that was weighed aboard. */
function loadOf(machine: MachineSI, aboard: { front: number; rear: number; height: number }) {
  const answer = weighLoad(machine, aboard, aboard.height);
  if (answer.kind !== 'load') throw new Error(answer.kind);
  const { mass, x, height } = answer.load;
  return { mass, momentX: mass * x, momentHeight: mass * height };
}

test('with a rider aboard, sag has the ± of machines weighed and loaded anew, 8000 drawn', () => {
  const machine = weighedOn('own sag');
  const load = { mass: 80, momentX: 40, momentHeight: 80 };
  const inputs = INPUTS.filter(({ name }) => !name.includes('motionRatio'));
  const laden = parametersOf({ ...machine, load });
  const prepared = prepare(laden.machine);
  const answer = restOf(prepared);
  if (answer.kind !== 'rest') throw new Error(answer.kind);
  const state = Float64Array.from(answer.rest.state);
  const directions = directionsOf(laden, throughWeighing(machine, inputs));
  const derivatives = stateDerivatives(laden, prepared, state, directions);
  const expected = [2, 3].map((place) => halfWidthAt(directions, derivatives, place, 4));

  const count = 8000;
  const travels = [new Float64Array(count), new Float64Array(count)];
  const drawn = parametersOf(machine);
  const settled: Settled = { converged: false, residual: 0, iterations: 0 };
  drawInputs(drawn, prepare(drawn.machine), directionsOf(drawn, inputs), count, 7, (draw) => {
    const weighed = weigh(drawn.machine, drawn.machine.weighing);
    if (weighed.kind !== 'body') throw new Error(`draw ${draw} gave no body`);
    const anew = Float64Array.from(state);
    settle(prepare({ ...drawn.machine, sprung: weighed.sprung, load }), anew, 0, 'none', settled);
    if (!settled.converged) throw new Error(`draw ${draw} has no rest`);
    travels.forEach((travel, i) => {
      travel[draw] = anew[2 + i]!;
    });
  });
  travels.forEach((travel, i) => {
    const sorted = travel.sort();
    const halfWidth = 0.5 * (sorted[0.95 * count]! - sorted[0.05 * count]!);
    // Five standard errors of half of what lies between the 5 % and the 95 % point, 0.884/√n (see monteCarlo.test.ts).
    expect(Math.abs(halfWidth / expected[i]! - 1)).toBeLessThan((5 * 0.884) / Math.sqrt(count));
  });
});
