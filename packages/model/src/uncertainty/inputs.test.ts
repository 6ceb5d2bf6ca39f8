import { expect, test } from 'vitest';
import { parameter, parametersOf } from '../statics/parameters.ts';
import { prepare } from '../statics/prepared.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { directionsOf, figuresOf, moveAlong, moveFrom, restore } from './inputs.ts';
import { mergeInputs } from './merge.ts';

const parameters = parametersOf(levelMachine(plainStrut(40_000, 0.01)));
const prepared = prepare(parameters.machine);

function figure(name: string): number {
  return parameter(parameters, parameters.indexOf.get(name)!);
}

test('one input moves all that it stands for, each by its own measure, and leaves out what this machine has not', () => {
  const [direction] = directionsOf(parameters, [
    {
      name: 'load 10 kg at 0.3 m',
      deviation: 2,
      moves: [
        { parameter: 'load.mass', by: 1 },
        { parameter: 'load.momentX', by: 0.3 },
        { parameter: 'sidecar.mass', by: 5 },
      ],
    },
  ]);
  expect(direction!.indices).toHaveLength(2);
  const before = figuresOf(parameters);
  moveAlong(parameters, prepared, direction!, 10);
  expect(figure('load.mass')).toBe(10);
  expect(figure('load.momentX')).toBe(3);
  moveFrom(parameters, prepared, direction!, before, 20);
  expect(figure('load.mass')).toBe(20);
  restore(parameters, prepared, direction!, before);
  expect(figuresOf(parameters)).toEqual(before);
});

test('an input that stands for one figure twice moves it by both', () => {
  const [direction] = directionsOf(parameters, [
    {
      name: 'each of two cases',
      deviation: 1,
      moves: [
        { parameter: 'load.mass', by: 1 },
        { parameter: 'load.mass', by: 1 },
      ],
    },
  ]);
  const before = figuresOf(parameters);
  moveFrom(parameters, prepared, direction!, before, 3);
  expect(figure('load.mass')).toBe(6);
  restore(parameters, prepared, direction!, before);
  expect(figure('load.mass')).toBe(0);
});

test('the travel at metal follows an input that moves it, and comes back', () => {
  const before = prepared.rearTravelMax;
  const [direction] = directionsOf(parameters, [
    { name: 'stroke', deviation: 0.001, moves: [{ parameter: 'rear.strokeMax', by: 1 }] },
  ]);
  const saved = figuresOf(parameters);
  moveAlong(parameters, prepared, direction!, 0.01);
  // A centimetre of stroke at a ratio of 0.5.
  expect(prepared.rearTravelMax).toBeCloseTo(0.22, 12);
  expect(prepared.frontTravelMax).toBe(before);
  restore(parameters, prepared, direction!, saved);
  expect(prepared.rearTravelMax).toBe(before);
});

test('a difference is taken over a small part of the deviation', () => {
  const [direction] = directionsOf(parameters, [{ name: 'any', deviation: 0.5, moves: [] }]);
  expect(direction!.step).toBeGreaterThan(0);
  expect(direction!.step).toBeLessThan(1e-3 * 0.5);
});

test('an input that comes in several lists is one input with all its moves', () => {
  const moves = ['a', 'b', 'c'].map((name) => ({ parameter: name, by: 1 }));
  const merged = mergeInputs(
    [
      { name: 'scale', deviation: 0.5, moves: [moves[0]!] },
      { name: 'tape', deviation: 0.1, moves: [moves[1]!] },
    ],
    [{ name: 'scale', deviation: 0.5, moves: [moves[2]!] }],
  );
  expect(merged).toEqual([
    { name: 'scale', deviation: 0.5, moves: [moves[0], moves[2]] },
    { name: 'tape', deviation: 0.1, moves: [moves[1]] },
  ]);
});
