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
