import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arbitrarySteps } from '../testing/arbitrarySteps.ts';
import { type Phase, type Step, workOrder } from './workOrder.ts';

function step(id: string, after: readonly string[] = [], stance: string | null = null): Step {
  return { id, after: after.map((each) => ({ step: each, forgotten: 'undo' })), stance, together: [] };
}

function phasesOf(steps: readonly Step[], start: string | null = null): readonly Phase[] {
  const order = workOrder(steps, start);
  if (order.kind === 'circle') throw new Error(`a circle: ${order.steps}`);
  return order.phases;
}

function idsOf(steps: readonly Step[], start: string | null = null): readonly string[] {
  return phasesOf(steps, start).flatMap(({ steps: ids }) => ids);
}

describe('An order of work', () => {
  test('has each step once, after all that it waits for, with the machine standing as it asks', () => {
    fc.assert(
      fc.property(arbitrarySteps(14), fc.constantFrom(null, 'wheels', 'air'), (steps, start) => {
        const phases = phasesOf(steps, start);
        const ids = phases.flatMap((phase) => phase.steps);
        expect([...ids].sort()).toEqual(steps.map(({ id }) => id).sort());
        for (const { id, after, stance } of steps) {
          for (const { step: before } of after) expect(ids.indexOf(before)).toBeLessThan(ids.indexOf(id));
          const phase = phases.find((each) => each.steps.includes(id))!;
          if (stance !== null) expect(phase.stance).toBe(stance);
        }
        for (const [i, phase] of phases.entries()) {
          expect(phase.steps.length).toBeGreaterThan(0);
          if (i > 0) expect(phase.stance).not.toBe(phases[i - 1]!.stance);
        }
      }),
      { seed: 81, numRuns: 400 },
    );
  });

  test('changes the stance as seldom as any order of the same steps', () => {
    fc.assert(
      fc.property(arbitrarySteps(6), fc.constantFrom(null, 'wheels', 'air'), (steps, start) => {
        expect(changesIn(steps, idsOf(steps, start), start)).toBe(fewestByTryingAll(steps, start));
      }),
      { seed: 82, numRuns: 200 },
    );
  });

  test('is the same whenever it is asked for, and each part of it is an order of its own', () => {
    fc.assert(
      fc.property(arbitrarySteps(12), (steps) => {
        expect(workOrder(steps)).toEqual(workOrder([...steps]));
        const done = new Set<string>();
        for (const id of idsOf(steps)) {
          const { after } = steps.find((each) => each.id === id)!;
          expect(after.every(({ step: before }) => done.has(before))).toBe(true);
          done.add(id);
        }
      }),
      { seed: 83, numRuns: 100 },
    );
  });

  test('keeps to the order in which steps were declared where nothing else decides', () => {
    expect(idsOf([step('c'), step('a'), step('b')])).toEqual(['c', 'a', 'b']);
  });

  test('does with one side, then with one tool, what can be done with it', () => {
    const at = (id: string, side: string, tool: string): Step => ({ ...step(id), together: [side, tool] });
    const steps = [
      at('a', 'left', 'key'),
      at('b', 'right', 'key'),
      at('c', 'left', 'spanner'),
      at('d', 'left', 'key'),
    ];
    expect(idsOf(steps)).toEqual(['a', 'd', 'c', 'b']);
  });

  test('begins as the machine stands: of two ways to begin, the one that saves lifting it', () => {
    const steps = [step('lift', [], 'air'), step('look', [], 'wheels')];
    expect(phasesOf(steps, 'wheels').map(({ stance }) => stance)).toEqual(['wheels', 'air']);
    expect(phasesOf(steps, 'air').map(({ stance }) => stance)).toEqual(['air', 'wheels']);
  });

  test('of nothing is empty', () => {
    expect(workOrder([])).toEqual({ kind: 'order', phases: [] });
  });
});

describe('Steps that wait for each other', () => {
  test('in a circle are named, each after the one that waits for it', () => {
    const steps = [
      step('free'),
      step('a', ['c']),
      step('b', ['a', 'free']),
      step('c', ['b']),
      step('d', ['a']),
    ];
    expect(workOrder(steps)).toEqual({ kind: 'circle', steps: ['a', 'c', 'b'] });
  });

  test('alone for itself is a circle of one', () => {
    expect(workOrder([step('a', ['a'])])).toEqual({ kind: 'circle', steps: ['a'] });
  });

  test('are refused where one is not there or one is there twice', () => {
    expect(() => workOrder([step('a', ['b'])])).toThrow('step "a" waits for "b"');
    expect(() => workOrder([step('a'), step('a')])).toThrow('step "a" is there twice');
  });
});

/** How often the machine is made to stand another way; a step that does not ask leaves it as it stands. */
function changesIn(steps: readonly Step[], ids: readonly string[], start: string | null): number {
  let [stands, changes] = [start, 0];
  for (const id of ids) {
    const { stance } = steps.find((each) => each.id === id)!;
    if (stance === null || stance === stands) continue;
    if (stands !== null) changes += 1;
    stands = stance;
  }
  return changes;
}

function fewestByTryingAll(steps: readonly Step[], start: string | null): number {
  let fewest = Number.POSITIVE_INFINITY;
  const go = (ids: readonly string[]): void => {
    if (ids.length === steps.length) fewest = Math.min(fewest, changesIn(steps, ids, start));
    for (const { id, after } of steps) {
      if (!ids.includes(id) && after.every(({ step: before }) => ids.includes(before))) go([...ids, id]);
    }
  };
  go([]);
  return fewest;
}
