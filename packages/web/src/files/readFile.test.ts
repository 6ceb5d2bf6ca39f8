import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { withEdits } from '../job/edits.ts';
import { broken as words } from '../words/files.ts';
import { type BrokenRead, readFile } from './readFile.ts';

const demo = readFileSync(new URL('../../../../examples/two-and-a-box.json', import.meta.url), 'utf8');

function brokenRead(text: string): BrokenRead {
  const read = readFile(text);
  if (read.kind !== 'broken') throw new Error('it was read');
  return read;
}

test('a good file is a job', () => {
  const read = readFile(demo);
  expect(read.kind === 'job' && read.job.machine.name).toBe('the slate tourer');
});

test('a template is a template, and one with a problem no job', () => {
  const url = new URL('../../../../examples/templates/air-shock.json', import.meta.url);
  const text = readFileSync(url, 'utf8');
  expect(readFile(text)).toMatchObject({ kind: 'template', template: { kind: 'shock' } });
  expect(brokenRead(text.replace('"shock"', '"engine"')).verdict).toBe('no job');
});

test('a file with a field that nobody knows tells its place and shows its rest', () => {
  const read = brokenRead(demo.replace('"version": 1,', '"version": 1, "colour": "red",'));
  expect(read.verdict).toBe('problems');
  expect(read.problems.map(({ path }) => path)).toEqual(['colour']);
  expect(read.rest?.machine).toBe('the slate tourer');
  expect(read.rest?.loads).toHaveLength(5);
});

function changed(path: readonly string[], value: unknown): string {
  return JSON.stringify(withEdits(JSON.parse(demo), [{ path, before: undefined, after: value }]));
}

test.each([
  ['a figure out of bounds', ['machine', 'wheelbase', 'value'], 1.6],
  ['a figure left out', ['machine', 'weighing', 'rear'], undefined],
  ['a setting past its end', ['setups', 'asFound', 'rear', 'left', 'at', 'reading', 'value'], 300],
  ['a figure that is none', ['machine', 'wheelbase', 'value'], null],
  ['half a figure', ['machine', 'wheelbase', 'value'], undefined],
  ['a figure without its unit', ['machine', 'wheelbase'], 1600],
  ['a unit of something else', ['machine', 'wheelbase', 'unit'], 'kg'],
  ['a ± of something else', ['machine', 'weighing', 'rear', 'plusMinus'], { value: 1, unit: 'mm' }],
])('%s is mended on the page', (_, path, value) => {
  const text = changed(path, value);
  expect(brokenRead(text).mendable).toEqual(JSON.parse(text));
});

test.each([
  ['a field that the page does not have', ['machine', 'colour'], 'red'],
  ['a name that is a number', ['machine', 'name'], 12],
  ['a part left out that others hang on', ['machine', 'rear', 'shock'], undefined],
  ['shares of more than the whole', ['loadCases', 'slip', 'share'], 90],
])('%s is mended in the file, not on the page', (_, path, value) => {
  expect(brokenRead(changed(path, value)).mendable).toBeNull();
});

test('a file with a field twice is not mended on the page, where one of the two would be lost', () => {
  const read = brokenRead(demo.replace('"name": "the slate tourer"', '"name": "one", "name": "two"'));
  expect(read.problems.map(({ path }) => path)).toEqual(['machine.name']);
  expect(read.mendable).toBeNull();
});

test.each([
  ['a newer version', demo.replace('"version": 1,', '"version": 7,'), 'newer version', 'version'],
  ['noise', 'x'.repeat(1_000_000), 'unreadable', ''],
  ['a job broken off', demo.slice(0, 5000), 'unreadable', ''],
  ['five million characters', ' '.repeat(4_999_999).concat('1'), 'unreadable', ''],
  ['a list', '[1, 2]', 'no job', ''],
  ['a document of another kind', '{"format": "recipe"}', 'no job', 'format'],
] as const)('%s has one clear message and nothing to mend', (_, text, verdict, path) => {
  const read = brokenRead(text);
  expect(read.verdict).toBe(verdict);
  expect(read.problems.map((problem) => problem.path)).toEqual([path]);
  expect(read.mendable).toBeNull();
});

test.each(['', ' \n', '\uFEFF'])('an empty file is called empty (%j)', (text) => {
  expect(brokenRead(text).problems).toEqual([{ path: '', message: words.empty }]);
});

test('a file of a newer version changes nothing, and still says whose it is', () => {
  const { verdict, rest } = brokenRead(demo.replace('"version": 1,', '"version": 7,'));
  expect(words.title[verdict]('mine.json')).toBe('File from a newer version; nothing changed.');
  expect(rest?.machine).toBe('the slate tourer');
});
