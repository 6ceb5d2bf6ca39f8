/**
 * SciPy, scipy.interpolate.PchipInterpolator, an independent implementation of the same published curve; version and
 * the script that made the numbers are in scipy-pchip.json.
 */
import { cubicAt, monotoneCubic } from '@sagwright/model/numerics/monotoneCubic';
import { describe, expect, test } from 'vitest';
import reference from './scipy-pchip.json' with { type: 'json' };

/**
 * Both work in doubles and write the cubic differently. Values reach 330 and slopes 300, so 1e-12 of the largest number
 * of a case is some thousand roundings, and far below what any other choice of slopes would show (percents).
 */
const relative = 1e-12;

function largest(numbers: readonly number[]): number {
  return Math.max(...numbers.map(Math.abs));
}

test('the reference has its four cases', () => {
  expect(reference.cases).toHaveLength(4);
});

describe.each(reference.cases)('monotone cubic through $name', (row) => {
  const curve = monotoneCubic(row.x, row.y);
  const out = { value: 0, first: 0, second: 0 };

  test('has the slopes that SciPy gives it at its points', () => {
    expect(curve.slope).toHaveLength(row.slope.length);
    row.slope.forEach((slope, i) => {
      expect(Math.abs(curve.slope[i]! - slope)).toBeLessThanOrEqual(relative * largest(row.slope));
    });
  });

  test.each(['value', 'first', 'second'] as const)('has the same %s all along', (which) => {
    const expected = row[which];
    expect(expected).toHaveLength(row.at.length);
    row.at.forEach((x, i) => {
      cubicAt(curve, x, out);
      expect(Math.abs(out[which] - expected[i]!)).toBeLessThanOrEqual(relative * largest(expected));
    });
  });
});
