import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  differenceFromSI,
  differenceToSI,
  dimensionOf,
  dimensions,
  fromSI,
  toSI,
  type Unit,
  unitsOf,
} from './units.ts';

const allUnits = dimensions.flatMap((dimension) => [...unitsOf(dimension)]) as Unit[];
const offsetFree = allUnits.filter((unit) => unit !== 'C' && unit !== 'F');

/** scipy.constants of SciPy 1.17.1 (lb, lbf, kgf, lbf/inch, psi, lbf·foot, gallon_US, degree, convert_temperature), as it printed them. */
const bySciPy: readonly [number, Unit, number][] = [
  [1, 'in', 0.0254],
  [1, 'lb', 0.45359236999999997],
  [1, 'lbf', 4.4482216152605],
  [1, 'kgf', 9.80665],
  [1, 'lbf/in', 175.12683524647636],
  [1, 'psi', 6894.757293168361],
  [1, 'lbf·ft', 1.3558179483314001],
  [1, 'gal (US)', 0.0037854117839999997],
  [1, 'deg', 0.017453292519943295],
  [1, 'bar', 100000],
  [1, 'l', 0.001],
  [0, 'C', 273.15],
  [32, 'F', 273.15],
  [70, 'F', 294.26111111],
];

describe('units', () => {
  test.each(bySciPy)('%d %s is %d in SI, as in scipy.constants', (value, unit, si) => {
    // Both round a few products of exact factors: some units in the sixteenth digit. 70 F was printed to eleven digits.
    expect(Math.abs(toSI(value, unit) / si - 1)).toBeLessThan(value === 70 ? 2e-11 : 1e-15);
  });

  test('an inch, a pound and a kilogram-force per millimetre are exact', () => {
    expect(toSI(1, 'in')).toBe(0.0254);
    expect(toSI(1, 'lb')).toBe(0.45359237);
    expect(toSI(1, 'kgf/mm')).toBe(9806.65);
    expect(toSI(9.5, 'mm')).toBe(0.0095);
  });

  test('one newton per millimetre is 5.710 pound-force per inch', () => {
    expect(fromSI(toSI(1, 'N/mm'), 'lbf/in')).toBeCloseTo(5.710147, 6); // 25.4 / 4.4482216
  });

  test('a value comes back from SI as typed, to 1e-15', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...offsetFree),
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        (unit, value) => {
          const back = fromSI(toSI(value, unit), unit);
          // Below about 1e-290 doubles lose digits; no figure of the trade is that small.
          if (Math.abs(value) > 1e-200) expect(Math.abs(back / value - 1)).toBeLessThanOrEqual(1e-15);
        },
      ),
      { seed: 1, numRuns: 2000 },
    );
  });

  test('a temperature comes back to 1e-15 of its absolute value', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('C', 'F'),
        fc.double({ min: -40, max: 400, noNaN: true }),
        (unit, value) => {
          const back = fromSI(toSI(value, unit), unit);
          // The absolute zero is some hundreds of degrees away: that is the size the rounding goes by.
          expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-15 * (Math.abs(value) + 460));
        },
      ),
      { seed: 2, numRuns: 2000 },
    );
  });

  test('a difference of temperatures knows no zero point', () => {
    expect(differenceToSI(9, 'F')).toBe(5);
    expect(differenceFromSI(5, 'C')).toBe(5);
    expect(differenceToSI(2, 'mm')).toBe(toSI(2, 'mm'));
  });

  test('every unit has one dimension, and a word that is no unit has none', () => {
    expect(new Set(allUnits).size).toBe(allUnits.length);
    for (const dimension of dimensions)
      for (const unit of unitsOf(dimension)) expect(dimensionOf(unit)).toBe(dimension);
    expect(dimensionOf('furlong')).toBeUndefined();
    expect(dimensionOf('constructor')).toBeUndefined();
  });

  test('a unit that is none of ours breaks the contract, with its name', () => {
    expect(() => toSI(1, 'stone' as Unit)).toThrow(/unit "stone": must be one of mm, cm/);
  });
});
