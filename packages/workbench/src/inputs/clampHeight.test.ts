import { withClampHeight } from '@sagwright/model/attitude/otherGeometry';
import { describe, expect, test } from 'vitest';
import { type JobPlan, planJob } from '../path.ts';
import { type Change, tourerWith } from '../testing/tourerJob.ts';

const mm = (value: number, plusMinus = 0.5): object => ({
  value,
  unit: 'mm',
  plusMinus: { value: plusMinus, unit: 'mm' },
});
const CLAMP = 'machine.front.fork.clampHeight';

describe('Fork tubes in their clamps', () => {
  test('that stand as when the machine was measured, or nobody knows, change nothing', () => {
    const { machine } = planned().inputs.question;
    expect(planned([CLAMP, { now: mm(12) }]).inputs.question.machine).toEqual(machine);
    const same = planned([CLAMP, { now: mm(12), whenMeasured: mm(12) }]).inputs.question.machine;
    expect(same).toEqual(machine);
  });

  test('raised since then put the axle higher in the body, as the model’s own change does', () => {
    const raised = planned([CLAMP, { now: mm(20), whenMeasured: mm(8) }]).inputs.question.machine;
    const { front } = withClampHeight(planned().inputs.question.machine, 0.012);
    expect(raised.front.referenceTravel).toBeCloseTo(front.referenceTravel, 15);
  });

  test('lower the front and steepen the rake by about what they were raised over the wheelbase', () => {
    const [before, after] = [planned(), planned([CLAMP, { now: mm(20), whenMeasured: mm(10) }])];
    const steeper = rakeOf(before) - rakeOf(after);
    // Level machine on equal tyres: 10 mm · cos 27° over 1625 mm; the body is weighed anew, and springs and tyres give a little more.
    expect(steeper / Math.atan((0.01 * Math.cos((27 * Math.PI) / 180)) / 1.625)).toBeCloseTo(1, 1);
  });

  test('carry their ± to the rake', () => {
    const width = (plusMinus: number): number =>
      attitudeWidth(planned([CLAMP, { now: mm(20, plusMinus), whenMeasured: mm(20, 0) }]));
    expect(width(5)).toBeGreaterThan(width(0));
  });
});

function planned(...changes: readonly Change[]): JobPlan {
  const answer = planJob(tourerWith(...changes));
  if (!answer.ok) throw new Error(answer.problems.map(({ message }) => message).join('\n'));
  return answer;
}

function rakeOf({ plan }: JobPlan): number {
  const { attitude } = plan.alone;
  if (attitude === null) throw new Error('no rest');
  return attitude.rake;
}

/** Sum of squares that the clamp height adds to what the machine's inputs move. */
function attitudeWidth({ inputs }: JobPlan): number {
  return inputs.question.inputs
    .filter(({ name }) => name.startsWith(CLAMP))
    .flatMap(({ deviation, moves }) => moves.map(({ by }) => (deviation * by) ** 2))
    .reduce((sum, each) => sum + each, 0);
}
