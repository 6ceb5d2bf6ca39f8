import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readFile } from './readFile.ts';

const demo = readFileSync(new URL('../../../../examples/two-and-a-box.json', import.meta.url), 'utf8');

test('a good file is a job', () => {
  const opened = readFile('demo.json', demo);
  expect(opened.kind === 'job' && opened.job.machine.name).toBe('the slate tourer');
});

test('a file with a wrong field tells its place, shows its rest, and can be mended on the page', () => {
  const opened = readFile('demo.json', demo.replace('"version": 1,', '"version": 1, "colour": "red",'));
  if (opened.kind !== 'broken') throw new Error('it was read');
  expect(opened.problems.map(({ path }) => path)).toEqual(['colour']);
  expect(opened.rest.machine).toBe('the slate tourer');
  expect(opened.rest.loads).toHaveLength(5);
  expect(opened.mendable).not.toBeNull();
  expect(opened.text).toContain('"colour"');
});

test.each([
  ['a newer version', demo.replace('"version": 1,', '"version": 7,'), 'version'],
  ['noise', 'x'.repeat(1_000_000), ''],
  ['nothing', '', ''],
  ['a list', '[1, 2]', ''],
])('%s has one clear message and nothing to mend', (_, text, path) => {
  const opened = readFile('file.json', text);
  if (opened.kind !== 'broken') throw new Error('it was read');
  expect(opened.problems.map((problem) => problem.path)).toEqual([path]);
  expect(opened.mendable).toBeNull();
});
