/**
 * V. B. Bhandari, Design of Machine Elements, chapter 10 (title from memory), examples 10.1, 10.7, 10.18 and 10.19, with
 * the results printed to six decimals by the open companion FOSSEE/Scilab-TBC-Uploads, 764/CH10.
 *
 * Both sides are unrounded doubles, so toBeCloseTo(value, 6) asks for the last printed digit: half of 10^-6, in the
 * book's units.
 */
import {
  activeCoils,
  coilRate,
  shearStress,
  solidLength,
  springIndex,
  wahlFactor,
} from '@sagwright/model/springs/coil';
import { compressionFor, type SpringSI, springAt } from '@sagwright/model/springs/spring';
import { describe, expect, test } from 'vitest';

const mm = 1e-3;
const MPa = 1e6;
const shearModulus = 81_370 * MPa;

function wire(diameter: number, mean: number, active: number) {
  return { wire: diameter * mm, mean: mean * mm, active, shearModulus };
}

/**
 * The designs of 10.1 and 10.7: the wire for a stress at an index, then the free length with 1 mm between coils at full
 * load. Each of the two springs has closed ground ends.
 */
describe.each([
  {
    example: '10.1',
    force: 1250,
    stress: 0.5 * 1090,
    index: 6,
    exact: 6.625083,
    diameter: 7,
    total: 10,
    free: 109.337611,
  },
  {
    example: '10.7',
    force: 300,
    stress: 0.3 * 1390,
    index: 8,
    exact: 4.165688,
    diameter: 5,
    total: 7,
    free: 56.101389,
  },
])('example $example', ({ force, stress, index, exact, diameter, total, free }) => {
  const active = activeCoils(total, 'closed ground');
  const coil = wire(diameter, index * diameter, active);

  test('the wire diameter gives the stress allowed', () => {
    // The diameter is printed to 5e-7 of 4 mm; the stress goes with its square: 3e-7.
    const asPrinted = wire(exact, index * exact, active);
    expect(Math.abs(shearStress(asPrinted, force, wahlFactor(index)) / (stress * MPa) - 1)).toBeLessThan(
      3e-7,
    );
  });

  test('the free length: solid, gaps and deflection', () => {
    const solid = solidLength(total, 'closed ground', coil.wire);
    expect(springIndex(coil)).toBeCloseTo(index, 12);
    expect(solid / mm).toBeCloseTo(diameter * total, 9);
    expect((solid + force / coilRate(coil)) / mm + (total - 1) * 1).toBeCloseTo(free, 6);
  });
});

test('example 10.7: 20 N/mm wanted, 4.966431 active coils for it; with 5 there are 19.865723 N/mm', () => {
  // Coils are printed to 1e-7 of themselves: 2e-6 N/mm.
  expect(Math.abs(coilRate(wire(5, 40, 4.966431)) * mm - 20)).toBeLessThan(2.1e-6);
  expect(coilRate(wire(5, 40, 5)) * mm).toBeCloseTo(19.865723, 6);
});

/** One spring inside the other: what each bears, how far it is compressed, its stress by Wahl's factor. */
function shared(force: number, outer: ReturnType<typeof wire>, inner: ReturnType<typeof wire>, gap: number) {
  const pair: SpringSI = { kind: 'parallel', rate: coilRate(outer), second: coilRate(inner), gap: gap * mm };
  const compression = compressionFor(pair, force);
  const innerCompression = compression - pair.gap;
  const outerForce = pair.rate * compression;
  const innerForce = pair.second * innerCompression;
  const stress = (coil: ReturnType<typeof wire>, on: number) =>
    shearStress(coil, on, wahlFactor(springIndex(coil))) / MPa;
  const out = { force: 0, rate: 0, energy: 0 };
  springAt(pair, compression, out);
  return {
    compression: compression / mm,
    innerCompression: innerCompression / mm,
    outerForce,
    innerForce,
    outerStress: stress(outer, outerForce),
    innerStress: stress(inner, innerForce),
    total: out.force,
  };
}

test('example 10.18: two concentric springs of one length under 2000 N', () => {
  const rest = shared(2000, wire(10, 80, 8), wire(8, 64, 12), 0);
  expect(rest.outerForce).toBeCloseTo(1304.347826, 6);
  expect(rest.innerForce).toBeCloseTo(695.652174, 6);
  expect(rest.compression).toBeCloseTo(52.526569, 6);
  expect(rest.outerStress).toBeCloseTo(314.616701, 6);
  expect(rest.innerStress).toBeCloseTo(262.180584, 6);
  expect(rest.total).toBeCloseTo(2000, 6);
});

test('example 10.19: two concentric springs, the inner 15 mm shorter, under 1000 N', () => {
  const rest = shared(1000, wire(6, 36, 10), wire(5, 30, 8), 15);
  expect(rest.outerForce).toBeCloseTo(706.021471, 6);
  expect(rest.innerForce).toBeCloseTo(293.978529, 6);
  expect(rest.compression).toBeCloseTo(24.988839, 6);
  expect(rest.innerCompression).toBeCloseTo(9.988839, 6);
  expect(rest.outerStress).toBeCloseTo(375.305136, 6);
  expect(rest.innerStress).toBeCloseTo(225.032219, 6);
  expect(rest.total).toBeCloseTo(1000, 6);
});
