import { expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { planJob } from '../path.ts';
import { tourerWith } from '../testing/tourerJob.ts';
import { forkFigureNames, forkFigures, whyFork } from './whyFork.ts';

const planned = planJob(tourerWith());
if (!planned.ok) throw new Error(JSON.stringify(planned.problems));
const units = unitsFor('metric', planned.job, '.');

test('every force of the fork opens up anywhere in its stroke; its parts make up the whole of its ±', () => {
  for (const name of forkFigureNames) {
    for (const share of [0.1, 0.5, 1]) {
      const opened = whyFork(planned, { force: forkFigures[name], share }, units);
      if (typeof opened === 'string') throw new Error(opened);
      expect(opened.value, `${name} at ${share}`).toMatch(/ N$/);
      expect(opened.inputs.length).toBeGreaterThan(0);
      expect(opened.inputs.reduce((sum, { share: part }) => sum + part, 0)).toBeCloseTo(1, 6);
    }
  }
});

test('the springs hang on rate and preload; the air does not', () => {
  const paths = (force: 'springs' | 'air'): readonly string[] => {
    const opened = whyFork(planned, { force, share: 1 }, units);
    if (typeof opened === 'string') throw new Error(opened);
    return opened.inputs.map(({ path }) => path);
  };
  expect(paths('springs').join()).toMatch(/springs\.fork\.rate/);
  expect(paths('air').join()).not.toMatch(/springs\.fork\.rate/);
  expect(paths('air').join()).toMatch(/fork\.air\.gap/);
});

test('where the front is no fork, or there is no air, a sentence says so', () => {
  const airless = planJob(tourerWith(['machine.front.fork.air', 'none']));
  if (!airless.ok) throw new Error('not planned');
  expect(whyFork(airless, { force: 'airQuick', share: 1 }, units)).toMatch(/no air/);
});
