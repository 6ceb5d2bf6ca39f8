import { expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { planJob } from '../path.ts';
import type { LengthAdjusterDocument } from '../shock/document.ts';
import { lengthAdjusterWords } from '../shock/words.ts';
import { tourerWith } from '../testing/tourerJob.ts';

const mm = (value: number, plusMinus?: number) => ({
  value,
  unit: 'mm',
  ...(plusMinus === undefined ? {} : { plusMinus: { value: plusMinus, unit: 'mm' } }),
});

function planOf(adjuster: object, shockLength?: object) {
  const planned = planJob(
    tourerWith(
      ['machine.rear.shock.lengthAdjuster', adjuster],
      ...(shockLength === undefined ? [] : ([['choice.shockLength', shockLength]] as const)),
    ),
  );
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join(' '));
  return planned;
}

function told(adjuster: object, shockLength?: object): LengthAdjusterDocument {
  return planOf(adjuster, shockLength).inputs.shock.lengthAdjuster!;
}

const thread = { diameter: mm(12, 0), engaged: mm(16, 0.6) };

test('the thread left is told with the ± of what was measured, in turns too', () => {
  const { longer, shorter } = told({ change: mm(0), lead: mm(1.25, 0), thread });
  expect(longer!.by).toBe('thread');
  expect(longer!.length.value).toBeCloseTo(0.004, 12);
  expect(longer!.length.plusMinus).toBeCloseTo(0.0006, 9);
  // Derived: 4 / 1.25 and 0.6 / 1.25 turns.
  expect(longer!.turns!.value).toBeCloseTo(3.2, 9);
  expect(longer!.turns!.plusMinus).toBeCloseTo(0.48, 6);
  expect(shorter).toBeNull();
});

test('a chosen length takes from what is left, and is refused where there is too little', () => {
  const adjuster = { change: mm(0), lead: mm(1.25, 0), thread };
  const passed = told(adjuster, mm(2.5, 0)).chosen!;
  expect(passed.turns!.value).toBeCloseTo(2, 9);
  expect(passed.left!.value).toBeCloseTo(0.0015, 9);
  expect(passed.verdict).toBe('passed');
  expect(told(adjuster, mm(3.6, 0)).chosen!.verdict).toBe('within its ±');
  expect(told(adjuster, mm(5, 0)).chosen!.verdict).toBe('failed');
  expect(told(adjuster, mm(-2, 0)).chosen!.verdict).toBe('not checked');
  expect(told({ change: mm(0) }, mm(2, 0)).chosen!.verdict).toBe('not checked');
});

test('a thread that is out too far already is told as so many turns back', () => {
  const planned = planOf({ change: mm(0), lead: mm(1.5), thread: { ...thread, engaged: mm(9) } });
  const sentences = lengthAdjusterWords(planned, unitsFor('metric', planned.job, '.')).join(' ');
  expect(sentences).toMatch(
    /it stands 2(\.0)? ± .* beyond one diameter of thread left engaged\. Turn it back/,
  );
});

test('what nobody measured is not checked, and says what to measure', () => {
  const planned = planOf({ change: mm(0) });
  const [longer, shorter] = lengthAdjusterWords(planned, unitsFor('metric', planned.job, '.'));
  expect(longer).toMatch(/not checked, figure needed/);
  expect(shorter).toMatch(/not checked, figure needed/);
});
