import fc from 'fast-check';
import type { ReadAdjusters, Readings, SagReading } from '../schema/readings.ts';
import type { EndSetting } from '../schema/setups.ts';
import { listOf } from './arbitraryLoads.ts';
import { arbitraryQuantity as quantity } from './arbitraryQuantity.ts';

/** Readings of any of these loads or of the machine alone, also such as no machine shows. */
export function arbitraryReadings(
  loads: readonly string[],
  asFound: { readonly rear: EndSetting; readonly front?: EndSetting },
): fc.Arbitrary<Readings> {
  return listOf('reading', 0, 4, fc.oneof(arbitrarySag(loads, asFound), arbitraryScales(loads)));
}

function ofAnyKind(loads: readonly string[]) {
  return {
    order: fc.integer({ min: 0, max: 9 }),
    ...(loads.length > 0 && { loadCase: fc.constantFrom(...loads) }),
    by: fc.constantFrom('A. Tester', 'the second pair of eyes'),
    when: fc.constant('Tuesday, before lunch'),
  };
}

function arbitrarySag(
  loads: readonly string[],
  asFound: { readonly rear: EndSetting; readonly front?: EndSetting },
): fc.Arbitrary<SagReading> {
  const ends = asFound.front === undefined ? (['rear'] as const) : (['rear', 'front'] as const);
  return fc.constantFrom(...ends).chain((end) =>
    fc.record(
      {
        ...ofAnyKind(loads),
        kind: fc.constant('sag' as const),
        end: fc.constant(end),
        side: fc.constantFrom('left' as const, 'right' as const),
        marks: fc.constantFrom('axle to tail rail', 'seal to clamp'),
        hanging: quantity('length', 0.2, 0.6),
        afterPush: quantity('length', 0.2, 0.6),
        afterLift: quantity('length', 0.2, 0.6),
        adjusters: fc.constant(settingsOf(asFound[end]!)),
      },
      { requiredKeys: ['order', 'kind', 'end', 'marks', 'hanging'] },
    ),
  );
}

/** As found once more: any other place is another draw of the same. */
function settingsOf(setting: EndSetting): ReadAdjusters {
  if ('single' in setting) return { single: setting.single.at };
  if ('both' in setting) return { both: setting.both.at };
  return { left: setting.left.at, right: setting.right.at };
}

function arbitraryScales(
  loads: readonly string[],
): fc.Arbitrary<Extract<Readings[string], { kind: 'scales' }>> {
  return fc.record(
    {
      ...ofAnyKind(loads),
      kind: fc.constant('scales' as const),
      front: quantity('mass', 90, 300),
      rear: quantity('mass', 90, 400),
    },
    { requiredKeys: ['order', 'kind', 'rear'] },
  );
}
