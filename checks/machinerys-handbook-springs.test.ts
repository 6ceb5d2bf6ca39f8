/**
 * Machinery's Handbook, 31st ed. (Industrial Press, 2020), chapter on spring design, pages shown by the publisher.
 * End types: p. 318, Table 3. Deflections: pp. 326–327, Table 5, compression and extension spring deflections.
 */
import {
  activeCoils,
  type CoilEnds,
  coilRate,
  freeLength,
  meanDiameter,
  shearStress,
  solidLength,
} from '@sagwright/model/springs/coil';
import { describe, expect, test } from 'vitest';

const inch = 25.4e-3;
const lbf = 4.4482216152605;
const psi = lbf / inch ** 2;

/** Table 3 for 8 total coils of unit wire at a pitch of 3 wires: TC = 8, d = 1, p = 3. */
const endTypes: readonly (readonly [CoilEnds, number, number, number])[] = [
  // ends, active N, solid height SH, free length FL
  ['plain', 8, 9, 25], //          N = TC       SH = (TC + 1) d   FL = p TC + d
  ['plain ground', 7, 8, 24], //   N = TC − 1   SH = TC d         FL = p TC
  ['closed', 6, 9, 21], //         N = TC − 2   SH = (TC + 1) d   FL = p N + 3 d
  ['closed ground', 6, 8, 20], //  N = TC − 2   SH = TC d         FL = p N + 2 d
];

test.each(endTypes)('%s ends: active coils, solid height, free length', (kind, active, solid, free) => {
  // Whole numbers of whole numbers: exact.
  expect(activeCoils(8, kind)).toBe(active);
  expect(solidLength(8, kind, 1)).toBe(solid);
  expect(freeLength(8, kind, 1, 3)).toBe(free);
});

/**
 * Table 5 for springs of 15/16 and 1 inch outside diameter: wire [in], deflection per coil [in], load [lbf]. The table is
 * made for a shear modulus of 11.2 Mpsi and a stress of 100 000 psi without curvature factor (its footnotes, from memory;
 * all its entries bear both out). The row of 7/8 inch is not used: its load at 0.0915 in, 39.4 for 38.4, is a misprint.
 */
const shearModulus = 11.2e6 * psi;
const wires = [
  0.072, 0.08, 0.0915, 0.0938, 0.1055, 0.1205, 0.125, 0.135, 0.1483, 0.1563, 0.162, 0.177, 0.1875, 0.192,
  0.207, 0.2188, 0.2253,
];
const rows = [
  {
    outside: 15 / 16,
    deflections: [
      0.292, 0.258, 0.219, 0.213, 0.1841, 0.1554, 0.1479, 0.1338, 0.1178, 0.1096, 0.1041, 0.0917, 0.0842,
      0.0812, 0.0723, 0.0662, 0.0632,
    ],
    loads: [
      16.94, 23.5, 35.6, 38.4, 55.4, 84.1, 94.4, 120.4, 162.3, 191.9, 215, 286, 345, 373, 477, 572, 631,
    ],
  },
  {
    outside: 1,
    deflections: [
      0.336, 0.297, 0.253, 0.246, 0.213, 0.1801, 0.1718, 0.1555, 0.1372, 0.1278, 0.1216, 0.1074, 0.0986,
      0.0954, 0.0852, 0.0783, 0.0747,
    ],
    loads: [
      15.8, 21.9, 33.1, 35.8, 51.5, 78.1, 87.6, 111.7, 150.4, 177.6, 198.8, 264, 319, 344, 439, 526, 580,
    ],
  },
];

/** Three or four figures each: half of the last is 0.23 % of .219 and 0.23 % of 21.9, so 0.46 % of their ratio at most. */
const rateWithin = 0.0046;
const stressWithin = 0.0025;

describe.each(rows)(
  'deflection per coil of springs $outside in outside',
  ({ outside, deflections, loads }) => {
    test('has a load and a deflection for every wire', () => {
      expect(deflections).toHaveLength(wires.length);
      expect(loads).toHaveLength(wires.length);
    });

    test.each(wires.map((wire, i) => [wire, deflections[i]!, loads[i]!] as const))(
      'wire %f in: %f in per coil at %f lbf',
      (wire, deflection, load) => {
        const coil = {
          wire: wire * inch,
          mean: meanDiameter(outside * inch, wire * inch),
          active: 1,
          shearModulus,
        };
        expect(Math.abs((load * lbf) / (deflection * inch) / coilRate(coil) - 1)).toBeLessThan(rateWithin);
        expect(Math.abs(shearStress(coil, load * lbf, 1) / (100_000 * psi) - 1)).toBeLessThan(stressWithin);
      },
    );
  },
);
