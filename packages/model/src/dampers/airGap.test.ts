import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { airLeft, bareGap, gapWithOil, immersedVolume } from './airGap.ts';

/** 41 mm bore: 1320.2543 mm². */
const bore = (Math.PI / 4) * 0.041 ** 2;
const spring = { volume: 60e-6, length: 0.4 };
const spacer = { volume: 15e-6, length: 0.12 };

describe('what stands in a leg', () => {
  test('displaces nothing above the oil, its share of height in between, and all of it under the oil', () => {
    expect(immersedVolume([spring], -0.01)).toBe(0);
    expect(immersedVolume([spring], 0.1)).toBeCloseTo(15e-6, 15);
    expect(immersedVolume([spring], 0.7)).toBe(60e-6);
    // 460 mm of oil: the whole spring and half the spacer upon it.
    expect(immersedVolume([spring, spacer], 0.46)).toBeCloseTo(67.5e-6, 15);
  });

  test('of no length, and at a height that is no number, is refused', () => {
    expect(() => immersedVolume([{ volume: 1e-6, length: 0 }], 0.1)).toThrow(/0 m long/);
    expect(() => immersedVolume([spring], Number.NaN)).toThrow(RangeError);
  });
});

describe('an air gap', () => {
  test('of 100 mm with a spacer that displaces 67.3 ml is 151 mm without: a gap as an owner found it', () => {
    // Common practice, no source: 51 mm of a 41 mm bore are 51 · 1320.2543 mm³ = 67.33 ml.
    expect(bareGap(0.1, bore, 67.33e-6)).toBeCloseTo(0.151, 5);
  });

  test('falls by 10 mm for 13.2 ml of oil in a 41 mm bore', () => {
    expect(gapWithOil(0.12, bore, 13.202543e-6)).toBeCloseTo(0.11, 8);
  });

  test('leaves the same air however it was read, for the oil is the same', () => {
    const depth = 0.55;
    fc.assert(
      fc.property(fc.double({ min: 0.09, max: 0.2, noNaN: true }), (bare) => {
        // The level with spring and spacer in, found by pouring: raised until oil and what is under it fill the bore.
        const column = [spring, spacer];
        let gap = bare;
        for (let i = 0; i < 200; i += 1) gap = bare - immersedVolume(column, depth - gap) / bore;
        const read = bareGap(gap, bore, immersedVolume(column, depth - gap));
        const solid = spring.volume + spacer.volume;
        expect(airLeft(bore, read, solid)).toBeCloseTo(airLeft(bore, bare, solid), 12);
      }),
      { seed: 31 },
    );
  });

  test('too small for what stands in the leg leaves no air', () => {
    expect(airLeft(bore, 0.05, 75e-6)).toBeLessThan(0);
  });

  test('in a bore of nothing is refused', () => {
    expect(() => bareGap(0.1, 0, 0)).toThrow(/0 m²/);
    expect(() => gapWithOil(0.1, 0, 0)).toThrow(RangeError);
    expect(() => airLeft(0, 0.1, 0)).toThrow(RangeError);
  });
});
