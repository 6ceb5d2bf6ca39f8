import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { jobJsonSchema } from './jsonSchema.ts';
import { readJob } from './read.ts';

const page = readFileSync(new URL('../../../docs/job-file.md', import.meta.url), 'utf8');
const examples = [...page.matchAll(/```json\n([\s\S]*?)```/g)].map((match) => match[1]!);

describe('docs/job-file.md', () => {
  test('shows only jobs that are read without a problem', () => {
    expect(examples).toHaveLength(2);
    for (const example of examples) expect(readJob(example)).toMatchObject({ ok: true });
  });

  test('names every field and every word of the schema', () => {
    const words = new Set<string>();
    collectWords(JSON.parse(jobJsonSchema()), words);
    expect(words.size).toBeGreaterThan(150);
    expect([...words].filter((word) => !page.includes(`\`${word}\``) && !page.includes(`"${word}"`))).toEqual(
      [],
    );
  });
});

/** Names of fields and words that are allowed as values, units included. */
function collectWords(schema: unknown, words: Set<string>): void {
  if (typeof schema !== 'object' || schema === null) return;
  for (const [name, part] of Object.entries(schema)) {
    if (name === 'properties') for (const field of Object.keys(part as object)) words.add(field);
    if (name === 'const') words.add(String(part));
    if (name === 'enum') for (const word of part as unknown[]) words.add(String(word));
    collectWords(part, words);
  }
}
