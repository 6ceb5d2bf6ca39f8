import { describe, expect, test } from 'vitest';
import { type JobPlan, planJob } from '../path.ts';
import { type Change, tourerWith } from '../testing/tourerJob.ts';

const mm = (value: number): object => ({ value, unit: 'mm' });
const FRONT = 'machine.front';

/** Two springs of 10.5 N/mm with 20 mm of preload, 117 mm of stroke, no air. */
const strut: readonly Change[] = [
  [`${FRONT}.fork`, { stroke: mm(117), rubber: 'none', topOut: 'none', friction: { value: 70, unit: 'N' } }],
  ['setups.asFound.front', { both: { spring: 'fork', at: { preload: mm(20) } } }],
];

describe('A front that is no telescopic fork', () => {
  test('of one ratio is the same told as leverage, as motion ratio and as a straight table', () => {
    const motion = planned(...strut, [
      `${FRONT}.travel`,
      { kind: 'motion', ratio: { value: 0.8, unit: 'shock/wheel' } },
    ]);
    const leverage = planned(...strut, [
      `${FRONT}.travel`,
      { kind: 'leverage', ratio: { value: 1.25, unit: 'wheel/shock' } },
    ]);
    const rows = [0, 50, 100, 146.25].map((wheel) => ({ wheel: mm(wheel), shock: mm(400 - 0.8 * wheel) }));
    const table = planned(...strut, [`${FRONT}.travel`, { kind: 'table', rows }]);
    expect(frontTravel(leverage)).toBeCloseTo(frontTravel(motion), 12);
    expect(frontTravel(table)).toBeCloseTo(frontTravel(motion), 9);
  });

  test('told by its force at the wheel stands where the same springs at the same ratio do', () => {
    const ratio = planned(...strut, [
      `${FRONT}.travel`,
      { kind: 'motion', ratio: { value: 0.8, unit: 'shock/wheel' } },
    ]);
    // At the wheel: two springs of 10.5 N/mm at 0.8, F = 2 · 10.5 · 0.8 · (20 + 0.8 z).
    const rows = [0, 40, 100, 146.25].map((wheel) => ({
      wheel: mm(wheel),
      force: { value: 2 * 10.5 * 0.8 * (20 + 0.8 * wheel), unit: 'N' },
    }));
    // Friction along the springs is worth its share of the ratio at the wheel.
    const force = planned(
      [`${FRONT}.fork`, { friction: { value: 70 * 0.8, unit: 'N' } }],
      ['setups.asFound.front', undefined],
      [`${FRONT}.travel`, { kind: 'force', rows }],
    );
    expect(frontTravel(force)).toBeCloseTo(frontTravel(ratio), 9);
    expect(band(force).least).toBeCloseTo(band(ratio).least, 9);
  });

  test('says that its axle is taken to move straight, and has no forces in a fork to tell', () => {
    const { inputs } = planned(...strut, [
      `${FRONT}.travel`,
      { kind: 'motion', ratio: { value: 0.8, unit: 'shock/wheel' } },
    ]);
    expect(inputs.notes).toContainEqual({ code: 'front path straight', path: `${FRONT}.travel` });
    expect(inputs.question.machine.front.axlePath).toEqual({ kind: 'straight' });
  });

  test('whose springs never make their stroke is told so', () => {
    const rows = [0, 20, 40].map((wheel) => ({ wheel: mm(wheel), shock: mm(400 - 0.8 * wheel) }));
    const answer = planJob(tourerWith(...strut, [`${FRONT}.travel`, { kind: 'table', rows }]));
    expect(answer.ok ? [] : answer.problems.map(({ path }) => path)).toEqual([`${FRONT}.travel`]);
  });
});

function planned(...changes: readonly Change[]): JobPlan {
  const answer = planJob(tourerWith(...changes));
  if (!answer.ok) throw new Error(answer.problems.map(({ message }) => message).join('\n'));
  return answer;
}

function frontTravel({ plan }: JobPlan): number {
  const { answer } = plan.alone;
  if (answer.kind !== 'rest') throw new Error(answer.kind);
  return answer.rest.front.travel;
}

function band({ plan }: JobPlan): { readonly least: number; readonly most: number } {
  const { band: both } = plan.alone;
  if (both === null) throw new Error('no band');
  return both.front;
}
