import { describe, expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { planJob } from '../path.ts';
import { type Change, tourerWith } from '../testing/tourerJob.ts';
import { why } from '../why/why.ts';
import { rubberDocument } from './rubber.ts';
import { rubberSentences } from './words.ts';

const q = (value: number, unit: string, plusMinus?: number) => ({
  value,
  unit,
  ...(plusMinus === undefined ? {} : { plusMinus: { value: plusMinus, unit } }),
});

const RUBBER = 'machine.rear.shock.rubber';

/** 200 N/mm at its end, met at 60 mm of 69 mm: full bump presses it 9 mm. */
const tested = {
  start: q(60, 'mm', 1),
  rows: [
    { compression: q(0, 'mm'), force: q(0, 'N') },
    { compression: q(4, 'mm'), force: q(200, 'N') },
    { compression: q(10, 'mm'), force: q(1400, 'N') },
  ],
};

function planOf(...changes: readonly Change[]) {
  const planned = planJob(tourerWith(['machine.rear.shock.stroke', q(69, 'mm', 0)], ...changes));
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join(' '));
  return planned;
}

describe('A bump rubber by table', () => {
  const planned = planOf([RUBBER, tested]);
  const rubber = rubberDocument(planned, 'rear')!;

  test('bears at full bump what its rows say, on two shocks at the wheel by virtual work', () => {
    expect(rubber.stroke.value).toBeCloseTo(0.06, 12);
    expect(rubber.travel.value).toBeCloseTo(0.06 * 1.12, 9);
    expect(rubber.pressed.value).toBeCloseTo(0.009, 12);
    // 200 N + 5 mm of 200 N/mm
    expect(rubber.force.value).toBeCloseTo(1200, 6);
    expect(rubber.atWheel.value).toBeCloseTo((2 * 1200) / 1.12, 6);
  });

  test('carries the ± of where it is met, and of its forces together', () => {
    expect(rubber.stroke.plusMinus!).toBeCloseTo(0.001, 9);
    // 1 mm of 200 N/mm, and 15 % of 1200 N.
    expect(rubber.force.plusMinus!).toBeCloseTo(Math.hypot(200, 180), 1);
  });

  test('carries a ± typed on a row, and then no other for that force', () => {
    const own = structuredClone(tested);
    own.rows[1]!.force = q(200, 'N', 10);
    own.rows[2]!.force = q(1400, 'N', 60);
    own.rows[2]!.compression = q(10, 'mm', 0.3);
    const typed = rubberDocument(planOf([RUBBER, own]), 'rear')!;
    // At 5/6 of the way from the second row to the third: 1/6 and 5/6 of their ±, 0.3 mm times 5/6 of 200 N/mm, 1 mm of 200 N/mm;
    // and 15 % of 0 N of the first row.
    expect(typed.force.plusMinus!).toBeCloseTo(Math.hypot(10 / 6, 50, 0.3 * (5 / 6) * 200, 200), 1);
    const opened = why(planOf([RUBBER, own]), {
      figure: 'rubber-force',
      end: 'rear',
      spring: null,
      loadCase: null,
    });
    if (opened.kind !== 'opened') throw new Error('it opens');
    expect(opened.value).toEqual(typed.force);
    expect(opened.contributions.map(({ input }) => input)).toContain(`${RUBBER}.rows.2.force`);
  });

  test('pressed past its rows says so', () => {
    const codes = planOf([RUBBER, { ...tested, start: q(50, 'mm') }]).inputs.notes.map(({ code }) => code);
    expect(codes).toContain('rubber carried on');
    expect(planned.inputs.notes.map(({ code }) => code)).not.toContain('rubber carried on');
  });

  test('met earlier never lets a load sink deeper', () => {
    const travels = [10, 25, 40, 60].map((start) => {
      const each = planOf([RUBBER, { ...tested, start: q(start, 'mm') }]);
      return each.plan.loadCases.at(-1)!.asFound.travel!.rear.value;
    });
    for (let i = 1; i < travels.length; i += 1) {
      expect(travels[i]!).toBeGreaterThanOrEqual(travels[i - 1]! - 1e-9);
    }
    expect(travels[3]!).toBeGreaterThan(travels[0]!);
  });

  test('is rested on by a load that is deeper than where it is met, and that is said', () => {
    const early = planOf([RUBBER, { ...tested, start: q(10, 'mm', 1) }]);
    const told = rubberDocument(early, 'rear')!;
    const resting = told.loads.filter(({ planned: at }) => at?.verdict === 'rests on it');
    expect(resting.length).toBeGreaterThan(0);
    for (const { planned: at } of resting) expect(at!.left.value).toBeLessThan(0);
    expect(rubberSentences(early, told, unitsFor('metric', early.job, '.')).join(' ')).toContain(
      'rests on it',
    );
  });
});

describe('An assumed bump rubber', () => {
  const planned = planOf([RUBBER, { assumed: 'middling' }]);
  const rubber = rubberDocument(planned, 'rear')!;

  test('is met so far from full bump as such are pressed, and keeps that from a longer stroke', () => {
    expect(rubber.pressed.value).toBeCloseTo(0.013, 9);
    expect(rubber.pressed.plusMinus!).toBeCloseTo(0.004, 6);
    const longer = planOf([RUBBER, { assumed: 'middling' }], ['machine.rear.shock.stroke', q(75, 'mm', 2)]);
    expect(rubberDocument(longer, 'rear')!.pressed.value).toBeCloseTo(0.013, 9);
  });

  test('stands among the assumptions, and says that nobody measured it', () => {
    for (const path of [`${RUBBER}.assumed`, `${RUBBER}.start`]) {
      expect(planned.inputs.figures.get(path)!.assumed!.why).toContain('assumed, not measured');
    }
    expect(rubberSentences(planned, rubber, unitsFor('metric', planned.job, '.')).join(' ')).toContain(
      'assumed, not measured',
    );
  });

  test('has half its force as ±, beside where it is met', () => {
    const slope = (1450 + (3300 - 1450) / 3 - 1450) / 0.001; // 12 to 15 mm, N/m
    const force = 1450 + slope * 0.001;
    expect(rubber.force.value).toBeCloseTo(force, 6);
    expect(rubber.force.plusMinus!).toBeCloseTo(Math.hypot(0.5 * force, 0.004 * slope), 0);
  });
});

test('A shock without a bump rubber tells of none', () => {
  expect(rubberDocument(planOf([RUBBER, 'none']), 'rear')).toBeNull();
});
