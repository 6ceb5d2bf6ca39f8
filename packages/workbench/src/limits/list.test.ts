import type { LimitOf } from '@sagwright/model/limits/limits';
import type { JobDocument } from '@sagwright/records/schema';
import { arbitraryJob } from '@sagwright/records/testing/arbitraryJob';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { type JobPlan, planJob } from '../path.ts';
import { springInView } from '../result/inView.ts';
import { overloadedTourer, tourerThatNothingFits, tourerWith } from '../testing/tourerJob.ts';
import { limitsNotChecked } from '../words/limits.ts';
import type { LimitRowDocument } from './document.ts';
import { limitListOf, limitRows } from './list.ts';
import { roomsOpened } from './room.ts';
import type { LimitRow } from './row.ts';
import { limitRowWords, roomWords } from './words.ts';

function plan(job: JobDocument): JobPlan {
  const planned = planJob(job);
  if (!planned.ok) throw new Error(planned.problems.map(({ path }) => path).join(', '));
  return planned;
}

function rowOf(planned: JobPlan, id: string): LimitRowDocument {
  return limitListOf(planned).rows.find((row) => row.id === id)!;
}

/** Whether what a load says of a limit is about the same as a row of the list. */
function isOf(of: LimitOf, row: LimitRowDocument): boolean {
  return of.kind === 'place' ? row.id === `place-${of.place}` : row.id === of.kind.replace(' ', '-');
}

