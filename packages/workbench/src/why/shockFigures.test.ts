import { expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { type JobPlan, planJob } from '../path.ts';
import { type Change, q, tourerWith } from '../testing/tourerJob.ts';
import { notToBeHadWords, whyWords } from '../words/why.ts';
import type { FigureName } from './figures.ts';
import { why } from './why.ts';

const lengthAdjuster: Change = [
  'machine.rear.shock.lengthAdjuster',
  {
    change: q(3, 'mm'),
    lead: q(1.25, 'mm'),
    thread: { diameter: q(14, 'mm'), engaged: q(20, 'mm') },
  },
];

const air: Change = [
  'machine.rear.shock.air',
  {
    diameter: q(30, 'mm'),
    volume: q(160, 'ml'),
    pressure: q(4, 'bar'),
    least: q(0, 'bar'),
    most: q(9, 'bar'),
  },
];

function plan(...changes: readonly Change[]): JobPlan {
  const planned = planJob(tourerWith(...changes));
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join(' '));
  return planned;
}

function ask(planned: JobPlan, figure: FigureName) {
  return why(planned, { figure, end: 'rear', spring: null, loadCase: null });
}

test('what is left of a thread opens up to what was measured of it', () => {
  const planned = plan(lengthAdjuster);
  const opened = ask(planned, 'longer-left');
  if (opened.kind !== 'opened') throw new Error('it opens');
  // Derived: 20 mm engaged less one diameter of 14 mm; 1 mm on what is engaged, 0.1 mm on the diameter.
  expect(opened.value.value).toBeCloseTo(0.006, 9);
  expect(opened.value.plusMinus).toBeCloseTo(Math.hypot(1e-3, 1e-4), 9);
  expect(opened.contributions.map(({ input }) => input.split('.').at(-1))).toEqual(['engaged', 'diameter']);
  const { title, inputs } = whyWords(planned, opened, unitsFor('metric', planned.job, '.'));
  expect(title).toContain('longer');
  expect(inputs[0]!.name).toContain('thread');
});

test('without a length adjuster, or with a side of it that nobody read, it says what is needed', () => {
  const said = (planned: JobPlan, figure: 'longer-left' | 'shorter-left'): string => {
    const answer = ask(planned, figure);
    if (answer.kind === 'opened') throw new Error('it is not to be had');
    return notToBeHadWords(figure, answer);
  };
  expect(said(plan(), 'longer-left')).toContain('no length adjuster');
  expect(said(plan(lengthAdjuster), 'shorter-left')).toContain('figure needed');
});

test('a planned pressure opens up with the ± that the plan gives it', () => {
  const planned = plan(air);
  const opened = ask(planned, 'pressure');
  if (opened.kind !== 'opened') throw new Error('it opens');
  const whole = Math.hypot(...opened.contributions.map(({ halfWidth }) => halfWidth));
  expect(whole / opened.value.plusMinus!).toBeCloseTo(1, 9);
  const { value, inputs } = whyWords(planned, opened, unitsFor('metric', planned.job, '.'));
  expect(value).toMatch(/ bar$/);
  expect(inputs.every(({ name, adds }) => name.length > 3 && adds.length > 0)).toBe(true);
  expect(ask(plan(), 'pressure')).toMatchObject({ kind: 'not to be had', because: 'no air' });
});
