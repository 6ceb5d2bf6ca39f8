import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arbitraryMachine } from '../testing/arbitraryMachine.ts';
import { extremeMachine } from '../testing/extremeMachine.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { FRONT_TRAVEL, gradientAt, HEAVE, PITCH, REAR_TRAVEL } from './gradient.ts';
import { GRAVITY, type MachineSI } from './machine.ts';
import { type Prepared, prepare } from './prepared.ts';
import { type RestAnswer, restOf } from './rest.ts';
import { isFree, type Settled, settle, standsOnBoth, startState } from './settle.ts';
import { solveWheelsFirst } from './wheelsFirst.ts';

/** Newton's 30 steps, then three walks of 400 and Newton again. */
const STEPS_MAX = 30 + 3 * (400 + 30);

describe.each([
  ['as it may stand in a workshop', arbitraryMachine, 401],
  ['of figures at the hard bounds of a job file', extremeMachine, 402],
])('any machine %s', (_, drawn, seed) => {
  const answers = fc
    .sample(drawn, { seed, numRuns: 3000 })
    .map((machine) => ({ machine, ...answered(machine) }));

  test('comes to rest or tips: the solve never ends without an answer', () => {
    expect(answers.filter(({ answer }) => answer.kind === 'no rest')).toEqual([]);
  });

  test('has only finite figures, in a bounded number of steps', () => {
    for (const { answer } of answers) {
      expect(unfinished(answer)).toEqual([]);
      if (answer.kind === 'rest') expect(answer.rest.iterations).toBeLessThanOrEqual(STEPS_MAX);
    }
  });

  test('rests in balance and stably', () => {
    for (const { machine, answer, prepared } of answers) {
      if (answer.kind !== 'rest') continue;
      const { residual } = answer.rest;
      // Against a rubber of GN/m the smallest step of a state, 1e-16 m and more, is more force than the weight's 1e-9.
      expect(residual).toBeLessThanOrEqual(1e-9 * weightOf(machine) + 1e-14 * stiffest(prepared));
      expect(isStable(prepared, answer.rest.state)).toBe(true);
    }
  });

  test('tips only where no travels of its wheels let it stand on both', () => {
    // Each takes some 10 ms to look through: the first thirty.
    const tipping = answers.filter(({ answer }) => answer.kind === 'tips').slice(0, 30);
    expect(tipping.length).toBeGreaterThan(0);
    for (const { prepared } of tipping) expect(standing(prepared)).toEqual([]);
  });
});

function answered(machine: MachineSI): { answer: RestAnswer; prepared: Prepared } {
  const prepared = prepare(machine);
  return { answer: restOf(prepared), prepared };
}

function weightOf({ sprung, load, rear, front }: MachineSI): number {
  return GRAVITY * (sprung.mass + load.mass + rear.unsprung + front.unsprung);
}

/** Greatest slope of the force at any wheel [N/m]. */
function stiffest({ gradient }: Prepared): number {
  return Math.max(gradient.heaveHeave, gradient.rear.travelTravel, gradient.front.travelTravel);
}

/** Paths of figures that are not finite numbers; null stands for "nothing swings" and the like. */
function unfinished(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => unfinished(inner, `${path}.${key}`));
}

function isStable(prepared: Prepared, at: readonly number[]): boolean {
  const state = Float64Array.from(at);
  gradientAt(prepared, state, 0);
  const { rear, front } = prepared.gradient;
  const rearFree = isFree(state[REAR_TRAVEL]!, prepared.rearTravelMax, rear);
  const frontFree = isFree(state[FRONT_TRAVEL]!, prepared.frontTravelMax, front);
  return solveWheelsFirst(prepared, rearFree, frontFree, 0, new Float64Array(4));
}

/** Pairs of travels, of a grid, from which the machine comes to stand on both wheels after all. */
function standing(prepared: Prepared): number[][] {
  const shares = [0, 0.2, 0.4, 0.6, 0.8];
  const settled: Settled = { converged: false, residual: 0, iterations: 0 };
  const state = new Float64Array(4);
  return shares
    .flatMap((rear) => shares.map((front) => [rear, front] as const))
    .filter(([rear, front]) => {
      startState(prepared, state);
      state[REAR_TRAVEL] = rear * prepared.rearTravelMax;
      state[FRONT_TRAVEL] = front * prepared.frontTravelMax;
      settle(prepared, state, 0, 'both', settled);
      settle(prepared, state, 0, 'none', settled);
      return standsOnBoth(prepared, state, settled);
    })
    .map((pair) => [...pair]);
}

test('a cold start has the body level, wheels a third in, tyres pressed by the lever rule', () => {
  const prepared = prepare(levelMachine(plainStrut(40_000, 0.01)));
  const state = new Float64Array(4);
  startState(prepared, state);
  // 120 kg on each tyre of 200 N/mm, wheels 0.35 · 200 mm up in the body.
  const drop = (120 * GRAVITY) / 200_000 + 0.07;
  expect(Array.from(state)).toEqual([
    expect.closeTo(-drop, 12),
    expect.closeTo(0, 12),
    ...[0, 1].map(() => expect.closeTo(0.07, 12)),
  ]);
});

test('held wheels stay to the last bit', () => {
  fc.assert(
    fc.property(arbitraryMachine, fc.constantFrom('rear', 'front', 'both'), (machine, held) => {
      const prepared = prepare(machine);
      const state = new Float64Array(4);
      startState(prepared, state);
      const [rear, front] = [0.4 * prepared.rearTravelMax, 0.6 * prepared.frontTravelMax];
      state[REAR_TRAVEL] = rear;
      state[FRONT_TRAVEL] = front;
      const settled: Settled = { converged: false, residual: 0, iterations: 0 };
      settle(prepared, state, 0, held, settled);
      expect(settled.converged).toBe(true);
      if (held !== 'front') expect(state[REAR_TRAVEL]).toBe(rear);
      if (held !== 'rear') expect(state[FRONT_TRAVEL]).toBe(front);
      expect(Math.abs(state[HEAVE]!)).toBeLessThan(1);
      expect(Math.abs(state[PITCH]!)).toBeLessThan(0.6);
    }),
    { seed: 403 },
  );
});
