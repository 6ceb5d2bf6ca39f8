import { expect, test } from 'vitest';
import { capacityAtPressure } from './capacityAtPressure.ts';

const rows = [
  { pressure: 2.0e5, capacity: 250 },
  { pressure: 2.5e5, capacity: 300 },
  { pressure: 2.9e5, capacity: 320 },
];

test('a row gives its own capacity, and halfway between two lies halfway between theirs', () => {
  expect(rows.map(({ pressure }) => capacityAtPressure(rows, pressure))).toEqual([250, 300, 320]);
  expect(capacityAtPressure(rows, 2.25e5)).toBeCloseTo(275, 9);
});

test('below the table nothing is known; above it the last row holds', () => {
  expect(capacityAtPressure(rows, 1.99e5)).toBeNull();
  expect(capacityAtPressure(rows, 4e5)).toBe(320);
});

test('a table without rows is refused', () => {
  expect(() => capacityAtPressure([], 2e5)).toThrow(RangeError);
});
