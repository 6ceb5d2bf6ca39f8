import { arbitraryJob } from '@sagwright/records/testing/arbitraryJob';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { type JobPlan, planJob } from '../path.ts';
import { resultJson } from '../result/result.ts';
import { type Change, q, tourerWith } from '../testing/tourerJob.ts';
import { notToBeHadWords, whyWords } from '../words/why.ts';
import { type FigureName, figureNames, figures } from './figures.ts';
import type { Why, WhyQuestion } from './question.ts';
import { why } from './why.ts';

const planned = plan(tourerWith());
const asked = (figure: FigureName, more: Partial<WhyQuestion> = {}): Why =>
  why(planned, { figure, end: 'rear', spring: 'c1', loadCase: 'both', ...more });
const opened = (figure: FigureName, more: Partial<WhyQuestion> = {}): Extract<Why, { kind: 'opened' }> =>
  openedOf(planned, figure, more);

/** With air beside its coils and a thread to set its length, so that every figure can be had. */
const equipped = plan(
  tourerWith(
    [
      'machine.rear.shock.air',
      {
        diameter: q(20, 'mm'),
        volume: q(120, 'ml'),
        pressure: q(1, 'bar'),
        least: q(0, 'bar'),
        most: q(9, 'bar'),
      },
    ],
    [
      'machine.rear.shock.lengthAdjuster',
      { change: q(2, 'mm'), least: q(-4, 'mm'), most: q(9, 'mm'), lead: q(1.5, 'mm') },
    ],
  ),
);

function openedOf(
  of: JobPlan,
  figure: FigureName,
  more: Partial<WhyQuestion> = {},
): Extract<Why, { kind: 'opened' }> {
  const answer = why(of, { figure, end: 'rear', spring: 'c1', loadCase: 'both', ...more });
  if (answer.kind !== 'opened') throw new Error(`${figure}: ${answer.because}`);
  return answer;
}

describe('A figure opened up', () => {
  const document = resultJson(planned);
  const cell = document.rear.springs
    .find(({ id }) => id === 'c1')!
    .cells.find(({ loadCase }) => loadCase === 'both')!;
  if (cell.kind !== 'planned') throw new Error('the cell is planned');
  const { set } = cell;
  const load = document.loadCases.find(({ id }) => id === 'both')!;

  // The same figure by two ways: as the plan tells it, and worked out again when asked.
  test.each([
    ['preload', cell.preload!.value],
    ['spring-length', set.springLength!],
    ['sag', set.sag!.sag.value],
    ['free-sag', set.free!.sag.value],
    ['travel-left', set.travelToMetal!],
    ['rubber-left', set.travelToRubber!],
    ['coil-bind', set.strokeToCoilBind!],
    ['wheel-rate', set.wheelRate!],
    ['ride-frequency', set.frequency!],
    ['pitch', set.attitude!.pitch],
    ['rake', set.attitude!.rake],
    ['trail', set.attitude!.groundTrail!],
    ['wheelbase', set.attitude!.wheelbase],
    ['seat-height', set.attitude!.seatHeight!],
    ['axle-load', load.axleLoadsFullTank!.rear],
  ] as const)('has the value that the plan tells: %s', (figure, value) => {
    expect(opened(figure).value.value).toBeCloseTo(value, 7);
  });

  test('has the ± that the plan tells, where it tells one', () => {
    expect(opened('sag').value.plusMinus).toBeCloseTo(set.sag!.sag.plusMinus!, 9);
    expect(opened('axle-load').value.plusMinus).toBeCloseTo(load.axleLoadsFullTank!.rearPlusMinus, 6);
    expect(opened('collar').value.plusMinus).toBe(cell.positions!.aim.plusMinus);
  });

  test('of kilograms a turn is the plan’s, whichever load is named', () => {
    const told = document.rear.springs.find(({ id }) => id === 'c1')!.kilogramsPerTurn!;
    expect(opened('kg-per-turn').value.value).toBeCloseTo(told, 6);
    expect(opened('kg-per-turn')).toEqual(opened('kg-per-turn', { loadCase: null }));
  });

  test('has shares that make a whole, the greatest first, and a ± that is their root of squares', () => {
    for (const figure of figureNames) {
      const { value, contributions } = openedOf(equipped, figure, { loadCase: 'work' });
      const shares = contributions.map(({ share }) => share);
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
      expect([...shares].sort((a, b) => b - a)).toEqual(shares);
      const root = Math.sqrt(contributions.reduce((sum, { halfWidth }) => sum + halfWidth ** 2, 0));
      expect(root / value.plusMinus!).toBeCloseTo(1, 9);
    }
  });

  test('of a wheel on its extension stop has no inputs, and the ± that the plan tells there', () => {
    const { value, contributions } = opened('free-sag');
    expect(set.free!.standing).toBe('topped out');
    expect(contributions).toEqual([]);
    expect(value.plusMinus).toBe(set.free!.sag.plusMinus);
  });

  test('counts an input that cancels out for nothing: a free length read with the installed one', () => {
    // Installed length = length at the loosest end − position: the free length drops out.
    const inputs = opened('spring-length').contributions.map(({ input }) => input);
    expect(inputs).toEqual([
      'machine.rear.shock.adjuster.springLength.length',
      'machine.rear.shock.adjuster.springLength.at',
    ]);
  });

  test('knows springs and loads by name as well as by id', () => {
    expect(opened('sag', { spring: 'C1', loadCase: 'Both of us' })).toEqual(opened('sag'));
  });

  test('takes the spring in view and the load that is ridden most where none is named', () => {
    expect(opened('sag', { spring: null, loadCase: null })).toMatchObject({ spring: 'c1', loadCase: 'work' });
  });
});

