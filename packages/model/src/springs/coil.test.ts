import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  activeCoils,
  bergstraesserFactor,
  type CoilEnds,
  type CoilSI,
  coilRate,
  coilVolume,
  criticalFreeLength,
  freeLength,
  meanDiameter,
  shearStress,
  solidLength,
  springIndex,
  wahlFactor,
} from './coil.ts';

/** The size of a motorcycle shock's spring. */
const coil: CoilSI = { wire: 0.012, mean: 0.07, active: 5.5, shearModulus: 79.5e9 };

test('a coil displaces the torus of its wire, coil by coil', () => {
  // 4.5 mm of wire on 30 mm, 40 coils: 40 · π · 30 mm of 15.904 mm² are 59.96 ml.
  expect(coilVolume(0.0045, 0.03, 40)).toBeCloseTo(59.96e-6, 8);
});

describe('a coil spring', () => {
  test('of 12 mm wire has the rate that its formula gives by hand', () => {
    // 79 500 N/mm² · 12⁴ / (8 · 70³ · 5.5) = 1 648 512 000/15 092 000 N/mm
    expect(coilRate(coil)).toBeCloseTo((1_648_512_000 / 15_092_000) * 1000, 6);
  });

  test('is stiffer by the fourth power of its wire, softer by the cube of its diameter', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.9, max: 1.1, noNaN: true }), (times) => {
        const thicker = coilRate({ ...coil, wire: coil.wire * times });
        const wider = coilRate({ ...coil, mean: coil.mean * times });
        expect(thicker / coilRate(coil)).toBeCloseTo(times ** 4, 12);
        expect(wider / coilRate(coil)).toBeCloseTo(times ** -3, 12);
      }),
      { seed: 41 },
    );
  });

  test('cut in two gives two springs that in series make the whole again', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 5.4, noNaN: true }), (piece) => {
        const one = coilRate({ ...coil, active: piece });
        const other = coilRate({ ...coil, active: coil.active - piece });
        expect(1 / (1 / one + 1 / other) / coilRate(coil)).toBeCloseTo(1, 12);
      }),
      { seed: 42 },
    );
  });

  test('has its mean diameter one wire inside the outer', () => {
    expect(meanDiameter(0.082, 0.012)).toBeCloseTo(0.07, 15);
  });

  test('has both stress factors near 1 when the wire is thin, and near each other always', () => {
    fc.assert(
      fc.property(fc.double({ min: 4, max: 1e6, noNaN: true }), (index) => {
        const wahl = wahlFactor(index);
        const bergstraesser = bergstraesserFactor(index);
        expect(bergstraesser).toBeGreaterThan(1);
        expect(wahl).toBeGreaterThan(bergstraesser);
        expect((wahl - bergstraesser) / wahl).toBeLessThan(0.014);
      }),
      { seed: 43 },
    );
    expect(wahlFactor(1e6)).toBeCloseTo(1, 5);
  });

  test('has a stress that grows with the force', () => {
    // 8 · 1000 N · 0.07 m / (π · (0.012 m)³)
    const plain = 560 / (Math.PI * 1.728e-6);
    expect(shearStress(coil, 1000, 1)).toBeCloseTo(plain, 3);
    expect(shearStress(coil, 2000, 1.2)).toBeCloseTo(2.4 * plain, 3);
  });

  test('made shorter to its solid length has no gap: pitch and wire are then the same', () => {
    for (const kind of ['plain', 'plain ground', 'closed', 'closed ground'] satisfies CoilEnds[]) {
      expect(freeLength(8, kind, 0.012, 0.012)).toBeCloseTo(solidLength(8, kind, 0.012), 15);
    }
  });

  test('may be longer the better its ends are held', () => {
    const lengths = (['both flat', 'one flat, one hinged', 'both hinged', 'one flat, one free'] as const).map(
      (seats) => criticalFreeLength(0.07, seats),
    );
    expect(lengths).toEqual([...lengths].sort((one, other) => other - one));
  });

  test('that cannot be is refused with both numbers', () => {
    expect(() => springIndex({ ...coil, wire: 0 })).toThrow(RangeError);
    expect(() => coilRate({ ...coil, mean: 0.01 })).toThrow('0.01; it must be above 0.012');
    expect(() => coilRate({ ...coil, active: 0 })).toThrow(RangeError);
    expect(() => coilRate({ ...coil, shearModulus: Number.NaN })).toThrow(RangeError);
    expect(() => activeCoils(2, 'closed')).toThrow('2; it must be above 2');
    expect(() => wahlFactor(1)).toThrow(RangeError);
    expect(() => bergstraesserFactor(0.5)).toThrow(RangeError);
  });
});
