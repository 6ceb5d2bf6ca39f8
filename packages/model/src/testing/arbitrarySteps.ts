import fc from 'fast-check';
import type { Before, Step } from '../fitting/workOrder.ts';

/** Steps without a circle, declared in any order: each waits for some that come before it in a hidden row. */
export function arbitrarySteps(most: number): fc.Arbitrary<readonly Step[]> {
  const forgotten = fc.constantFrom<Before['forgotten'][]>('undo', 'again', 'still', 'lost');
  const step = fc.record({
    waits: fc.array(fc.record({ pick: fc.nat(), forgotten }), { maxLength: 3 }),
    stance: fc.option(fc.constantFrom('wheels', 'air', 'held'), { freq: 3, nil: null }),
    together: fc.tuple(
      fc.option(fc.constantFrom('left', 'right'), { nil: null }),
      fc.option(fc.constantFrom('spanner', 'key'), { nil: null }),
    ),
  });
  return fc
    .array(step, { maxLength: most })
    .map((all) =>
      all.map(({ waits, ...rest }, i): Step => {
        const after =
          i === 0 ? [] : waits.map(({ pick, forgotten: how }) => ({ step: `s${pick % i}`, forgotten: how }));
        const once = after.filter(({ step: id }, k) => after.findIndex((each) => each.step === id) === k);
        return { id: `s${i}`, after: once, ...rest };
      }),
    )
    .chain((steps) => fc.shuffledSubarray([...steps], { minLength: steps.length, maxLength: steps.length }));
}
