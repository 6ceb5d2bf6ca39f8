import type { KinematicsSI } from '@sagwright/model/rear/kinematics';
import { describe, expect, test } from 'vitest';
import { planJob } from '../path.ts';
import { tourerWith } from '../testing/tourerJob.ts';

const mm = (value: number): object => ({ value, unit: 'mm' });
const TRAVEL = 'machine.rear.travel';

/** The shock shortens by 0.80 of the first 20 mm that the wheel rises, and by 0.85 of each 20 mm after. */
const taped: readonly (readonly [number, number])[] = [
  [0, 320],
  [20, 304],
  [40, 287],
  [60, 270],
  [80, 253],
];

function points(pairs: readonly (readonly [number, number])[]): object {
  const list = pairs.map(([wheel, shock], order) => [
    `p${order}`,
    { order, wheel: mm(wheel), shock: mm(shock) },
  ]);
  return { kind: 'taped', points: Object.fromEntries(list) };
}

function kinematicsOf(pairs: readonly (readonly [number, number])[]): KinematicsSI {
  const planned = planJob(tourerWith([TRAVEL, points(pairs)]));
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join('\n'));
  return planned.inputs.question.machine.rear.kinematics;
}

describe('Taped points', () => {
  test('say the same in whatever order they were taped', () => {
    expect(kinematicsOf([...taped].reverse())).toEqual(kinematicsOf(taped));
    const [first, ...rest] = taped;
    expect(kinematicsOf([...rest, first!])).toEqual(kinematicsOf(taped));
  });

  test('may end where they began: that height is taped twice, and welcome', () => {
    const ended = kinematicsOf([...taped, [0, 320.5]]);
    if (ended.kind !== 'quadratic') throw new Error('taped points are fitted');
    // The ratio at the start of a parabola near chords of 0.80 and 0.85; the last reading, half a millimetre longer, steepens it.
    expect(ended.slope).toBeGreaterThan(0.79);
    expect(ended.slope).toBeLessThan(0.86);
  });
});
