import fc from 'fast-check';
import type { LoadCase, Thing } from '../schema/loads.ts';
import type { Place } from '../schema/machine.ts';
import type { TargetSet, Wanted } from '../schema/targets.ts';
import { arbitraryQuantity as quantity, written } from './arbitraryQuantity.ts';

/** A list by ids, in the order of its ids as a job holds it. */
export function listOf<T>(
  prefix: string,
  least: number,
  most: number,
  member: fc.Arbitrary<T>,
): fc.Arbitrary<Record<string, T>> {
  return fc
    .array(member, { minLength: least, maxLength: most })
    .map((members) => Object.fromEntries(members.map((each, i) => [`${prefix}-${i + 1}`, each])));
}

const order = fc.integer({ min: -10, max: 100 });

/** At the heights and distances at which people and luggage ride; a few do not tell where they are. */
export const arbitraryPlace: fc.Arbitrary<Place> = fc.record(
  {
    name: fc.constantFrom('rider', 'passenger', 'box', 'left case'),
    order,
    kind: fc.constantFrom(
      'rider seat',
      'passenger seat',
      'rear box',
      'side cases',
      'rack',
      'tank bag',
      'other',
    ),
    at: fc.record({ x: quantity('length', -0.4, 0.7), height: quantity('length', 0.5, 1.2) }),
    limit: quantity('mass', 3, 200),
    limitCounts: fc.constantFrom('contents', 'all on it'),
  },
  { requiredKeys: ['name', 'order', 'kind'] },
);

export const arbitraryThing: fc.Arbitrary<Thing> = fc.oneof(
  fc.record({
    name: fc.constant('rider A'),
    order,
    kind: fc.constant('person'),
    mass: quantity('mass', 45, 140),
  }),
  fc.record({ name: fc.constant('tent'), order, kind: fc.constant('item'), mass: quantity('mass', 0.5, 30) }),
);

/** Up to four load cases whose shares are parts of one whole. */
export function arbitraryLoadCases(
  things: readonly string[],
  places: readonly string[],
): fc.Arbitrary<Record<string, LoadCase>> {
  const common = {
    name: fc.constantFrom('alone', 'two up, both cases', 'holiday'),
    order,
    share: fc.integer({ min: 0, max: 25 }),
    fuel: quantity('volume', 0, 0.012),
    wanted: fc.record({ rear: arbitraryWanted, front: arbitraryWanted }, { requiredKeys: [] }),
  };
  const scales = fc.record(
    {
      front: quantity('mass', 195, 230),
      rear: quantity('mass', 225, 330),
      addedHeight: quantity('length', 0.7, 1.1),
    },
    { requiredKeys: ['front', 'rear'] },
  );
  const aboard = fc
    .tuple(fc.subarray([...things]), fc.constantFrom(...places))
    .map(([on, place]) => Object.fromEntries(on.map((thing) => [`on-${thing}`, { thing, place }])));
  return listOf(
    'load',
    0,
    4,
    fc.oneof(
      fc.record({ ...common, aboard }, { requiredKeys: ['name', 'order', 'share', 'aboard'] }),
      fc.record({ ...common, scales }, { requiredKeys: ['name', 'order', 'share', 'scales'] }),
    ),
  );
}

const arbitraryWanted: fc.Arbitrary<Wanted> = fc
  .record({
    aim: fc.integer({ min: 20, max: 40 }),
    band: fc.integer({ min: 0, max: 8 }),
    isShare: fc.boolean(),
    from: fc.constantFrom('stop', 'hanging'),
    along: fc.constantFrom('wheel', 'stroke'),
  })
  .map(({ aim, band, isShare, from, along }) => {
    const [low, wish, high] = [aim - band, aim, aim + band].map((value) =>
      isShare ? { value, unit: '%' as const } : written<'length'>(value / 1000, 'mm'),
    );
    return { low: low!, aim: wish!, high: high!, from, along };
  });

export const arbitraryTargetSet: fc.Arbitrary<TargetSet> = fc.record({
  name: fc.constantFrom('our own', 'by the book'),
  order,
  origin: fc.constant('invented'),
  rows: listOf(
    'row',
    0,
    3,
    fc.record(
      {
        order,
        end: fc.constantFrom('rear', 'front'),
        people: fc.constantFrom({ least: 0, most: 0 }, { least: 1, most: 1 }, { least: 1, most: 2 }),
        luggage: fc.constantFrom('with', 'without'),
        wanted: arbitraryWanted,
      },
      { requiredKeys: ['order', 'end', 'people', 'wanted'] },
    ),
  ),
});