test('of any job, what lacks a figure is not checked, what was checked lacks none, and each has a whole sentence', () => {
  fc.assert(
    fc.property(arbitraryJob, (job) => {
      const planned = planJob(job);
      if (!planned.ok) return;
      const units = unitsFor('typed', job, '.');
      const { rows, room } = limitListOf(planned);
      expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
      for (const row of rows) {
        if (row.verdict === 'not checked') expect(row.needs.length, row.id).toBeGreaterThan(0);
        else expect(row, row.id).toMatchObject({ needs: [], margin: { value: expect.any(Number) } });
        if (row.verdict === 'over') expect(row.margin!.value).toBeLessThan(0);
        const beside = planned.plan.loadCases.flatMap(({ limits }) =>
          limits.filter(({ of }) => isOf(of, row)).map(({ verdict }) => verdict),
        );
        if (row.verdict === 'within') expect(beside, row.id).toEqual(beside.map(() => 'within'));
        if (beside.includes('over')) expect(row.verdict, row.id).toBe('over');
      }
      const said = [
        ...rows.map((row) => limitRowWords(planned, row, units)),
        ...room.map((each) => roomWords(planned, each, units)),
      ];
      for (const sentence of said) expect(sentence).not.toMatch(/undefined|null|NaN|\[object/);
    }),
    { seed: 41, numRuns: 60 },
  );
});

test('a limit that nobody has read is not checked, and says what to read and where it goes', () => {
  const planned = plan(tourerWith(['machine.limits.gross', undefined]));
  const row = limitListOf(planned).rows.find(({ id }) => id === 'gross')!;
  expect(row).toMatchObject({
    verdict: 'not checked',
    needs: [{ what: 'gross rating', path: 'machine.limits.gross' }],
  });
});

describe('a tyre with less air than is asked for', () => {
  const low = (index: number): JobPlan =>
    plan(
      tourerWith(
        ['machine.rear.tyre.capacity', undefined],
        ['machine.rear.tyre.loadIndex', index],
        ['machine.rear.tyre.pressure', { value: 2.2, unit: 'bar' }],
        ['machine.rear.tyre.placardPressure', { value: 2.8, unit: 'bar' }],
      ),
    );

  test('is not checked wherever it is told of, and names what its maker says at that pressure', () => {
    const planned = low(80);
    expect(rowOf(planned, 'rear-tyre')).toMatchObject({
      verdict: 'not checked',
      needs: [{ what: 'capacity at pressure', path: 'machine.rear.tyre.byPressure' }],
    });
    for (const { limits } of planned.plan.loadCases)
      expect(limits.find(({ of }) => of.kind === 'rear tyre')?.verdict).toBe('not checked');
    expect(limitsNotChecked(planned)).toContain('what the rear tyre bears with the air it has');
  });

  test('is failed where even a full tyre would be, and its load is refused', () => {
    // Load index 60 is 250 kg.
    const planned = low(60);
    expect(rowOf(planned, 'rear-tyre')).toMatchObject({ verdict: 'over', allowed: { value: 250 } });
    expect(planned.plan.loadCases.some(({ refused }) => refused)).toBe(true);
  });

  test('leaves no more room than a full one would, and the room says that it is not checked', () => {
    const { room } = limitListOf(low(60));
    expect(room.length).toBeGreaterThan(0);
    for (const each of room) expect(each.notChecked).toContainEqual({ kind: 'rear tyre' });
    const over = low(60)
      .plan.loadCases.filter(({ refused }) => refused)
      .map(({ loadCase }) => loadCase);
    const there = room.filter(({ loadCase }) => over.includes(loadCase));
    expect(there.length).toBeGreaterThan(0);
    for (const { mass } of there) expect(mass?.value).toBe(0);
  });
});

test.each([
  [['pressure'], ['pressure']],
  [['placardPressure'], ['placard pressure']],
  [
    ['pressure', 'placardPressure'],
    ['pressure', 'placard pressure'],
  ],
])(
  'a tyre is passed by its load index only where its air is known to be enough: without %j it is not checked',
  (left, whats) => {
    const planned = plan(
      tourerWith(...left.map((field) => [`machine.rear.tyre.${field}`, undefined] as const)),
    );
    const { verdict, needs } = rowOf(planned, 'rear-tyre');
    expect({ verdict, needs: needs.map(({ what }) => what) }).toEqual({
      verdict: 'not checked',
      needs: whats,
    });
    expect(rowOf(planned, 'rear-tyre-pressure').needs.map(({ what }) => what)).toEqual(whats);
    expect(rowOf(plan(tourerWith()), 'rear-tyre').verdict).not.toBe('not checked');
  },
);

test('more air than the wall of a tyre allows fails, and without that figure it is not checked', () => {
  const most = (bar: number | undefined): LimitRowDocument =>
    rowOf(
      plan(
        tourerWith([
          'machine.rear.tyre.mostPressure',
          bar === undefined ? undefined : { value: bar, unit: 'bar', origin: 'plate' },
        ]),
      ),
      'rear-tyre-most-pressure',
    );
  // The tourer's rear tyre has 2.9 bar.
  expect(most(2.5).verdict).toBe('over');
  expect(most(2.5).margin!.value).toBeCloseTo(-0.4e5, 6);
  expect(most(2.9).verdict).toBe('within its ±');
  expect(most(3.6).verdict).toBe('within');
  expect(most(undefined)).toMatchObject({
    verdict: 'not checked',
    needs: [{ what: 'most pressure', path: 'machine.rear.tyre.mostPressure' }],
  });
});

test('a wanted sag that lies past the end of an adjuster is not passed', () => {
  const planned = plan(tourerThatNothingFits());
  const spring = springInView(planned, 'rear')!;
  const short = spring.cells.flatMap((cell) =>
    cell.kind === 'planned' && cell.cell.reach.kind === 'out of reach' ? [cell.cell.reach.short] : [],
  );
  const row = rowOf(planned, 'rear-preload');
  if (short.length > 0) {
    expect(row.verdict).toBe('over');
    expect(row.margin!.value).toBeCloseTo(-Math.max(...short), 9);
  } else expect(row).toMatchObject({ verdict: 'within its ±', notes: ['only at its end'] });
  expect(row.margin!.plusMinus).toBeGreaterThan(0);
});

test('a refused load is named where its preload and coil bind are not worked out', () => {
  const planned = plan(overloadedTourer());
  for (const id of ['rear-preload', 'rear-coil-bind']) {
    const row = rowOf(planned, id);
    expect(row.leftOut).toEqual([{ loadCase: 'all', why: 'refused' }]);
    expect(limitRowWords(planned, row, unitsFor('typed', planned.job, '.'))).toContain(
      'Not worked out for "both of us and the box", which is refused',
    );
  }
});

test('coil bind tells what stays in hand beside what is left', () => {
  const planned = plan(tourerWith());
  const row = rowOf(planned, 'rear-coil-bind');
  expect(row.margin!.value).toBeCloseTo(row.found!.value - 0.002, 12);
  expect(limitRowWords(planned, row, unitsFor('typed', planned.job, '.'))).toMatch(
    /passed, \S+ ± \S+ mm left beyond the 2\.0 mm kept in hand, with/,
  );
});

test('a lean between two bounds goes by the one that leaves less with its ± taken off', () => {
  const stand = {
    name: 'stand',
    order: 1,
    kind: 'side stand',
    sideways: mm(290),
    at: { x: mm(600), height: mm(80) },
  };
  const deg = (value: number, plusMinus: number): object => ({
    value,
    unit: 'deg',
    plusMinus: { value: plusMinus, unit: 'deg' },
  });
  const planned = (least: object, most: object): LimitRow =>
    limitRows(
      plan(tourerWith(['machine.points', { stand }], ['machine.limits.standLean', { least, most }])),
    ).find(({ told }) => told.kind === 'side stand')!;
  const lean = planned(deg(1, 0.1), deg(34, 0.1)).told.found!.value * (180 / Math.PI);
  expect(lean).toBeGreaterThan(5);
  // The nearer bound is sharp, the further one is hardly known: it is the further one that may be crossed.
  const blurred = planned(deg(lean - 3, 0.1), deg(lean + 4, 5));
  expect(blurred.told).toMatchObject({ verdict: 'within its ±' });
  expect(blurred.told.margin!.value * (180 / Math.PI)).toBeCloseTo(4, 6);
  expect(blurred.contributions()[0]!.input).toBe('machine.limits.standLean.most');
  const whole = Math.hypot(...blurred.contributions().map(({ halfWidth }) => halfWidth));
  expect(whole).toBeCloseTo(blurred.told.margin!.plusMinus!, 9);
});

test('what a margin is made of makes its ±, for every row and room that has one', () => {
  const kg = (value: number): object => ({ value, unit: 'kg', plusMinus: { value: 2, unit: 'kg' } });
  const planned = plan(
    tourerWith(
      ['machine.limits.gross', kg(590)],
      ['machine.places.carrier.limit', kg(18)],
      ['machine.rear.shock.lengthAdjuster', lengthAdjuster],
    ),
  );
  const rows = limitRows(planned).filter(({ told }) => (told.margin?.plusMinus ?? 0) > 0);
  expect(rows.map(({ told }) => told.kind)).toEqual(
    expect.arrayContaining(['gross', 'place', 'shock length', 'coil bind', 'tyre pressure']),
  );
  const made = (contributions: readonly { readonly halfWidth: number }[]): number =>
    Math.hypot(...contributions.map(({ halfWidth }) => halfWidth));
  for (const { told, contributions } of rows)
    expect(made(contributions()), told.id).toBeCloseTo(told.margin!.plusMinus!, 6);
  const rooms = planned.inputs.question.loadCases.flatMap(({ id }) => roomsOpened(planned, id));
  expect(new Set(rooms.map(({ told }) => told.by?.kind))).toContain('place');
  for (const { told, contributions } of rooms)
    if (told.mass?.plusMinus != null) expect(made(contributions)).toBeCloseTo(told.mass.plusMinus, 9);
});

const mm = (value: number): object => ({ value, unit: 'mm' });

const lengthAdjuster = {
  change: mm(2),
  least: mm(-6),
  most: mm(9),
  lead: mm(1.25),
};

test('what is exceeded is failed, whatever else is not known', () => {
  const planned = plan(overloadedTourer());
  const failed = limitListOf(planned).rows.filter(({ verdict }) => verdict === 'over');
  expect(failed.length).toBeGreaterThan(0);
  for (const row of failed) expect(row.loadCase).not.toBeNull();
});
