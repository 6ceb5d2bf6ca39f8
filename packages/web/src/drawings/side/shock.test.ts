import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cruiser, tourer, traveller } from '../invented.ts';
import { buildOf } from './build.ts';
import { eyesOf } from './shock.ts';
import { rearAxle } from './standing.ts';

const machine = fc.constantFrom(tourer, cruiser, { ...tourer, rear: { ...tourer.rear, shocks: 1 as const } });

/** Of a machine whose shock's length nobody read, unless `lengthMm` says it. */
function at(figures: typeof tourer, rise: number, lengthMm: number | null = null, strokeMm = 0) {
  const build = { ...buildOf(figures), shockLengthMm: lengthMm };
  const eyes = eyesOf(build, rearAxle(build.rearRadiusMm, rise, build.pivot), strokeMm);
  const [x, height] = [eyes.upper[0] - eyes.lower[0], eyes.upper[1] - eyes.lower[1]];
  return { ...eyes, length: Math.hypot(x, height), lean: Math.atan2(x, height) };
}

describe('the shock', () => {
  it('has its upper eye in the body: it stays there while the wheel moves', () => {
    fc.assert(
      fc.property(machine, fc.double({ min: -20, max: 120, noNaN: true }), (figures, rise) => {
        expect(at(figures, rise).upper).toEqual(at(figures, 0).upper);
      }),
      { seed: 91 },
    );
  });

  it('has its lower eye on the arm, as far from the axle in every state', () => {
    fc.assert(
      fc.property(machine, fc.double({ min: -20, max: 120, noNaN: true }), (figures, rise) => {
        const build = buildOf(figures);
        const fromPivot = ([x, height]: readonly [number, number]) =>
          Math.hypot(x - build.pivot.xMm, height - 12 - build.pivot.heightMm);
        expect(fromPivot(at(figures, rise).lower)).toBeCloseTo(fromPivot(at(figures, 0).lower), 6);
      }),
      { seed: 92 },
    );
  });

  it('shortens by what virtual work says: the eye’s rise times the cosine of the lean', () => {
    // Small rise dz of the axle: the eye at 0.14 of the arm rises 0.86 dz, square to a nearly level arm; the length loses
    // the part along the shock. 1 mm of rise is small; the arm's own slope of 3.4° and the second order cost under 0.06 mm.
    const [before, after] = [at(tourer, 0), at(tourer, 1)];
    expect(before.length - after.length).toBeCloseTo(0.86 * Math.cos(before.lean), 1);
  });

  it('is as long as it is fully out less its stroke where its length is known, with the same lower eye and lean', () => {
    const length = fc.double({ min: 250, max: 520, noNaN: true });
    const stroke = fc.double({ min: 0, max: 120, noNaN: true });
    fc.assert(
      fc.property(machine, length, stroke, (figures, lengthMm, strokeMm) => {
        const [known, unknown] = [at(figures, 30, lengthMm, strokeMm), at(figures, 30)];
        expect(known.length).toBeCloseTo(lengthMm - strokeMm, 6);
        expect(known.lower).toEqual(unknown.lower);
        expect(known.lean).toBeCloseTo(unknown.lean, 9);
      }),
      { seed: 93 },
    );
  });

  it('leans forward, a single one more than one of a pair', () => {
    const single = at({ ...tourer, rear: { ...tourer.rear, shocks: 1 } }, 40);
    const pair = at(tourer, 40);
    expect(pair.lean).toBeGreaterThan(0);
    expect(single.lean).toBeGreaterThan(pair.lean);
    expect(at(traveller, 40).length).toBeLessThan(at(traveller, 0).length);
  });
});
