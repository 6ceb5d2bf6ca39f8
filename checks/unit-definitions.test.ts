/**
 * Definitions: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, g_n = 9.80665 m/s² (international yard and pound, 1959; BIPM SI
 * Brochure), as in GNU units, definitions.units 3.15. The digits below are worked out from these with exact fractions.
 * Rounded factors: NIST SP 811, appendix B.8, as in the R package NISTunits.
 *
 * 1e-14 relative is a few dozen roundings of a double; the digits printed hold to half of the 15th.
 */
import { fromSI, toSI, type Unit } from '@sagwright/records/units';
import { expect, test } from 'vitest';

const relative = 1e-14;

test.each<readonly [Unit, number, number]>([
  // unit, SI value by definition, factor as NIST rounds it
  ['lbf', 4.4482216152605, 4.448222],
  ['lbf/in', 175.126835246476, 175.1268],
  ['psi', 6894.75729316836, 6894.757],
  ['lbf·ft', 1.3558179483314, 1.355818],
  ['lbf·in', 0.112984829027617, 0.1129848],
  ['kgf·m', 9.80665, 9.80665],
  ['lb', 0.45359237, 0.4535924],
  ['kgf/mm', 9806.65, 9806.65],
  ['in', 0.0254, 0.0254],
  ['mph', 0.44704, 0.44704],
])('1 %s', (unit, exact, nist) => {
  expect(Math.abs(toSI(1, unit) / exact - 1)).toBeLessThan(relative);
  // NIST gives seven figures: half of the last is at most 4e-7 of the value.
  expect(Math.abs(toSI(1, unit) / nist - 1)).toBeLessThan(4e-7);
});

test.each<readonly [number, Unit, number, Unit]>([
  [1, 'kgf/mm', 55.997414594959, 'lbf/in'],
  [1, 'N/mm', 5.71014715473265, 'lbf/in'],
  [500, 'lbf/in', 87.5634176232381, 'N/mm'],
  [9.5, 'kgf/mm', 93.163175, 'N/mm'],
  [1, 'bar', 14.5037737730209, 'psi'],
  [150, 'lb', 68.0388555, 'kg'],
])('%f %s are %f %s', (value, unit, other, otherUnit) => {
  expect(Math.abs(fromSI(toSI(value, unit), otherUnit) / other - 1)).toBeLessThan(relative);
});

test('a spring of 1 kgf/mm is not 56 lbf/in: the short cut is 0.0046 % off', () => {
  expect(100 * (56 / fromSI(toSI(1, 'kgf/mm'), 'lbf/in') - 1)).toBeCloseTo(0.0046, 4);
});