describe('A figure that cannot be had says why', () => {
  test.each([
    ['sag', { loadCase: 'sunday' }, 'no such load'],
    ['sag', { spring: 'c9' }, 'no such spring'],
    ['kg-per-turn', { end: 'front', spring: null }, 'nothing is turned'],
    ['rubber-left', { end: 'front', spring: null }, 'rubber not known'],
    ['coil-bind', { end: 'front', spring: null }, 'lengths not known'],
  ] as const)('%s %o: %s', (figure, more, because) => {
    expect(asked(figure, more)).toMatchObject({ kind: 'not to be had', because });
  });

  test('and so for the frequency of a wheel that stands on metal, or whose ratio falls away, as the plan has it', () => {
    const soft = plan(tourerWith(['springs.c1.rate.rate', { value: 2, unit: 'N/mm' }]));
    const question = { figure: 'ride-frequency', end: 'rear', spring: 'c1', loadCase: 'all' } as const;
    const cell = soft.plan.rear.springs
      .find(({ spring }) => spring === 'c1')!
      .cells.find(({ loadCase }) => loadCase === 'all')!;
    expect(cell.kind === 'planned' && cell.cell.set.rest!.rear.standing).toBe('bottomed');
    expect(cell.kind === 'planned' && cell.cell.set.rideFrequency).toBeNull();
    expect(why(soft, question)).toMatchObject({ kind: 'not to be had', because: 'nothing swings' });
  });

  test('and so for what the job lacks', () => {
    const of = (figure: FigureName, ...changes: readonly Change[]) =>
      why(plan(tourerWith(...changes)), { figure, end: 'rear', spring: null, loadCase: null });
    expect(of('trail', ['machine.forkOffset', undefined])).toMatchObject({
      because: 'fork offset not known',
    });
    expect(of('seat-height', ['machine.seat', undefined])).toMatchObject({ because: 'seat not known' });
    expect(of('sag', ['loadCases', {}])).toMatchObject({ because: 'no loads' });
    expect(of('coil-bind', ['springs.c1.solidLength', undefined], ['choice', { rear: 'c1' }])).toMatchObject({
      because: 'lengths not known',
    });
  });
});

test('of any job, every figure opens with finite numbers or says why not, in whole sentences', () => {
  fc.assert(
    fc.property(
      arbitraryJob,
      fc.constantFrom(...figureNames),
      fc.constantFrom('rear' as const, 'front' as const),
      (job, figure, end) => {
        const any = planJob(job);
        if (!any.ok) return;
        const answer = why(any, { figure, end, spring: null, loadCase: null });
        if (answer.kind !== 'opened') {
          expect(notToBeHadWords(figure, answer)).toMatch(/^[a-z-]+: not to be had; .+\.$/);
          return;
        }
        expect(Number.isFinite(answer.value.value)).toBe(true);
        for (const { halfWidth, share } of answer.contributions) {
          expect(Number.isFinite(halfWidth) && share >= 0 && share <= 1 + 1e-9).toBe(true);
        }
        const said = whyWords(any, answer, unitsFor('typed', job, '.'));
        expect(JSON.stringify(said)).not.toMatch(/undefined|NaN/);
      },
    ),
    { seed: 8, numRuns: 200 },
  );
});

test('every figure has its equation, its words and its source', () => {
  for (const figure of figureNames) {
    const { equation, title, source } = whyWords(
      equipped,
      openedOf(equipped, figure),
      unitsFor('metric', equipped.job, '.'),
    );
    for (const text of [equation, title, source]) expect(text.length).toBeGreaterThan(5);
    expect(['cell', 'load', 'spring', 'shock']).toContain(figures[figure].of);
  }
});

function plan(job: ReturnType<typeof tourerWith>): JobPlan {
  const answer = planJob(job);
  if (!answer.ok) throw new Error(answer.problems.map(({ message }) => message).join('\n'));
  return answer;
}
