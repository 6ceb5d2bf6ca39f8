import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { forkAir, type GasSI, gasAt, gasEnergy } from './gas.ts';

const atmosphere = 101_325;

function at(gas: GasSI, stroke: number) {
  const out = { force: 0, rate: 0 };
  gasAt(gas, stroke, atmosphere, out);
  return { ...out, energy: gasEnergy(gas, stroke, atmosphere) };
}

/** A 14 mm rod, 12 bar, 0.12 litre: the rod of a shock. */
const rod: GasSI = { area: 1.54e-4, pressure: 12e5, volume: 1.2e-4, exponent: 1 };

describe('gas', () => {
  test('at full extension pushes with area times pressure above the air outside, and holds no energy', () => {
    const { force, energy } = at(rod, 0);
    expect(force).toBeCloseTo(1.54e-4 * (12e5 - atmosphere), 9);
    expect(energy).toBe(0);
  });

  test('halved in volume it has twice the pressure when settled, 2^1.4 times when fast', () => {
    const half = rod.volume / 2 / rod.area;
    expect(at(rod, half).force).toBeCloseTo(rod.area * (24e5 - atmosphere), 6);
    expect(at({ ...rod, exponent: 1.4 }, half).force).toBeCloseTo(
      rod.area * (2 ** 1.4 * 12e5 - atmosphere),
      6,
    );
  });

  test('force is the slope of the energy and rate the slope of the force', () => {
    const stroke = fc.double({ min: 0, max: 0.6, noNaN: true });
    const exponent = fc.oneof(fc.constant(1), fc.double({ min: 1, max: 1.67, noNaN: true }));
    fc.assert(
      fc.property(stroke, exponent, (s, n) => {
        const gas = { ...rod, exponent: n };
        const step = 1e-5;
        const here = at(gas, s);
        const below = at(gas, s - step);
        const above = at(gas, s + step);
        // Left out by the central difference: about step² (A/V)², with A/V up to 5.6 1/m: 3e-9 of the value.
        expect((above.energy - below.energy) / (2 * step) / here.force).toBeCloseTo(1, 6);
        expect((above.force - below.force) / (2 * step) / here.rate).toBeCloseTo(1, 6);
      }),
      { seed: 21 },
    );
  });

  test('an exponent just above 1 gives what 1 gives', () => {
    const settled = at(rod, 0.3);
    const nearly = at({ ...rod, exponent: 1 + 1e-12 }, 0.3);
    expect(nearly.force / settled.force).toBeCloseTo(1, 11);
    expect(nearly.rate / settled.rate).toBeCloseTo(1, 11);
    expect(nearly.energy / settled.energy).toBeCloseTo(1, 11);
  });

  test('a stroke that would close the volume is refused, and so is no stroke at all', () => {
    expect(() => gasEnergy(rod, 1, atmosphere)).toThrow(RangeError);
    expect(() => at(rod, rod.volume / rod.area)).toThrow(RangeError);
    expect(() => at(rod, 1)).toThrow(RangeError);
    expect(() => at(rod, Number.NaN)).toThrow(RangeError);
  });
});

describe('fork air', () => {
  test('at full compression leaves the gap in the bore', () => {
    const air = forkAir(1.3e-3, 1.1e-3, 0.11, 0.12, atmosphere, 1);
    expect(air.volume - air.area * 0.12).toBeCloseTo(1.3e-3 * 0.11, 15);
  });

  test('open to the air at full extension it has no force there', () => {
    expect(at(forkAir(1.3e-3, 1.1e-3, 0.11, 0.12, atmosphere, 1.3), 0).force).toBe(0);
  });

  test('a smaller gap never gives less force', () => {
    const stroke = fc.double({ min: 0, max: 0.12, noNaN: true });
    const gap = fc.double({ min: 0.05, max: 0.2, noNaN: true });
    fc.assert(
      fc.property(stroke, gap, gap, (s, one, other) => {
        const small = forkAir(1.3e-3, 1.1e-3, Math.min(one, other), 0.12, atmosphere, 1.3);
        const large = forkAir(1.3e-3, 1.1e-3, Math.max(one, other), 0.12, atmosphere, 1.3);
        expect(at(small, s).force).toBeGreaterThanOrEqual(at(large, s).force);
      }),
      { seed: 22 },
    );
  });

  test('a gap of nothing is refused', () => {
    expect(() => forkAir(1.3e-3, 1.1e-3, 0, 0.12, atmosphere, 1)).toThrow(/gap 0 m/);
  });
});
