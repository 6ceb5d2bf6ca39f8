/**
 * Air shut in above the oil of a fork leg. No publication with a worked example was found: the table is computed here
 * from p V^n = const with V = A (gap + stroke left), the force A (P − P_atm) and the rate n A² P/V, apart from the model.
 * The compression of 10 to 1 has its inputs from an exercise (brainmass.com 60270: air, 1 atm, 30 °C, 500 to 50 cm³) and
 * its results from the gas laws.
 */
import { forkAir, gasAt, gasEnergy, quickAbout } from '@sagwright/model/dampers/gas';
import { planJob } from '@sagwright/workbench/path';
import { tourerWith } from '@sagwright/workbench/testing/tourerJob';
import { describe, expect, test } from 'vitest';

const mm = 1e-3;
const atmosphere = 101_325;
/** A 41 mm tube, one area for both, as in the table; 1320.2543 mm². */
const area = (Math.PI / 4) * (41 * mm) ** 2;

function air(gap: number, exponent: number, stroke: number) {
  const out = { force: 0, rate: 0 };
  gasAt(forkAir(area, area, gap * mm, 120 * mm, atmosphere, exponent), stroke * mm, atmosphere, out);
  return { force: out.force, rate: out.rate * mm };
}

/** Printed to 0.01 N and 0.0001 N/mm: half of the last digit. */
describe.each([
  { n: 1, forces: [0, 37.16, 102.9, 145.94], rates: [0.5816, 0.9496, 1.8206, 2.5428] },
  { n: 1.3, forces: [0, 50.2, 147.09, 215.21], rates: [0.7561, 1.3287, 2.8086, 4.1244] },
  { n: 1.4, forces: [0, 54.77, 163.58, 241.93], rates: [0.8143, 1.4664, 3.2023, 4.7817] },
])('41 mm leg, 110 mm of air, 120 mm of stroke, exponent $n', ({ n, forces, rates }) => {
  test.each([0, 50, 100, 120].map((stroke, i) => [stroke, forces[i]!, rates[i]!] as const))(
    'at %i mm: %f N, %f N/mm',
    (stroke, force, rate) => {
      expect(air(110, n, stroke).force).toBeCloseTo(force, 2);
      expect(air(110, n, stroke).rate).toBeCloseTo(rate, 4);
    },
  );
});

test('10 mm more oil: 53.27, 160.39 and 239.07 N at 50, 100 and 120 mm, exponent 1.3', () => {
  expect(air(100, 1.3, 50).force).toBeCloseTo(53.27, 2);
  expect(air(100, 1.3, 100).force).toBeCloseTo(160.39, 2);
  expect(air(100, 1.3, 120).force).toBeCloseTo(239.07, 2);
});

test('bore and seal of different size: the gap fills the bore, the stroke sweeps the seal', () => {
  // Derived here: 41 mm bore, 37 mm seal, fully compressed, settled. V0/V = (41² · 110 + 37² · 120)/(41² · 110).
  const seal = (Math.PI / 4) * (37 * mm) ** 2;
  const ratio = 1 + (37 ** 2 * 120) / (41 ** 2 * 110);
  const out = { force: 0, rate: 0 };
  gasAt(forkAir(area, seal, 110 * mm, 120 * mm, atmosphere, 1), 120 * mm, atmosphere, out);
  expect(out.force / (seal * atmosphere * (ratio - 1))).toBeCloseTo(1, 12);
});

describe('500 cm³ of air at 1 atm squeezed to 50 cm³', () => {
  /** 10 cm² of piston through 450 mm. */
  const gas = { area: 1e-3, pressure: atmosphere, volume: 5e-4 };
  const out = { force: 0, rate: 0 };

  test('fast (exponent 1.4): 25.118864 atm, 191.490 J', () => {
    const air = { ...gas, exponent: 1.4 };
    gasAt(air, 0.45, atmosphere, out);
    // 10^1.4 = 25.118864 (printed to 1e-6); work P1 V1 (10^0.4 − 1)/0.4 (printed to 1e-3).
    expect(out.force / (gas.area * atmosphere) + 1).toBeCloseTo(25.118864, 6);
    expect(gasEnergy(air, 0.45, atmosphere) + atmosphere * 4.5e-4).toBeCloseTo(191.49, 3);
  });

  test('settled (exponent 1): 10 atm, P V ln 10', () => {
    const air = { ...gas, exponent: 1 };
    gasAt(air, 0.45, atmosphere, out);
    expect(out.force / (gas.area * atmosphere) + 1).toBeCloseTo(10, 9);
    expect(gasEnergy(air, 0.45, atmosphere) + atmosphere * 4.5e-4).toBeCloseTo(
      atmosphere * 5e-4 * Math.LN10,
      9,
    );
  });
});

describe('a quick stroke about a settled one', () => {
  const settled = forkAir(area, area, 110 * mm, 120 * mm, atmosphere, 1);
  const quick = quickAbout(settled, 50 * mm, 1.4);
  const of = (gas: typeof settled, stroke: number) => {
    const out = { force: 0, rate: 0 };
    gasAt(gas, stroke * mm, atmosphere, out);
    return out;
  };

  test('has the settled force there, and a slope greater by γ', () => {
    // The table's 37.16 N and 0.9496 N/mm at 50 mm; the slope of an adiabat is γ times that of the isotherm through the same point.
    expect(of(quick, 50).force).toBeCloseTo(37.16, 2);
    expect(of(quick, 50).rate / of(settled, 50).rate).toBeCloseTo(1.4, 12);
  });

  test('goes on by P V^1.4: at 120 mm the 180 mm of air that were left are 110', () => {
    const pressure = atmosphere * (230 / 180) * (180 / 110) ** 1.4;
    expect(of(quick, 120).force / (area * (pressure - atmosphere))).toBeCloseTo(1, 12);
  });
});

test('air closed in at 60 °C has lost its pressure by 1.136449 when it stands at 20 °C', () => {
  // P/T of one volume: 333.15/293.15, printed to 1e-6.
  const pressureAt = (celsius: number): number => {
    const air = { gap: { value: 110, unit: 'mm' }, temperature: { value: celsius, unit: 'C' } };
    const planned = planJob(tourerWith(['machine.front.fork.air', air]));
    if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join());
    return planned.inputs.question.machine.front.struts[0]!.gas!.pressure;
  };
  expect(pressureAt(20) / pressureAt(60)).toBeCloseTo(1.136449, 6);
});
