import { expect, test } from 'vitest';
import { write } from '../job/edits.ts';
import { createJobStore, type JobState } from '../job/jobStore.ts';
import { type Beginnings, beginning } from './beginning.ts';

const demo: JobState = { id: 'demo', document: { name: 'demo' }, changes: [] };

/** A job after its name was changed to each of these in turn. */
function named(...names: readonly string[]): JobState {
  const store = createJobStore({ id: 'job-1', document: { name: 'grey' }, changes: [] });
  for (const name of names) store.act('name', (document) => [write(document, ['name'], name)]);
  return store.state();
}

function onShelf(...jobs: readonly JobState[]): Beginnings['shelf'] {
  const kept = jobs.map((job, i) => ({ ...job, kept: `moment ${i}` }));
  return {
    one: async (id) => kept.find((each) => each.id === id) ?? null,
    latest: async () => kept.at(-1) ?? null,
    isPromised: async () => false,
  };
}

test('an empty shelf begins with the demo', async () => {
  const { job, saving } = await beginning({ shelf: onShelf(), left: null, onTable: null, demo });
  expect([job, saving]).toEqual([demo, 'example']);
});

test('a forbidden shelf begins with what the window was left with', async () => {
  const forbidden = () => Promise.reject(new DOMException('no', 'SecurityError'));
  const shelf = { one: forbidden, latest: forbidden, isPromised: forbidden };
  const left = named('blue');
  expect(await beginning({ shelf, left, onTable: null, demo })).toEqual({
    job: left,
    kept: null,
    saving: 'refused',
  });
});

test.each([
  ['none of it arrived', [], 'green', 'keeping', null],
  ['its first act arrived', ['blue'], 'green', 'keeping', 'moment 0'],
  ['all of it arrived', ['blue', 'green'], 'green', 'may be cleared', 'moment 0'],
  [
    'all of it arrived, and another window went on',
    ['blue', 'green', 'red'],
    'red',
    'may be cleared',
    'moment 0',
  ],
  ['another window did something else', ['red'], 'green', 'keeping', null],
] as const)('left with two acts: %s', async (_, names, name, saving, moment) => {
  const left = named('blue', 'green');
  const shelf = onShelf(...(names.length === 0 ? [] : [named(...names)]));
  const begun = await beginning({ shelf, left, onTable: 'job-1', demo });
  expect(begun.job.document).toEqual({ name });
  expect([begun.saving, begun.kept?.kept ?? null]).toEqual([saving, moment]);
});
