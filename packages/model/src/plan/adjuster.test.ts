import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { between } from '../testing/arbitraryStrut.ts';
import { type AdjusterSI, rangeOf, readingAt, settingNear, turnsBetween } from './adjuster.ts';

/** 1.5 mm a turn, set to quarter turns; the reading shrinks as the collar goes down. */
const collar = {
  kind: 'continuous',
  most: 0.0203,
  quantum: 0.000375,
  lead: 0.0015,
  readingAtZero: 0.06,
  sense: -1,
} as const satisfies AdjusterSI;
const cam: AdjusterSI = { kind: 'steps', positions: [0, 0.004, 0.008, 0.0115, 0.0145] };

describe('a collar', () => {
  test('ranges from its loosest to its tightest, both of which can be set', () => {
    expect(rangeOf(collar)).toEqual({ least: 0, most: 0.0203 });
    expect(settingNear(collar, 0.0203, 0.002).position).toBe(0.0203);
    expect(settingNear(collar, 0.5, 0.002).position).toBe(0.0203);
    expect(settingNear(collar, 0, 0.002).position).toBe(0);
    expect(settingNear(collar, -0.01, 0.002).position).toBe(0);
  });

  test('is set to the nearest whole quarter turn from where it stands, inside its range', () => {
    fc.assert(
      fc.property(between(0, 0.0203), between(0, 0.0203), (wanted, origin) => {
        const { position } = settingNear(collar, wanted, origin);
        expect(position).toBeGreaterThanOrEqual(0);
        expect(position).toBeLessThanOrEqual(0.0203);
        expect(Math.abs(position - wanted)).toBeLessThanOrEqual(0.5 * 0.000375 + 1e-15);
        const quarters = (position - origin) / 0.000375;
        const atEnd = position === 0 || position === 0.0203;
        if (!atEnd) expect(quarters).toBeCloseTo(Math.round(quarters), 9);
      }),
      { seed: 911 },
    );
  });

  test('reads between its two faces as its file says', () => {
    expect(readingAt(collar, 0.01)).toBeCloseTo(0.05, 12);
    expect(readingAt({ ...collar, sense: 1 }, 0.01)).toBeCloseTo(0.07, 12);
    expect(settingNear(collar, 0.00975, 0)).toEqual({
      position: expect.closeTo(0.00975, 12),
      reading: expect.closeTo(0.05025, 12),
      step: null,
    });
  });

  test('of 1.5 mm a turn goes 7.5 mm in five turns', () => {
    expect(turnsBetween(collar, 0.002, 0.0095)).toBeCloseTo(5, 12);
    expect(turnsBetween(collar, 0.0095, 0.002)).toBeCloseTo(-5, 12);
  });

  test('that is a spacer has no turns', () => {
    expect(turnsBetween({ ...collar, lead: null }, 0, 0.01)).toBeNull();
  });
});

describe('a stepped cam', () => {
  test('ranges to its last step, and has no turns', () => {
    expect(rangeOf(cam)).toEqual({ least: 0, most: 0.0145 });
    expect(turnsBetween(cam, 0, 0.004)).toBeNull();
  });

  test('is set to the nearest step; halfway between two, to the looser', () => {
    expect(settingNear(cam, 0.0071, 0)).toEqual({ position: 0.008, reading: null, step: 2 });
    expect(settingNear(cam, 0.006, 0)).toEqual({ position: 0.004, reading: null, step: 1 });
    expect(settingNear(cam, 1, 0).step).toBe(4);
    expect(settingNear(cam, -1, 0).step).toBe(0);
  });
});
