/**
 * Overall diameters of motorcycle tyres by their size, as the tyre and rim standards tabulate them (ETRTO Standards Manual, UN
 * Regulation No. 75 annex 5 for the older sizes; all from memory, the tables themselves were not seen), and the formula of UN
 * Regulation No. 75, paragraph 6.1: D = d + 2H (from memory), d the rim code in inches as whole millimetres.
 * Bound: the tables round to a millimetre.
 */
import { nominalRadius } from '@sagwright/model/tyres/size';
import { expect, test } from 'vitest';

test.each([
  ['130/80-17', 130, 80, 17, 640],
  ['120/70-17', 120, 70, 17, 600],
  ['180/55-17', 180, 55, 17, 630],
  ['110/80-19', 110, 80, 19, 659],
  ['90/90-21', 90, 90, 21, 695],
  ['150/70-17', 150, 70, 17, 642],
  ['130/90-16', 130, 90, 16, 640],
])('%s measures %5$d mm across', (_size, width, aspect, rim, diameter) => {
  const radius = nominalRadius({ width: width / 1000, aspect: aspect / 100, rim });
  expect(Math.abs(2000 * radius - diameter)).toBeLessThanOrEqual(0.5 + 1e-9);
});
