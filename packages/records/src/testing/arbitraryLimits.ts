import fc from 'fast-check';
import { type Clearance, type Knob, speedSymbols } from '../schema/limits.ts';
import { listOf } from './arbitraryLoads.ts';
import { arbitraryQuantity as quantity } from './arbitraryQuantity.ts';

const end = fc.constantFrom('rear' as const, 'front' as const);

/** Gaps read at one wheel travel or at two, some of them close. */
export const arbitraryClearances: fc.Arbitrary<Record<string, Clearance>> = listOf(
  'gap',
  0,
  3,
  fc.record(
    {
      name: fc.constantFrom('guard', 'left bag', 'rear brake hose'),
      order: fc.integer({ min: 0, max: 9 }),
      end,
      kind: fc.constantFrom('tyre and guard' as const, 'bags' as const, 'hose' as const, 'other' as const),
      readings: fc.oneof(fc.tuple(reading(0, 0.06)), fc.tuple(reading(0, 0.02), reading(0.03, 0.09))),
      keep: quantity('length', 0, 0.01),
    },
    { requiredKeys: ['name', 'order', 'end', 'kind', 'readings'] },
  ),
);

function reading(least: number, most: number) {
  return fc.record({ travel: quantity('length', least, most), gap: quantity('length', 0, 0.08) });
}

/** Knobs with and without a base, some of them turned beyond their last click. */
export const arbitraryKnobs: fc.Arbitrary<Record<string, Knob>> = listOf(
  'knob',
  0,
  3,
  fc.record(
    {
      name: fc.constantFrom('rebound', 'compression, left leg'),
      order: fc.integer({ min: 0, max: 9 }),
      end,
      count: fc.integer({ min: 8, max: 40 }),
      base: fc.integer({ min: 0, max: 8 }),
      at: fc.integer({ min: 0, max: 45 }),
    },
    { requiredKeys: ['name', 'order', 'end', 'count'] },
  ),
);

export const arbitraryStandLean = fc.record({
  least: quantity('angle', 0.05, 0.15),
  most: quantity('angle', 0.2, 0.4),
});

/** What limits a tyre beside its capacity. */
export const arbitraryTyreLimits = {
  speedSymbol: fc.constantFrom(...speedSymbols),
  placardPressure: quantity('pressure', 2.2e5, 2.9e5),
  mostPressure: quantity('pressure', 2.6e5, 3e5),
  byPressure: fc.tuple(row(1.8e5, 180, 220), row(2.5e5, 260, 340)),
  state: fc.constantFrom('sound' as const, 'worn' as const, 'aged' as const),
};

function row(pressure: number, least: number, most: number) {
  return fc.record({
    pressure: quantity('pressure', pressure, pressure * 1.1),
    capacity: quantity('mass', least, most),
  });
}
