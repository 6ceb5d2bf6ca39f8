import type { Wanted } from '@sagwright/records/schema/targets';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type BandUnit, bandLimits, inUnit, limitsOf, withSag } from './band.ts';

const anyUnit = fc.constantFrom<BandUnit>('%', 'mm', 'cm', 'in');

const anyShare = fc.double({ min: 0, max: 1, noNaN: true });

const anyBand = fc
  .record({
    unit: anyUnit,
    shares: fc.tuple(anyShare, anyShare, anyShare),
    from: fc.constantFrom('stop' as const, 'hanging' as const),
    along: fc.constantFrom('wheel' as const, 'stroke' as const),
  })
  .map(({ unit, shares, from, along }): Wanted => {
    const { least, most } = bandLimits(unit);
    const [low, aim, high] = [...shares]
      .sort((a, b) => a - b)
      .map((share) => ({ value: least + share * (most - least), unit }));
    return { low: low!, aim: aim!, high: high!, from, along };
  });

/** The rules of the job document for a wanted sag. */
function expectSound({ low, aim, high }: Wanted): void {
  const { least, most } = bandLimits(aim.unit);
  expect(new Set([low.unit, aim.unit, high.unit]).size).toBe(1);
  expect(low.value).toBeGreaterThanOrEqual(least);
  expect(low.value).toBeLessThanOrEqual(aim.value);
  expect(aim.value).toBeLessThanOrEqual(high.value);
  expect(high.value).toBeLessThanOrEqual(most);
}

describe('a wanted sag', () => {
  test('stays sound under every change that its limits allow', () => {
    fc.assert(
      fc.property(
        anyBand,
        fc.constantFrom('low' as const, 'aim' as const, 'high' as const),
        anyShare,
        (wanted, name, share) => {
          const { least, most } = limitsOf(wanted, name);
          const value = least + share * (most - least);
          const changed = withSag(wanted, name, value);
          expect(changed[name].value).toBe(value);
          expectSound(changed);
        },
      ),
      { seed: 21 },
    );
  });

  test('moves its band along with its aim, and an end alone', () => {
    const wanted: Wanted = {
      low: { value: 26, unit: '%' },
      aim: { value: 30, unit: '%' },
      high: { value: 34, unit: '%' },
      from: 'stop',
      along: 'wheel',
    };
    const moved = withSag(wanted, 'aim', 33);
    expect([moved.low.value, moved.aim.value, moved.high.value]).toEqual([29, 33, 37]);
    expect(withSag(wanted, 'low', 24)).toEqual({ ...wanted, low: { value: 24, unit: '%' } });
    expect(withSag(wanted, 'aim', 98).high.value).toBe(100);
  });

  test('is as much in another unit, to half a step, of the travel that it is counted along', () => {
    const wanted: Wanted = {
      low: { value: 25, unit: '%' },
      aim: { value: 30, unit: '%' },
      high: { value: 35, unit: '%' },
      from: 'stop',
      along: 'wheel',
    };
    const travel = { wheel: 0.1, stroke: 0.08 };
    const values = ({ low, aim, high }: Wanted) => [low, aim, high].map(({ value }) => value);
    // 25, 30 and 35 % of 100 mm; of 80 mm of stroke 20, 24 and 28 mm; 30 mm are 1.1811 in
    expect(values(inUnit(wanted, 'mm', travel))).toEqual([25, 30, 35]);
    expect(values(inUnit({ ...wanted, along: 'stroke' }, 'mm', travel))).toEqual([20, 24, 28]);
    expect(values(inUnit(wanted, 'in', travel))[1]).toBeCloseTo(1.175, 9);
    expect(inUnit(inUnit(wanted, 'mm', travel), '%', travel)).toEqual(wanted);
  });

  test('stays sound in every unit', () => {
    fc.assert(
      fc.property(anyBand, anyUnit, (wanted, unit) => {
        expectSound(inUnit(wanted, unit, { wheel: 0.11, stroke: 0.09 }));
      }),
      { seed: 22 },
    );
  });
});
