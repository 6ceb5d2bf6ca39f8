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

/** Conversion factors as printed: NIST SP 811 (2008), appendix B.8, seven significant digits; exact ones bold there. */
const printed: readonly [number, Unit, number][] = [
  [1, 'in', 0.0254],
  [1, 'lb', 0.45359237],
  [1, 'lbf', 4.448222],
  [1, 'kgf', 9.80665],
  [1, 'lbf/in', 175.1268],
  [1, 'psi', 6894.757],
  [1, 'lbf·ft', 1.355818],
  [1, 'gal (US)', 0.003785412],
  [1, 'deg', 0.01745329],
  [32, 'F', 273.15],
  [0, 'C', 273.15],
];

describe('units', () => {
  test.each(printed)('%d %s is %d in SI, as printed in NIST SP 811', (value, unit, si) => {
    expect(Math.abs(toSI(value, unit) / si - 1)).toBeLessThan(5e-7); // half a unit in the seventh digit of 1.000000
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
