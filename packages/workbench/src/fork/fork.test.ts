import { describe, expect, test } from 'vitest';
import { type JobPlan, planJob } from '../path.ts';
import { type Change, tourerWith } from '../testing/tourerJob.ts';
import type { ForkDocument } from './document.ts';
import { forkOf } from './fork.ts';

const mm = (value: number): object => ({ value, unit: 'mm' });
const FORK = 'machine.front.fork';

/** The table of checks/fork-air-spring.test.ts: 41 mm for both, 110 mm of gap, 120 mm of stroke, n = 1; here of two legs. */
const tabled: readonly Change[] = [
  [`${FORK}.stroke`, mm(120)],
  [`${FORK}.air`, { bore: mm(41), seal: mm(41), gap: mm(110) }],
];

describe('The fork along its stroke', () => {
  test('has the air of both legs as the gas laws give it, and that of 10 mm more oil', () => {
    const { along, oilStep } = fork(...tabled);
    // One leg, settled: 102.90 N at 100 mm and 145.94 N fully in; printed to 0.01 N.
    expect(along[10]!.air.value / 2).toBeCloseTo(145.94, 2);
    expect(oilStep).toBe(0.01);
    const more = fork(...tabled.slice(0, 1), [`${FORK}.air`, { bore: mm(41), seal: mm(41), gap: mm(100) }]);
    along.forEach(({ airMoreOil }, i) => {
      expect(airMoreOil).toBeCloseTo(more.along[i]!.air.value, 9);
    });
  });

  test('sums to the whole: springs, air and rubber, less the top-out spring', () => {
    const { along } = fork(
      [`${FORK}.rubber`, { start: mm(90), rate: { value: 30, unit: 'N/mm' } }],
      [`${FORK}.topOut`, { length: mm(15), rate: { value: 20, unit: 'N/mm' } }],
    );
    for (const { springs, air, rubber, topOut, whole } of along) {
      expect(whole.value).toBeCloseTo(springs.value + air.value + rubber - topOut, 9);
    }
    expect(along[0]!.topOut).toBeCloseTo(2 * 15 * 20, 9);
    expect(along[10]!.rubber).toBeCloseTo(2 * 27 * 30, 9);
  });

  test('more oil never softens, less never stiffens', () => {
    for (const { air, airMoreOil, airLessOil } of fork(...tabled).along) {
      expect(airMoreOil!).toBeGreaterThanOrEqual(air.value - 1e-9);
      expect(airLessOil!).toBeLessThanOrEqual(air.value + 1e-9);
    }
  });

  test('carries the ± of the air gap to the force of the air', () => {
    const width = (plusMinus: number): number => {
      const gap = { value: 110, unit: 'mm', plusMinus: { value: plusMinus, unit: 'mm' } };
      const exact = { value: 41, unit: 'mm', plusMinus: { value: 0, unit: 'mm' } };
      const stroke = { value: 120, unit: 'mm', plusMinus: { value: 0, unit: 'mm' } };
      return fork([`${FORK}.stroke`, stroke], [`${FORK}.air`, { bore: exact, seal: exact, gap }]).along[10]!
        .air.plusMinus!;
    };
    // Fully in P = P_a (1 + 120/g), so F changes by A P_a 120/g² for each metre of gap; two legs move together.
    const area = (Math.PI / 4) * 0.041 ** 2;
    expect(width(3) / ((2 * area * 101_325 * 0.12 * 0.003) / 0.11 ** 2)).toBeCloseTo(1, 3);
  });

  test('has no air where there is none', () => {
    const { air, along } = fork([`${FORK}.air`, 'none']);
    expect(air).toEqual([]);
    expect(along[10]).toMatchObject({ air: { value: 0 }, airQuick: null, airMoreOil: null });
  });
});

describe('A quick stroke', () => {
  test('has the force of the settled air at the rest that it is about, and more than that beyond', () => {
    const { along, quick } = fork(...tabled);
    expect(quick!.exponent).toBe(1.4);
    for (const { stroke, air, airQuick } of along) {
      const more = airQuick!.value - air.value;
      expect(Math.sign(more)).toBe(Math.sign(stroke - quick!.stroke));
    }
  });

  test('keeps p V^1.4 about that rest', () => {
    const { along, quick } = fork(...tabled);
    // V in mm of a 41 mm tube: 230 fully out, 110 fully in; settled to 230 − s0 at P0 230/(230 − s0), then to the power of 1.4.
    const area = (Math.PI / 4) * 0.041 ** 2;
    const settled = 0.23 - quick!.stroke;
    const pressure = 101_325 * (0.23 / settled) * (settled / 0.11) ** 1.4;
    expect(along[10]!.airQuick!.value / (2 * area * (pressure - 101_325))).toBeCloseTo(1, 9);
  });
});

