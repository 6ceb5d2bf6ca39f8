import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { StrutSI } from '../dampers/strut.ts';
import { arbitraryShock, between } from '../testing/arbitraryStrut.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { blankEndAt, endAt, strutAt, strutsEnergy } from './endAt.ts';
import { ATMOSPHERE, type EndSI } from './machine.ts';

const full: StrutSI = {
  spring: { kind: 'linear', rate: 30_000 },
  preload: 0.02,
  gas: { area: 1e-4, pressure: ATMOSPHERE + 1e6, volume: 1e-4, exponent: 1 },
  rubber: { start: 0.05, rate: 10_000, hardening: 1e8 },
  topOut: { rate: 40_000, length: 0.01 },
  friction: 50,
};

function at(strut: StrutSI, stroke: number) {
  const out = { force: 0, rate: 0 };
  strutAt(strut, stroke, out);
  return out;
}

describe('a strut', () => {
  test('near its extension: spring and gas push, the top-out spring pulls', () => {
    // At 4 mm: 30 · 24 = 720 N; gas 0.1 m² · 1/1000 · (1.101325/0.996 − 0.101325) MPa …; top-out 40 · 6 = 240 N.
    const gas = 1e-4 * ((ATMOSPHERE + 1e6) / (1 - 0.004) - ATMOSPHERE);
    expect(at(full, 0.004).force).toBeCloseTo(720 + gas - 240, 9);
    expect(at(full, 0.004).rate).toBeCloseTo(
      30_000 + (1e-8 * (ATMOSPHERE + 1e6)) / (1e-4 * 0.996 ** 2) + 40_000,
      6,
    );
  });

  test('deep in: the rubber pushes too', () => {
    // At 60 mm: 30 · 80 = 2400 N; rubber 10 mm in: 100 N and 1e8 · 1e-6 = 100 N.
    const gas = 1e-4 * ((ATMOSPHERE + 1e6) / (1 - 0.06) - ATMOSPHERE);
    expect(at(full, 0.06).force).toBeCloseTo(2400 + gas + 200, 9);
  });

  test('with a loose spring is held by the rest alone', () => {
    const loose = { ...plainStrut(30_000, -0.02), gas: full.gas };
    expect(at(loose, 0.01).force).toBeCloseTo(1e-4 * ((ATMOSPHERE + 1e6) / 0.99 - ATMOSPHERE), 9);
    expect(at(plainStrut(30_000, -0.02), 0.01)).toEqual({ force: 0, rate: 0 });
  });

  test('has its force as the slope of its energy, and its rate as that of its force', () => {
    const strut = arbitraryShock({ stroke: 0.08, force: 1500 });
    fc.assert(
      fc.property(strut, between(0.001, 0.079), (drawn, stroke) => {
        const step = 1e-6;
        const end = { ...levelMachine(drawn).rear };
        const [below, above] = [at(drawn, stroke - step), at(drawn, stroke + step)];
        const slope =
          (strutsEnergy(end, stroke + step, 0) - strutsEnergy(end, stroke - step, 0)) / (2 * step);
        // The trapezoid's error, a kink included: a quarter of the rate's change times the step; energies below 1 kJ
        // round to 1e-13 J.
        const kink = Math.abs(above.rate - below.rate);
        expect(Math.abs(slope - 0.5 * (below.force + above.force))).toBeLessThanOrEqual(
          0.25 * kink * step + 1e-5,
        );
        const rate = (above.force - below.force) / (2 * step);
        expect(rate).toBeGreaterThanOrEqual(Math.min(below.rate, above.rate) * (1 - 1e-9) - 1e-4);
        expect(rate).toBeLessThanOrEqual(Math.max(below.rate, above.rate) * (1 + 1e-9) + 1e-4);
      }),
      { seed: 731, numRuns: 1000 },
    );
  });
});

describe('an end', () => {
  const [left, right] = [plainStrut(30_000, 0.01), plainStrut(20_000, 0.03)];

  test('adds up its struts, which may differ, and brings them to the wheel', () => {
    const end: EndSI = { ...levelMachine(left).rear, struts: [left, right] };
    const out = blankEndAt();
    endAt(end, 0, 0, 0.04, 0, out);
    // 20 mm of stroke: 30 · 30 + 20 · 50 = 1900 N, at a ratio of 0.5; 50 N/mm at its square.
    expect(out.stroke).toBeCloseTo(0.02, 12);
    expect(out.force).toBeCloseTo(950, 9);
    expect(out.wheelRate).toBeCloseTo(12_500, 9);
    expect(out.height).toBeCloseTo(0.34, 12);
  });

  test('counts the force of its springs in the wheel rate where the ratio changes', () => {
    const end: EndSI = {
      ...levelMachine(left).rear,
      kinematics: { kind: 'quadratic', slope: 0.5, bend: 1 },
      struts: [left],
    };
    const out = blankEndAt();
    endAt(end, 0, 0, 0.05, 0, out);
    // s = 25 + 2.5 mm, MR = 0.6, MR' = 2/m: 30 · 0.36 N/mm and 30 · 37.5 N · 2/m.
    expect(out.force).toBeCloseTo(1125 * 0.6, 9);
    expect(out.wheelRate).toBeCloseTo(10_800 + 2250, 9);
  });

  test('has friction along each strut, against the way it came', () => {
    const end: EndSI = {
      ...levelMachine(left).rear,
      struts: [
        { ...left, friction: 40 },
        { ...right, friction: 60 },
      ],
    };
    const forces = ([1, 0, -1] as const).map((settling) => {
      const out = blankEndAt();
      endAt(end, 0, 0, 0.04, settling, out);
      return out.force;
    });
    expect(forces).toEqual([1000, 950, 900].map((force) => expect.closeTo(force, 9)));
  });
});
