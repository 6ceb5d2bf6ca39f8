import fc from 'fast-check';
import { type Quantity, siOf } from '../schema/quantity.ts';
import type { Raised, StancePoint } from '../schema/stance.ts';
import type { JobDocument } from '../schema.ts';
import { listOf } from './arbitraryLoads.ts';
import { arbitraryQuantity as quantity, written } from './arbitraryQuantity.ts';

/** Metric sizes of road tyres. */
export const arbitraryTyreSize: fc.Arbitrary<string> = fc.constantFrom(
  '130/80-17',
  '130/90 B 16 M/C 73H',
  '180/55 ZR 17',
  '150/70R17',
);

/** Pegs, parts, stand and lamp: some of them, some without how far from the middle. */
export const arbitraryStancePoints: fc.Arbitrary<Record<string, StancePoint>> = listOf(
  'point',
  1,
  5,
  fc.record(
    {
      name: fc.constantFrom('left board', 'muffler', 'stand', 'lamp'),
      order: fc.integer({ min: 0, max: 9 }),
      kind: fc.constantFrom(
        'rider peg' as const,
        'passenger peg' as const,
        'hard part' as const,
        'side stand' as const,
        'headlamp' as const,
      ),
      at: fc.record({ x: quantity('length', 0.1, 1.3), height: quantity('length', 0.12, 0.9) }),
      sideways: quantity('length', 0.15, 0.4),
    },
    { requiredKeys: ['name', 'order', 'kind', 'at'] },
  ),
);

export const arbitraryBeam = fc.record({
  drop: quantity('length', 0.02, 0.3),
  distance: quantity('length', 5, 12),
});

/** A wheel raised, on a machine whose mass centre lies about 200 mm above the axles; on either scale. */
export function arbitraryRaised(front: Quantity<'mass'>, rear: Quantity<'mass'>): fc.Arbitrary<Raised> {
  const reads = { front: siOf(front), rear: siOf(rear) };
  const whole = reads.front + reads.rear;
  const end = fc.constantFrom('front' as const, 'rear' as const);
  return fc.tuple(end, end, fc.double({ min: 0.3, max: 0.6, noNaN: true })).map(([wheel, scale, by]) => {
    const lighter = (whole * 0.2 * Math.tan(Math.asin(by / 1.55))) / 1.55;
    const [level, raised] = [reads[wheel], reads[wheel] - lighter].map((reading) =>
      written<'mass'>(scale === wheel ? reading : whole - reading, 'kg'),
    );
    return { wheel, by: written<'length'>(by, 'mm'), scale, level: level!, raised: raised! };
  });
}

export const arbitrarySteady: fc.Arbitrary<NonNullable<JobDocument['steady']>> = fc.record(
  {
    braking: fc.record({
      deceleration: quantity('acceleration', 1, 6),
      frontShare: quantity('share', 0.3, 1),
    }),
    driving: fc.oneof(
      fc.record({ acceleration: quantity('acceleration', 0.5, 5) }),
      fc.record({ thrust: quantity('force', 200, 2500) }),
    ),
  },
  { requiredKeys: [] },
);

/** How the machine shall stand against as found; another tyre only where that end's is known. */
export function arbitraryStandChoice(known: {
  readonly rear: boolean;
  readonly front: boolean;
}): fc.Arbitrary<Omit<NonNullable<JobDocument['choice']>, 'rear' | 'front'>> {
  return fc.record(
    {
      shockLength: quantity('length', -0.004, 0.006),
      clampHeight: quantity('length', -0.006, 0.01),
      ...(known.rear && { rearTyre: arbitraryTyreSize }),
      ...(known.front && { frontTyre: arbitraryTyreSize }),
    },
    { requiredKeys: [] },
  );
}