describe('Legs with air of their own', () => {
  const air = (gap: number): object => ({ bore: mm(41), seal: mm(41), gap: mm(gap) });
  const at = (...changes: readonly Change[]): ForkDocument => fork(...tabled, ...changes);

  test('that are alike are as both told at once', () => {
    const apart = at([`${FORK}.air`, { left: air(110), right: air(110) }]);
    expect(apart.air.map(({ leg }) => leg)).toEqual(['left', 'right']);
    at().along.forEach(({ air: told, airMoreOil, airQuick }, i) => {
      expect(apart.along[i]!.air.value).toBeCloseTo(told.value, 9);
      expect(apart.along[i]!.airMoreOil).toBeCloseTo(airMoreOil!, 9);
      expect(apart.along[i]!.airQuick!.value).toBeCloseTo(airQuick!.value, 6);
    });
  });

  test('press with the sum of what each would by itself, whichever leg holds a spring', () => {
    const side = { spring: 'fork', at: { preload: mm(15) } };
    const half = (gap: number): number => at([`${FORK}.air`, air(gap)]).along[10]!.air.value / 2;
    for (const found of [{ both: side }, { left: side, right: side }, { single: side }]) {
      const apart = at([`${FORK}.air`, { left: air(110), right: air(90) }], ['setups.asFound.front', found]);
      expect(apart.along[10]!.air.value).toBeCloseTo(half(110) + half(90), 9);
      expect(apart.along[10]!.airMoreOil).toBeCloseTo(half(100) + half(80), 9);
    }
  });

  test('of which one holds none press with the other’s', () => {
    for (const told of [
      { left: 'none', right: air(110) },
      { left: air(110), right: 'none' },
    ]) {
      const { air: gaps, along } = at([`${FORK}.air`, told]);
      expect(gaps).toHaveLength(1);
      // Of one leg: 145.94 N, and 10 mm more oil: A Pa 120/100.
      expect(along[10]!.air.value).toBeCloseTo(145.94, 2);
      expect(along[10]!.airMoreOil).toBeCloseTo((Math.PI / 4) * 0.041 ** 2 * 101_325 * 1.2, 9);
    }
  });

  test('have gaps with a ± of their own', () => {
    const planned = planJob(tourerWith(...tabled, [`${FORK}.air`, { left: air(110), right: air(90) }]));
    if (!planned.ok) throw new Error('not planned');
    const names = planned.inputs.question.inputs.map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining([`${FORK}.air.left.gap`, `${FORK}.air.right.gap`]));
  });
});

describe('A leg of the fork', () => {
  test('grows on its top-out spring when the main spring is fitted, by both springs’ balance', () => {
    const { legs } = fork(
      ['springs.fork.rate', { kind: 'linear', rate: { value: 9.5, unit: 'N/mm' } }],
      ['setups.asFound.front', { both: { spring: 'fork', at: { preload: mm(15) } } }],
      [`${FORK}.air`, 'none'],
      [`${FORK}.topOut`, { length: mm(40), rate: { value: 4, unit: 'N/mm' } }],
    );
    // 9.5 (15 + s) = 4 (40 − s): s = 17.5/13.5 mm.
    expect(legs).toEqual([
      {
        strut: 'both',
        preload: expect.closeTo(0.015, 12),
        topOut: {
          relaxed: 0.04,
          pressed: expect.closeTo(0.0175 / 13.5, 12),
          preload: expect.closeTo(0.015 + 0.0175 / 13.5, 12),
        },
      },
    ]);
  });

  test('is told with its side where they differ, and once where only one holds a spring', () => {
    const side = (preload: number): object => ({ spring: 'fork', at: { preload: mm(preload) } });
    const differ = fork(['setups.asFound.front', { left: side(15), right: side(20) }]);
    expect(differ.legs.map(({ strut }) => strut)).toEqual(['left', 'right']);
    const single = fork(...tabled, ['setups.asFound.front', { single: side(15) }]);
    expect(single.legs.map(({ strut }) => strut)).toEqual(['single']);
    const both = fork(...tabled, ['setups.asFound.front', { both: side(15) }]);
    expect(single.along[7]!.air.value).toBeCloseTo(both.along[7]!.air.value, 9);
    expect(single.along[7]!.airMoreOil).toBeCloseTo(both.along[7]!.airMoreOil!, 9);
    expect(single.air[0]!.left).toBeCloseTo(both.air[0]!.left, 12);
  });
});

test('The air gap is told bare, however it was read', () => {
  const volumes = { springVolume: { value: 50, unit: 'ml' }, spacerVolume: { value: 10, unit: 'ml' } };
  const read = fork([
    `${FORK}.air`,
    { bore: mm(41), seal: mm(41), gap: mm(120), readWith: 'spring', ...volumes },
  ]);
  // Nine tenths of 50 ml under the oil of a 41 mm bore.
  const area = (Math.PI / 4) * 0.041 ** 2;
  expect(read.air[0]!.bareGap).toBeCloseTo(0.12 + 45e-6 / area, 9);
});

test('A gap that was read bare is told as it was read, whatever then stands in the leg', () => {
  const air = { bore: mm(41), seal: mm(41), gap: mm(130) };
  const coil = {
    kind: 'coil',
    wire: mm(4.5),
    mean: mm(30),
    coils: 40,
    ends: 'closed ground',
    material: 'chrome silicon',
  };
  const { air: told } = fork([`${FORK}.air`, air], ['springs.fork.rate', coil]);
  expect(told[0]!.bareGap).toBeCloseTo(0.13, 12);
});

function fork(...changes: readonly Change[]): ForkDocument {
  const planned = planJob(tourerWith(...changes));
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join('\n'));
  return forkOf(planned satisfies JobPlan)!;
}
