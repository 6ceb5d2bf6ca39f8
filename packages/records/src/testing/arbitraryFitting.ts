import fc from 'fast-check';
import { fastenings, gripped } from '../schema/fastenings.ts';
import type { Mount, RearFitting, Tool, Torque } from '../schema/fitting.ts';
import { listOf } from './arbitraryLoads.ts';
import { arbitraryQuantity as quantity } from './arbitraryQuantity.ts';

/** New shocks at the rear, told as far as anybody likes: also eyes that do not go on their bolts. */
export const arbitraryRearFitting: fc.Arbitrary<RearFitting> = fc.record(
  {
    name: fc.constantFrom('longer pair', 'unit 7'),
    top: arbitraryMount(),
    bottom: arbitraryMount(),
    mountOffset: quantity('length', 0, 0.015),
    spring: fc.constantFrom('on the unit' as const, 'to be fitted' as const),
    reservoir: fc.oneof(
      fc.record({ kind: fc.constantFrom('none' as const, 'on the body' as const) }),
      fc.record(
        {
          kind: fc.constant('by hose' as const),
          offset: quantity('length', 0, 0.05),
          spacer: quantity('length', 0.001, 0.01),
          heads: fc.constantFrom('proud' as const, 'flush' as const),
        },
        { requiredKeys: ['kind'] },
      ),
    ),
    inTheWay: listOf(
      'part',
      0,
      3,
      fc.record({
        name: fc.constantFrom('left bag', 'guard', 'pipe'),
        order: fc.integer({ min: 0, max: 9 }),
      }),
    ),
    tools: listOf('tool', 0, 4, arbitraryTool()),
    torques: fc.record(
      Object.fromEntries(fastenings.map((part) => [part, arbitraryTorque()])) as {
        [P in (typeof fastenings)[number]]: fc.Arbitrary<Torque>;
      },
      { requiredKeys: [] },
    ),
    done: fc
      .uniqueArray(fc.constantFrom('found', 'loosen', 'sweep', 'out-left', 'out', 'in-right', 'no-step'))
      .chain((ids) => fc.tuple(...ids.map((id) => arbitraryDone().map((record) => [id, record] as const))))
      .map((entries) => Object.fromEntries(entries.sort(([a], [b]) => (a < b ? -1 : 1)))),
  },
  { requiredKeys: [] },
);

function arbitraryMount(): fc.Arbitrary<Mount> {
  return fc.record(
    {
      bush: fc.constantFrom('rubber' as const, 'spherical' as const, 'plain' as const),
      bore: quantity('length', 0.01, 0.02),
      bolt: quantity('length', 0.008, 0.016),
      eyeWidth: quantity('length', 0.015, 0.03),
      clampWidth: quantity('length', 0.015, 0.035),
      sleeve: fc.record(
        {
          inner: quantity('length', 0.008, 0.0115),
          outer: quantity('length', 0.012, 0.02),
          length: quantity('length', 0.015, 0.035),
        },
        { requiredKeys: [] },
      ),
      keep: quantity('length', 0, 0.002),
      thread: fc.record(
        {
          into: fc.constantFrom('steel' as const, 'aluminium' as const),
          engaged: quantity('length', 0.005, 0.03),
          atLeast: fc.double({ min: 0.5, max: 3, noNaN: true }),
        },
        { requiredKeys: [] },
      ),
    },
    { requiredKeys: [] },
  );
}

function arbitraryTool(): fc.Arbitrary<Tool> {
  return fc.record(
    {
      order: fc.integer({ min: 0, max: 9 }),
      on: fc.constantFrom(...gripped),
      kind: fc.constantFrom('spanner' as const, 'socket' as const, 'hex key' as const),
      size: quantity('length', 0.004, 0.03),
    },
    { requiredKeys: ['order', 'on', 'kind'] },
  );
}

function arbitraryTorque(): fc.Arbitrary<Torque> {
  const people = fc.constantFrom('Tove', 'Ruben');
  return fc.record(
    {
      value: quantity('torque', 5, 120).map(({ origin: _, ...value }) => ({
        ...value,
        origin: 'manual' as const,
      })),
      page: fc.constantFrom('manual, 7-12', 'p. 203'),
      readBy: people,
      checkedBy: people,
    },
    { requiredKeys: [] },
  );
}

function arbitraryDone() {
  return fc.record(
    { by: fc.constantFrom('Tove', 'Ruben'), when: fc.constant('14:10') },
    { requiredKeys: [] },
  );
}
