import fc from 'fast-check';
import type { End } from '../schema/names.ts';
import type { Spring, SpringRate } from '../schema/springs.ts';
import { arbitraryQuantity as quantity, written } from './arbitraryQuantity.ts';
import type { StrutSize } from './arbitraryStruts.ts';

/** Springs for a strut of this size, of every kind: rear 20 to 120 N/mm, fork 5 to 12 N/mm. */
export function arbitrarySpring(end: End, { freeLength }: StrutSize): fc.Arbitrary<Spring> {
  const [least, most] = end === 'rear' ? [2e4, 1.2e5] : [5e3, 1.2e4];
  return fc.record(
    {
      name: fc.constantFrom('marked in blue', 'shelf 3', 'as delivered', 'Feder 1'),
      order: fc.integer({ min: -5, max: 50 }),
      end: fc.constant(end),
      rate: arbitraryRate(least, most),
      freeLength: fc.constant(written<'length'>(freeLength, 'mm')),
      solidLength: fc.constant(written<'length'>(0.4 * freeLength, 'mm')),
      ...(end === 'rear' && {
        inside: quantity('length', 0.045, 0.06),
        spacer: quantity('length', 0, 0.01),
      }),
      where: fc.constantFrom('box 2', 'left shelf'),
      hand: fc.boolean(),
    },
    { requiredKeys: ['name', 'order', 'end', 'rate', 'freeLength'] },
  );
}

function arbitraryRate(least: number, most: number): fc.Arbitrary<SpringRate> {
  return fc.oneof(
    quantity('rate', least, most).map((rate) => ({ kind: 'linear' as const, rate })),
    fc
      .record({
        soft: quantity('rate', least, 0.8 * most),
        stiffer: fc.double({ min: 1, max: 2, noNaN: true }),
        softCloses: quantity('length', 0.01, 0.06),
      })
      .map(({ soft, stiffer, softCloses }) => {
        const stiff = { value: Number((soft.value * stiffer * 1.01).toPrecision(6)), unit: soft.unit };
        return { kind: 'series' as const, soft, stiff, softCloses };
      }),
    fc
      .tuple(fc.double({ min: least, max: most, noNaN: true }), fc.double({ min: 0, max: 2, noNaN: true }))
      .map(([rate, growth]) => ({
        kind: 'table' as const,
        rows: [0, 0.03, 0.06, 0.09, 0.12].map((compression) => ({
          compression: written<'length'>(compression, 'mm'),
          force: written<'force'>(rate * compression * (1 + growth * compression), 'N'),
        })),
      })),
    fc.record({
      kind: fc.constant('coil' as const),
      wire: quantity('length', 0.009, 0.012),
      mean: quantity('length', 0.05, 0.065),
      coils: fc.integer({ min: 24, max: 40 }).map((quarters) => quarters / 4),
      ends: fc.constantFrom('plain', 'plain ground', 'closed', 'closed ground'),
      material: fc.constantFrom('music wire', 'chrome silicon', 'hot rolled'),
    }),
    fc
      .record({
        coilsPlusMinus: fc.constantFrom(0.25, 0.5),
        marked: quantity('rate', least, most),
        counts: fc.constantFrom('coil' as const, 'marked' as const),
      })
      .map((more) => ({
        kind: 'coil' as const,
        wire: written<'length'>(0.011, 'mm'),
        outside: written<'length'>(0.072, 'mm'),
        coils: 7.5,
        ends: 'closed ground' as const,
        material: 'oil hardened' as const,
        ...more,
      })),
    arbitraryWound,
  );
}

/** Two or three sections of 10 mm wire, each 3 mm wider than the one before; the last told by its length. */
const arbitraryWound: fc.Arbitrary<SpringRate> = fc
  .record({
    mean: quantity('length', 0.05, 0.065),
    first: fc.double({ min: 0.0115, max: 0.0135, noNaN: true }),
    coils: fc.array(
      fc.integer({ min: 4, max: 16 }).map((quarters) => quarters / 4),
      { minLength: 2, maxLength: 3 },
    ),
    ends: fc.constantFrom('plain' as const, 'closed' as const, 'closed ground' as const),
  })
  .map(({ mean, first, coils, ends }) => ({
    kind: 'wound',
    wire: written<'length'>(0.01, 'mm'),
    mean,
    sections: Object.fromEntries(
      coils.map((count, i) => {
        const pitch = first + 0.003 * i;
        const isLast = i === coils.length - 1;
        const told = isLast
          ? { length: written<'length'>(count * pitch, 'mm'), coilsPlusMinus: 0.25 }
          : { pitch: written<'length'>(pitch, 'mm') };
        return [`section-${i + 1}`, { order: i, coils: count, ...told }];
      }),
    ),
    ends,
    material: 'chrome silicon',
  }));
