import { expect, test } from 'vitest';
import { type JobPlan, planJob } from '../path.ts';
import { type Change, q, tourerWith } from '../testing/tourerJob.ts';
import { standingShown } from '../why/standingShown.ts';
import { ownFigures } from './own.ts';
import { type Posture, postureAt } from './posture.ts';
import { rowsOf } from './stance.ts';

const changes: readonly Change[] = [
  [
    'machine.points',
    {
      clamp: {
        name: 'clamp',
        order: 1,
        kind: 'hard part',
        at: { x: q(300, 'mm'), height: q(220, 'mm') },
        sideways: q(300, 'mm'),
      },
      stand: {
        name: 'stand',
        order: 2,
        kind: 'side stand',
        at: { x: q(600, 'mm'), height: q(100, 'mm') },
        sideways: q(310, 'mm'),
      },
    },
  ],
  ['machine.beam', { drop: q(150, 'mm'), distance: q(10, 'm') }],
  ['machine.rear.tyre.size', '150/80 B 16'],
  ['machine.front.tyre.rate', q(170, 'N/mm')],
];

function plan(...more: readonly Change[]): JobPlan {
  const planned = planJob(tourerWith(...changes, ...more));
  if (!planned.ok) throw new Error(JSON.stringify(planned.problems));
  return planned;
}

function posture(planned: JobPlan): Posture {
  return postureAt(planned, rowsOf(planned), standingShown(planned, 'both', 'asFound')!, ownFigures(planned));
}

const rows = rowsOf(plan());

test.each([
  ['machine.weighing.front', 168, 'kg', 0.1],
  ['machine.rake', 27, 'deg', 0.02],
  ['machine.front.tyre.rate', 170, 'N/mm', 1],
  ['things.owner.mass', null, 'kg', 0.1],
  ['machine.points.clamp.sideways', 300, 'mm', 0.5],
  ['machine.points.stand.at.height', 100, 'mm', 0.5],
  ['machine.beam.drop', 150, 'mm', 1],
])('%s moves each figure, the lean in a bend too, as its slope says', (path, typed, unit, step) => {
  const before = plan();
  const figure = before.inputs.figures.get(path)!;
  const value = typed ?? figure.typed!.value;
  const moved = [1, -1].map((side) => posture(plan([path, q(value + side * step, unit)])).values);
  const toSI = figure.value / value;
  const slopes = posture(before).slopes.get(path)!;
  rows.forEach(({ figure: name }, place) => {
    const [above, below] = moved.map((values) => values[place] ?? 0);
    // Both in the figure's deviation; re-weighed and re-solved jobs, a second-order error of their steps.
    const solved = ((above! - below!) / (2 * step * toSI)) * figure.deviation;
    const slope = slopes[place] ?? 0;
    expect(Math.abs(slope - solved), name).toBeLessThan(0.01 * Math.abs(solved) + 2e-6);
  });
});
