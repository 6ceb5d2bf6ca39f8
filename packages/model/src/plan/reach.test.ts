import { expect, test } from 'vitest';
import type { AdjusterSI } from './adjuster.ts';
import type { Reach } from './answer.ts';
import { reachOf } from './reach.ts';

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
