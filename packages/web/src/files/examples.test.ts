import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { examples } from '../words/files.ts';

const folder = new URL('../../../../examples/', import.meta.url);

test('every example is among the jobs, under the title of its story', () => {
  const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
  const titles = files.map((file) => {
    const story = readFileSync(new URL(file.replace('.json', '.md'), folder), 'utf8');
    return [file.replace('.json', ''), story.split('\n')[0]!.replace('# ', '')];
  });
  expect(examples.map(([name, title]) => [name, title]).sort()).toEqual(titles.sort());
});
