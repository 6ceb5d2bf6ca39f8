/**
 * Speed symbols shared by ISO 4000-1, ETRTO and UN Regulation No. 75. The standards were not seen; the numbers were found
 * alike in open data files. Whole table entries: exact but for the rounding of 3.6.
 */
import { type SpeedLetter, speedOf } from '@sagwright/model/tyres/speedSymbol';
import { speedSymbols } from '@sagwright/records/schema/limits';
import { expect, test } from 'vitest';

const table: Readonly<Record<SpeedLetter, number>> = {
  ...{ B: 50, C: 60, D: 65, E: 70, F: 80, G: 90, J: 100, K: 110, L: 120, M: 130, N: 140 },
  ...{ P: 150, Q: 160, R: 170, S: 180, T: 190, U: 200, H: 210, V: 240, W: 270, Y: 300 },
};

test('every letter that a job may hold stands for its speed', () => {
  for (const letter of speedSymbols) expect(speedOf(letter) * 3.6).toBeCloseTo(table[letter], 9);
  expect(Object.keys(table).sort()).toEqual([...speedSymbols].sort());
});

test('in the order of the table each allows more than the one before', () => {
  const speeds = speedSymbols.map(speedOf);
  for (const [i, speed] of speeds.slice(1).entries()) expect(speed).toBeGreaterThan(speeds[i]!);
});
