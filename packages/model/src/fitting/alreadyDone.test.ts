import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arbitrarySteps } from '../testing/arbitrarySteps.ts';
import { alreadyDone, type WorkLeft } from './alreadyDone.ts';
import { type Forgotten, type Step, workOrder } from './workOrder.ts';

function step(id: string, ...after: readonly (readonly [string, Forgotten])[]): Step {
  return {
    id,
    after: after.map(([before, forgotten]) => ({ step: before, forgotten })),
    stance: null,
    together: [],
  };
}

function leftOf({ order }: WorkLeft): readonly string[] {
  if (order.kind === 'circle') throw new Error(`a circle: ${order.steps}`);
  return order.phases.flatMap(({ steps }) => steps);
}

/** Record, then clamp a part, then fix its bracket, then look at the whole; washing fits anywhere before the look. */
const work = [
  step('record'),
  step('clamp', ['record', 'lost']),
  step('wash', ['record', 'still']),
  step('bracket', ['clamp', 'undo']),
  step('look', ['bracket', 'again'], ['wash', 'still']),
];

describe('What was done too early', () => {
  test('is undone where it is in the way, the last first, and done again afterwards', () => {
    const left = alreadyDone(
      [...work, step('cover', ['bracket', 'undo'])],
      new Set(['record', 'bracket', 'cover']),
    );
    expect(left.undo).toEqual(['cover', 'bracket']);
    expect(leftOf(left)).toEqual(['clamp', 'wash', 'bracket', 'look', 'cover']);
    expect(left.done).toContainEqual({ step: 'bracket', standing: 'undo', because: ['clamp'] });
    expect(left.done).toContainEqual({ step: 'cover', standing: 'undo', because: ['bracket'] });
  });

  test('is done again where only its result is stale', () => {
    const left = alreadyDone(work, new Set(['record', 'clamp', 'wash', 'look']));
    expect(left.undo).toEqual([]);
    expect(left.done.at(-1)).toEqual({ step: 'look', standing: 'again', because: ['bracket'] });
    expect(leftOf(left)).toEqual(['bracket', 'look']);
  });

  test('stands where the earlier step can still be done', () => {
    const left = alreadyDone(work, new Set(['record', 'clamp', 'bracket', 'look']));
    expect(left.done.every(({ standing }) => standing === 'stands')).toBe(true);
    expect(leftOf(left)).toEqual(['wash']);
  });

  test('can cost a step for good: it is named with what cost it, and does not come back', () => {
    const left = alreadyDone(work, new Set(['clamp']));
    expect(left.lost).toEqual([{ step: 'record', by: 'clamp' }]);
    expect(leftOf(left)).toEqual(['wash', 'bracket', 'look']);
  });
});

describe('With any steps done', () => {
  const some = arbitrarySteps(12).chain((steps) =>
    fc.tuple(
      fc.constant(steps),
      fc.subarray(steps.map(({ id }) => id)).map((ids) => new Set(ids)),
    ),
  );

  test('each step stands, is left or is lost, and one that stands never comes back', () => {
    fc.assert(
      fc.property(some, ([steps, done]) => {
        const left = alreadyDone(steps, done);
        const stands = left.done.flatMap(({ step: id, standing }) => (standing === 'stands' ? [id] : []));
        const all = [...stands, ...leftOf(left), ...left.lost.map(({ step: id }) => id)];
        expect(all.sort()).toEqual(steps.map(({ id }) => id).sort());
        expect(left.done.map(({ step: id }) => id).sort()).toEqual([...done].sort());
      }),
      { seed: 91, numRuns: 400 },
    );
  });

  test('what is left comes in a valid order, also where a step between two is done or lost', () => {
    fc.assert(
      fc.property(some, ([steps, done]) => {
        const ids = leftOf(alreadyDone(steps, done));
        for (const [i, id] of ids.entries()) {
          const above = allBefore(steps, id);
          expect(ids.slice(i + 1).filter((later) => above.has(later))).toEqual([]);
        }
      }),
      { seed: 92, numRuns: 400 },
    );
  });

  test('what is undone comes off before what it rests on', () => {
    fc.assert(
      fc.property(some, ([steps, done]) => {
        const { undo } = alreadyDone(steps, done);
        for (const [i, id] of undo.entries()) {
          const above = allBefore(steps, id);
          expect(undo.slice(0, i).filter((earlier) => above.has(earlier))).toEqual([]);
        }
      }),
      { seed: 93, numRuns: 400 },
    );
  });

  test('done as told, step by step, nothing is ever undone and less is left each time', () => {
    fc.assert(
      fc.property(arbitrarySteps(10), (steps) => {
        const done = new Set<string>();
        const whole = leftOf(alreadyDone(steps, done));
        expect(whole).toEqual(idsOf(steps));
        for (const [i, id] of whole.entries()) {
          done.add(id);
          const left = alreadyDone(steps, done);
          expect(left.undo).toEqual([]);
          expect(left.lost).toEqual([]);
          expect(left.done.every(({ standing }) => standing === 'stands')).toBe(true);
          expect(leftOf(left)).toHaveLength(steps.length - i - 1);
        }
      }),
      { seed: 94, numRuns: 100 },
    );
  });

  test('once undone and then done as told, all of it stands', () => {
    fc.assert(
      fc.property(some, ([steps, done]) => {
        const first = alreadyDone(steps, done);
        const gone = new Set(first.undo);
        const now = new Set([...done].filter((id) => !gone.has(id)));
        for (const id of leftOf(first)) now.add(id);
        const last = alreadyDone(steps, now);
        expect(leftOf(last)).toEqual([]);
        expect(last.done.every(({ standing }) => standing === 'stands')).toBe(true);
      }),
      { seed: 95, numRuns: 200 },
    );
  });
});

test('a step that there is not, or a circle, is refused by name', () => {
  expect(() => alreadyDone(work, new Set(['polish']))).toThrow('"polish" was done');
  expect(() => alreadyDone([step('a', ['b', 'undo']), step('b', ['a', 'undo'])], new Set())).toThrow('a, b');
});

function idsOf(steps: readonly Step[]): readonly string[] {
  const order = workOrder(steps);
  return order.kind === 'circle' ? [] : order.phases.flatMap((phase) => phase.steps);
}

/** All that comes before a step, be it through others. */
function allBefore(steps: readonly Step[], id: string): ReadonlySet<string> {
  const above = new Set<string>();
  const go = (at: string): void => {
    for (const { step: before } of steps.find((each) => each.id === at)!.after) {
      if (above.has(before)) continue;
      above.add(before);
      go(before);
    }
  };
  go(id);
  return above;
}
