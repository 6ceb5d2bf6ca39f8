/**
 * Threads that set a preload. ISO 261 gives the pitches (read in a copy of its preferred sizes, liquisearch.com); a single start
 * moves on by its pitch a turn. An inch is 25.4 mm by definition, so that leads by threads an inch are exact; the rest is arithmetic.
 * Tolerances: 1e-12 relative, the rounding of a few multiplications.
 */
import { type AdjusterSI, turnsBetween } from '@sagwright/model/plan/adjuster';
import { springAt } from '@sagwright/model/springs/spring';
import { expect, test } from 'vitest';

function collar(lead: number): AdjusterSI {
  return { kind: 'continuous', most: 0.03, quantum: lead / 4, lead, readingAtZero: 0, sense: 1 };
}

test.each([
  [0.0015, 0.0075, 5],
  [0.0254 / 16, 0.000396875, 0.25],
  [0.0254 / 12, 0.0254, 12],
  [0.0254 / 18, 0.0254, 18],
])('a lead of %d m goes %d m in %d turns', (lead, length, turns) => {
  expect(turnsBetween(collar(lead), 0, length)! / turns).toBeCloseTo(1, 12);
});

test('one turn of 1.5 mm on a spring of 95 N/mm adds 142.5 N', () => {
  const at = (compression: number): number => {
    const out = { force: 0, rate: 0, energy: 0 };
    springAt({ kind: 'linear', rate: 95_000 }, compression, out);
    return out.force;
  };
  expect((at(0.0115) - at(0.01)) / 142.5).toBeCloseTo(1, 12);
});
