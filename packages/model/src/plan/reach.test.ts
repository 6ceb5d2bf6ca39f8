import { describe, expect, test } from 'vitest';
import type { AdjusterSI } from './adjuster.ts';
import type { Reach } from './answer.ts';
import { beyondTightest, reachOf, roomToTighten } from './reach.ts';

const collar: AdjusterSI = {
  kind: 'continuous',
  most: 0.02,
  quantum: 0.000375,
  lead: 0.0015,
  readingAtZero: 0.05,
  sense: 1,
};
const cam: AdjusterSI = { kind: 'steps', positions: [0, 0.005, 0.01, 0.02] };

/** Loosest, aim and tightest position, in mm; figures of the answer in mm too. */
test.each<[string, AdjusterSI, number, number, number, Reach]>([
  ['the aim in the range', collar, 8, 10, 12, { kind: 'reached', left: 10 }],
  ['the aim in the range, the band partly past it', collar, 14, 18, 22, { kind: 'reached', left: 2 }],
  ['the aim just at the end', collar, 18, 20, 22, { kind: 'reached', left: 0 }],
  [
    'only the loose part of the band',
    collar,
    18,
    21,
    24,
    { kind: 'at the edge', short: 1, past: 'tightest' },
  ],
  ['only the tight part of the band', collar, -4, -1, 2, { kind: 'at the edge', short: 1, past: 'loosest' }],
  [
    'nothing of the band, too tight',
    collar,
    23,
    25,
    27,
    { kind: 'out of reach', short: 3, past: 'tightest' },
  ],
  ['nothing of the band, too loose', collar, -9, -7, -5, { kind: 'out of reach', short: 5, past: 'loosest' }],
  ['a step in the band', cam, 8, 9, 11, { kind: 'reached', left: 11 }],
  ['no step in the band', cam, 12, 13, 14, { kind: 'between steps', nearest: -3 }],
  ['the band between two steps, nearer the tighter', cam, 16, 17, 18, { kind: 'between steps', nearest: 3 }],
  [
    'less than half a step past the last step, which lies in the band',
    cam,
    18,
    21,
    24,
    { kind: 'reached', left: 0 },
  ],
  ['less than half a step before the first', cam, -4, -1, 2, { kind: 'reached', left: 21 }],
  [
    'more than half a step past the last step, which lies in the band',
    cam,
    18,
    26,
    34,
    { kind: 'at the edge', short: 6, past: 'tightest' },
  ],
])('%s', (_, adjuster, loosest, aim, tightest, expected) => {
  const mm = (value: number): number => value / 1000;
  const reach = reachOf(adjuster, mm(loosest), mm(aim), mm(tightest), 0);
  const inMm = Object.entries(reach).map(([key, value]) => [
    key,
    typeof value === 'number' ? expect.closeTo(1000 * value, 9) : value,
  ]);
  expect(expected).toEqual(Object.fromEntries(inMm));
});

describe('a band that moves tighter', () => {
  /** Positions in mm; steps at 0, 5, 10 and 20. */
  const room = (adjuster: AdjusterSI, loosest: number, aim: number, tightest: number): number =>
    1000 * roomToTighten(adjuster, loosest / 1000, aim / 1000, tightest / 1000);

  test('is reached on a collar until its aim is at the end', () => {
    expect(room(collar, 5, 8, 11)).toBeCloseTo(12, 6);
  });

  test('is reached on a cam until its aim lies half a step past the last', () => {
    // 6 mm to either side: always a step in it. The last step is 10 mm.
    expect(room(cam, 3, 9, 15)).toBeCloseTo(16, 6);
  });

  test('is reached no longer where the nearest step has left it', () => {
    // 3 mm to either side, at step 10: beyond 13 that step is not in the band, and 20 is not yet.
    expect(room(cam, 6, 9, 12)).toBeCloseTo(4, 6);
  });

  test('is reached no longer where the next step is the nearest but not in it yet', () => {
    // 9 mm on the loose side, 1 on the tight: from 15 on step 20 is the nearer, and lies past the band.
    expect(room(cam, 2, 11, 12)).toBeCloseTo(4, 6);
  });

  test('asks for a looser one only where the tightest setting does not reach it', () => {
    expect(beyondTightest(collar, 0.018, 0.023)).toBeCloseTo(0.003, 12);
    expect(beyondTightest(collar, 0.012, 0.015)).toBeCloseTo(-0.005, 12);
    // A cam reaches half a step further, as long as its last step is in the band.
    expect(beyondTightest(cam, 0.018, 0.023)).toBeCloseTo(-0.002, 12);
    expect(beyondTightest(cam, 0.021, 0.023)).toBeCloseTo(0.001, 12);
  });
});
