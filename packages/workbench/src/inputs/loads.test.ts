import { expect, test } from 'vitest';
import { planJob } from '../path.ts';
import { type Change, tourerWith } from '../testing/tourerJob.ts';

const kg = (value: number): object => ({ value, unit: 'kg' });

function notesOf(...changes: readonly Change[]): readonly string[] {
  const planned = planJob(tourerWith(...changes));
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join('\n'));
  return planned.inputs.notes.map(({ code, path }) => `${code}: ${path}`);
}

test('a load weighed aboard leaves the places’ own limits not checked, which is said', () => {
  const weighed = {
    name: 'weighed',
    order: 9,
    share: 0,
    scales: { front: kg(190), rear: kg(270) },
  };
  expect(notesOf(['loadCases.weighed', weighed])).toContain('places not checked: loadCases.weighed.scales');
  expect(notesOf().join()).not.toContain('places not checked');
});

test('a plate’s ± is told as it is meant, and adds up by its deviation', () => {
  // Rectangular: ±3 kg hold 90 % of a flat band of 3/0.9 = 3.333 kg half-width, whose deviation is 3.333/√3 = 1.925 kg; as one
  // normal spread among others that is ±1.6449 · 1.925 = 3.166 kg.
  const box = { value: 6, unit: 'kg', origin: 'plate', plusMinus: { value: 3, unit: 'kg' } };
  const planned = planJob(
    tourerWith(
      ['things.box.mass', box],
      ['machine.weighing.front', { value: 168, unit: 'kg', origin: 'plate' }],
    ),
  );
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join('\n'));
  const { figures, question } = planned.inputs;
  expect(figures.get('things.box.mass')!.halfWidth).toBe(3);
  expect(figures.get('machine.weighing.front')!.halfWidth).toBe(3);
  const places = question.loadCases.flatMap((loadCase) => loadCase.places);
  const alone = places.filter(({ onIt }) => onIt === 6);
  expect(alone.length).toBeGreaterThan(0);
  for (const { plusMinus } of alone) expect(plusMinus).toBeCloseTo(3.166, 3);
});
