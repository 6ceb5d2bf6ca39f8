/**
 * JCGM 100:2008 (GUM), example H.1, end-gauge calibration; figures read in an open copy of it (a test of an open uncertainty
 * calculator), not in the guide itself. Lengths in nm, temperatures in °C.
 *   l = l_S + d − l_S·(δα·θ + α_S·δθ)
 */
import { HALF_WIDTH_90, type SpreadPart, spreadOf } from '@sagwright/model/uncertainty/spread';
import { describe, expect, test } from 'vitest';

const standard = 50_000_623;
const difference = 215;
const expansion = 11.5e-6;
const deviationFromTwenty = -0.1;

/** Flat bands of half-width a have the standard uncertainty a/√3. */
const flat = (a: number): number => a / Math.sqrt(3);

function part(name: string, deviation: number, slope: number): SpreadPart {
  return { input: { name, deviation, moves: [] }, slope };
}

const parts = [
  part('standard', 25, 1),
  // 5.8 of the repeats, 10/2.57 and 20/3 of the comparator.
  part('difference', Math.hypot(5.8, 10 / 2.57, 20 / 3), 1),
  part('expansion', flat(2e-6), 0),
  part('temperature', Math.hypot(0.2, 0.5 / Math.SQRT2), 0),
  part('difference of expansions', flat(1e-6), -standard * deviationFromTwenty),
  part('difference of temperatures', flat(0.05), -standard * expansion),
];

describe('GUM H.1, an end gauge', () => {
  const { plusMinus, contributions } = spreadOf(parts);
  const inNanometres = (name: string): number =>
    contributions.find(({ input }) => input === name)!.halfWidth / HALF_WIDTH_90;

  test('reads 50.000838 mm', () => {
    // Both differences are estimated as 0.
    expect((standard + difference) / 1e6).toBeCloseTo(50.000838, 9);
  });

  // The guide rounds to the digits that stand here.
  test.each([
    ['standard', 25, 0],
    ['difference', 9.7, 1],
    ['difference of expansions', 2.9, 1],
    ['difference of temperatures', 16.6, 1],
  ])('gets %s to %d nm of its uncertainty', (name, published, digits) => {
    expect(inNanometres(name)).toBeCloseTo(published, digits);
  });

  test('has a combined uncertainty of 32 nm', () => {
    expect(Math.round(plusMinus / HALF_WIDTH_90)).toBe(32);
  });

  test('gets nothing from expansion and temperature, at first order', () => {
    expect(contributions.map(({ input }) => input)).not.toContain('expansion');
    expect(contributions.map(({ input }) => input)).not.toContain('temperature');
  });
});
