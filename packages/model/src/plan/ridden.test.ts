import { describe, expect, test } from 'vitest';
import { GRAVITY } from '../statics/machine.ts';
import { carrying, choice, fineCollar, linear, rearQuestion } from '../testing/collarQuestion.ts';
import { passenger, rider, tourer } from '../testing/tourer.ts';
import type { Demand } from './demand.ts';
import { plan } from './plan.ts';
import { failuresOf, kilogramsBeyond, riddenCells } from './ridden.ts';

const loads = [carrying('alone', [rider]), carrying('two', [rider, passenger])];
const question = rearQuestion(
  { choices: [choice('28', linear(28_000))], adjuster: fineCollar(0.003) },
  loads,
);
const spring = plan(question).rear.springs[0]!;

test('only the cells of loads that are ridden are looked at', () => {
  expect(riddenCells(spring, new Set(['two'])).map(({ loadCase }) => loadCase)).toEqual(['two']);
  expect(riddenCells(spring, new Set())).toEqual([]);
});

test('a spring fails on what rules it out with loads that are ridden', () => {
  // 3 mm of collar reach for the rider alone (1.8 mm), not for two (14.8).
  expect(failuresOf(spring, new Set(['alone']))).toEqual([]);
  expect(failuresOf(spring, new Set(['alone', 'two'])).map(({ loadCase }) => loadCase)).toEqual(['two']);
});

describe('kilograms beyond what a spring bears', () => {
  /** Each spring to bear 1000 N at 30 mm of stroke, on an axle that rises at 0.98 of its travel. */
  const demand: Demand = {
    state: new Float64Array(4),
    travel: 0.03 / 0.9,
    stroke: 0.03,
    motionRatio: 0.9,
    rise: 0.98,
    springForce: 1000,
  };
  const only = choice('20', linear(20_000));

  test('are what its springs lack at that position, at the wheel', () => {
    // 20 N/mm by 30 + 12 + 5 mm is 940 N; 60 N missing from each of two.
    const expected = (2 * 60 * 0.9) / (GRAVITY * 0.98);
    expect(kilogramsBeyond(tourer(), 'rear', only, demand, 0.005)).toBeCloseTo(expected, 9);
  });

  test('are less than none where it bears more', () => {
    const expected = -(2 * 40 * 0.9) / (GRAVITY * 0.98);
    expect(kilogramsBeyond(tourer(), 'rear', only, demand, 0.01)).toBeCloseTo(expected, 9);
  });
});
