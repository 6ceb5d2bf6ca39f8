import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { between } from '../testing/arbitraryStrut.ts';
import { boltPlay, faceRoom, type MountSI, mostPlay, sideFloat, sleeveNeeded, sleevePlay } from './mount.ts';

const unknown: MountSI = { bore: null, bolt: null, eyeWidth: null, clampWidth: null, sleeve: null };
const mm = 1e-3;

describe('A sleeve for an eye', () => {
  // Common practice, no source: such an eye on such a bolt. Half an inch is 12.7 mm; (14 − 12.7)/2 = 0.65.
  test('of 14 mm on a bolt of 1/2 in goes from 12.7 to 14 mm, its wall 0.65 mm', () => {
    const needed = sleeveNeeded({ ...unknown, bore: 14 * mm, bolt: 0.5 * 0.0254 })!;
    expect(needed.inner).toBeCloseTo(12.7 * mm, 12);
    expect(needed.outer).toBe(14 * mm);
    expect(needed.wall).toBeCloseTo(0.65 * mm, 12);
    expect([needed.longerThan, needed.atMost]).toEqual([null, null]);
  });

  test('is not needed where the bolt fills the eye within a running fit, nor told where one of the two is not known', () => {
    expect(sleeveNeeded({ ...unknown, bore: 10.2 * mm, bolt: 10 * mm })).toBeNull();
    expect(sleeveNeeded({ ...unknown, bore: 10 * mm })).toBeNull();
    expect(sleeveNeeded({ ...unknown, bolt: 10 * mm })).toBeNull();
  });

  test('must be longer than the eye and may be as long as the room between the faces', () => {
    const needed = sleeveNeeded({
      ...unknown,
      bore: 12 * mm,
      bolt: 10 * mm,
      eyeWidth: 0.02,
      clampWidth: 0.022,
    });
    expect(needed).toMatchObject({ longerThan: 0.02, atMost: 0.022 });
  });

  test('as it is needed plays nowhere, leaves float, and fills the room between the faces', () => {
    fc.assert(
      fc.property(between(0.008, 0.016), between(0.001, 0.008), between(0.01, 0.04), (bolt, more, width) => {
        const mount = { ...unknown, bore: bolt + more, bolt, eyeWidth: width, clampWidth: width + 0.001 };
        const { inner, outer, atMost } = sleeveNeeded(mount)!;
        const fitted = { ...mount, sleeve: { inner, outer, length: atMost! } };
        expect(boltPlay(fitted)).toBe(0);
        expect(sleevePlay(fitted)).toBe(0);
        expect(sideFloat(fitted)).toBeCloseTo(0.001, 12);
        expect(faceRoom(fitted)).toBe(0);
      }),
      { seed: 71 },
    );
  });
});

describe('Along the bolt', () => {
  const sleeve = { inner: 10 * mm, outer: 12 * mm, length: 24 * mm };

  test('a sleeve of 24 mm in an eye of 23.4 mm leaves 0.6 mm of float', () => {
    expect(sideFloat({ ...unknown, eyeWidth: 23.4 * mm, sleeve })).toBeCloseTo(0.6 * mm, 12);
  });

  test('a sleeve shorter than its eye has the faces clamp the eye: the float is below 0', () => {
    expect(sideFloat({ ...unknown, eyeWidth: 24.5 * mm, sleeve })).toBeCloseTo(-0.5 * mm, 12);
  });

  test('without a sleeve the eye floats between the faces', () => {
    expect(sideFloat({ ...unknown, eyeWidth: 20 * mm, clampWidth: 21 * mm })).toBeCloseTo(mm, 12);
  });

  test('the longer of eye and sleeve takes up the room between the faces', () => {
    const mount = { ...unknown, clampWidth: 25 * mm, sleeve };
    expect(faceRoom({ ...mount, eyeWidth: 23 * mm })).toBeCloseTo(mm, 12);
    expect(faceRoom({ ...mount, eyeWidth: 26 * mm })).toBeCloseTo(-mm, 12);
  });

  test('what is not measured is not known', () => {
    expect([sideFloat, faceRoom, boltPlay, sleevePlay].map((work) => work(unknown))).toEqual([
      null,
      null,
      null,
      null,
    ]);
    expect(sideFloat({ ...unknown, sleeve })).toBeNull();
  });
});

describe('The play of a running fit', () => {
  // ISO 286-2, H11/c11, from memory: 10 mm: hole 0 to +90 µm, shaft −80 to −170 µm; 12 mm: +110, −95 to −205; 20 mm: +130, −110 to −240.
  test.each([
    [10, 90 + 170],
    [12, 110 + 205],
    [20, 130 + 240],
  ])('at %d mm is %d µm at most', (diameter, play) => {
    expect(mostPlay(diameter * mm)).toBeCloseTo(play * 1e-6, 12);
  });

  test('is not told outside 3 to 30 mm', () => {
    expect([mostPlay(3 * mm), mostPlay(31 * mm), mostPlay(0)]).toEqual([null, null, null]);
  });

  test('grows with the diameter', () => {
    fc.assert(
      fc.property(between(0.0031, 0.03), between(0.0031, 0.03), (a, b) => {
        const [small, large] = [Math.min(a, b), Math.max(a, b)];
        expect(mostPlay(large)!).toBeGreaterThanOrEqual(mostPlay(small)!);
      }),
      { seed: 72 },
    );
  });
});
