import { dimensions, unitsOf } from '@sagwright/records/units';
import { describe, expect, test } from 'vitest';
import { decimalsOf, roundFigure, stepIn, usualStep } from './steps.ts';
import { sureChoices } from './sureChoices.ts';

// 0.5 mm = 0.0197 in, next to 1/64 = 0.0156; 0.5 N/mm = 2.855 lbf/in = 0.051 kgf/mm; 0.5 kg = 1.1 lb.
test.each([
  [0.0005, 'mm', 0.5],
  [0.0005, 'cm', 0.05],
  [0.0005, 'in', 1 / 64],
  [0.001, 'in', 1 / 32],
  [500, 'N/mm', 0.5],
  [500, 'lbf/in', 2],
  [500, 'kgf/mm', 0.05],
  [0.5, 'lb', 1],
] as const)('a step of %d (SI) in %s is %d', (step, unit, size) => {
  expect(stepIn(step, unit)).toBe(size);
});

test('the usual step of every dimension is a round figure above 0 in each of its units', () => {
  for (const dimension of dimensions) {
    for (const unit of unitsOf(dimension)) {
      const size = stepIn(usualStep[dimension], unit);
      expect(size, `${dimension} in ${unit}`).toBeGreaterThan(0);
      expect(decimalsOf(size), `${dimension} in ${unit}`).toBeLessThanOrEqual(6);
    }
  }
});

test.each([
  [2.5, 2.5],
  [2.855, 2],
  [4.41, 5],
  [0.0394, 0.05],
  [7.05, 5], // the middle of 5 and 10 by ratio is the root of 50, 7.07
  [7.09, 10],
  [14, 14],
  [141, 100], // and of 100 and 200 it is 141.4
  [142, 200],
])('%d is rounded to %d', (figure, round) => {
  expect(roundFigure(figure)).toBe(round);
});

test.each([0, -1, Number.NaN])('%d cannot be a step', (figure) => {
  expect(() => roundFigure(figure)).toThrow(RangeError);
});

describe('How sure', () => {
  test('offers half the usual ± of a reading, the usual one and twice that, in the unit typed', () => {
    expect(sureChoices('length', 'mm', 'tape', undefined).map(({ value }) => value)).toEqual([0.5, 1, 2]);
    // 1 mm = 0.0394 in
    expect(sureChoices('length', 'in', 'tape', undefined).map(({ value }) => value)).toEqual([
      0.02, 0.05, 0.1,
    ]);
  });

  test('follows where the figure comes from', () => {
    const widths = (origin: 'own log' | undefined) => sureChoices('rate', 'N/mm', 'springRate', origin);
    expect(widths('own log')[1]).toEqual({ value: 2, unit: '%' });
    expect(widths(undefined)[1]).toEqual({ value: 5, unit: '%' });
  });

  test('offers something in every unit, each once and rising', () => {
    for (const dimension of dimensions) {
      for (const unit of unitsOf(dimension)) {
        const values = sureChoices(dimension, unit, undefined, undefined).map(({ value }) => value);
        expect(values.length).toBeGreaterThanOrEqual(2);
        expect(values).toEqual([...new Set(values)].sort((a, b) => a - b));
        expect(values[0]).toBeGreaterThan(0);
      }
    }
  });
});
