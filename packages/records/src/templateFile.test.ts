import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readTemplate } from './readTemplate.ts';
import { template } from './schema/template.ts';
import { neverKept } from './template/leftOut.ts';
import { writeTemplate } from './writeTemplate.ts';

const root = new URL('../../../', import.meta.url);
const page = readFileSync(new URL('docs/template-file.md', root), 'utf8');

describe('docs/template-file.md', () => {
  test('shows only templates that are read without a problem', () => {
    const examples = [...page.matchAll(/```json\n([\s\S]*?)```/g)].map((match) => match[1]!);
    expect(examples).toHaveLength(1);
    for (const example of examples) expect(readTemplate(example)).toMatchObject({ ok: true });
  });

  test('names every field of a template, and all that is left out', () => {
    const fields = template.def.options.flatMap((option) => Object.keys(option.def.shape));
    const leftOut = Object.keys(neverKept).map(
      (path) =>
        path
          .replace(/^setups\..*/, 'setups')
          .split('.')
          .at(-1)!,
    );
    const words = [...fields, ...leftOut.filter((word) => word !== '*')];
    expect(words.length).toBeGreaterThan(30);
    expect(words.filter((word) => !page.includes(`\`${word}\``))).toEqual([]);
  });
});

describe('The templates that are shipped', () => {
  const folder = new URL('examples/templates/', root);
  const files = readdirSync(folder);

  test('are two machines, two shocks and a fork', () => {
    const kinds = files.map((file) => {
      const read = readTemplate(readFileSync(new URL(file, folder), 'utf8'));
      if (!read.ok) throw new Error(`${file}: ${read.problems[0]!.message}`);
      return read.template.kind;
    });
    expect(kinds.sort()).toEqual(['fork', 'machine', 'machine', 'shock', 'shock']);
  });

  test.each(files)(
    '%s says that it is invented, in its name and its note, and is spelled as it is written',
    (file) => {
      const text = readFileSync(new URL(file, folder), 'utf8');
      const read = readTemplate(text);
      if (!read.ok) throw new Error(read.problems[0]!.message);
      expect(read.template.name).toContain('(invented)');
      expect(read.template.note).toMatch(/^Invented, every figure of it/);
      expect(writeTemplate(read.template)).toBe(text);
    },
  );
});
