import { expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { type JobPlan, planJob } from '../path.ts';
import { type Change, tourerWith } from '../testing/tourerJob.ts';
import { PERSON, payloadOfLoad } from './payload.ts';
import { payloadWords } from './words.ts';

function plan(...changes: readonly Change[]): JobPlan {
  const planned = planJob(tourerWith(...changes));
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join('\n'));
  return planned;
}

const kg = (value: number): object => ({ value, unit: 'kg', origin: 'plate' });

test('what the gross rating leaves goes to people on free seats first, with their ± in hand, and to things', () => {
  const planned = plan();
  const { total, totalPlusMinus } = planned.plan.loadCases[0]!.loadsFullTank!;
  const { left, seats, people } = payloadOfLoad(planned, 'work');
  expect(left?.value).toBeCloseTo(590 - total, 9);
  expect(left?.plusMinus).toBeCloseTo(totalPlusMinus, 9);
  expect({ seats, people }).toEqual({ seats: 1, people: 1 });
  expect(payloadOfLoad(planned, 'both')).toMatchObject({ seats: 0, people: 0 });
  const said = payloadWords(payloadOfLoad(planned, 'work'), unitsFor('metric', planned.job, '.'));
  expect(said).toMatch(
    /^In all .* kg by the gross rating: 1 person of 75.* kg and .* kg of things, where axles/,
  );
});

test('a person counts only where there is room for one within the ±', () => {
  const { total, totalPlusMinus } = plan().plan.loadCases[0]!.loadsFullTank!;
  const leaving = (more: number): number | null =>
    payloadOfLoad(plan(['machine.limits.gross', kg(total + PERSON + more)]), 'work').people;
  expect(leaving(totalPlusMinus + 0.01)).toBe(1);
  expect(leaving(totalPlusMinus - 0.01)).toBe(0);
});

test('a rating that nobody has read leaves nothing that is known; one that is exceeded says by how much', () => {
  const units = unitsFor('metric', plan().job, '.');
  const unread = payloadOfLoad(plan(['machine.limits.gross', undefined]), 'work');
  expect(unread).toMatchObject({ left: null, people: null });
  expect(payloadWords(unread, units)).toMatch(/not checked, figure needed/);
  const over = payloadOfLoad(plan(['machine.limits.gross', kg(420)]), 'work');
  expect(over.left!.value).toBeLessThan(0);
  expect(over.people).toBe(0);
  expect(payloadWords(over, units)).toMatch(/over the gross rating/);
});
