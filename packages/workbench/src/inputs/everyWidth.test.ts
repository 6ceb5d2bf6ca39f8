import { readdirSync, readFileSync } from 'node:fs';
import { parseJob } from '@sagwright/records/read';
import { test } from 'vitest';
import { planJob } from '../path.ts';
import { resultJson } from '../result/result.ts';
import { setField } from '../testing/setField.ts';

const folder = new URL('../../../../examples/', import.meta.url);

function quantities(value: unknown, path: string): readonly (readonly [string, { value: number; unit: string }])[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('value' in value && 'unit' in value) return [[path, value as never]];
  return Object.entries(value).flatMap(([name, inner]) => quantities(inner, path === '' ? name : `${path}.${name}`));
}

test('x', () => {
  const t0 = Date.now();
  const dropped = new Map<string, string[]>();
  for (const name of readdirSync(folder).filter((each) => each.endsWith('.json'))) {
    const text = readFileSync(new URL(name, folder), 'utf8');
    const told = (path: string, q: { value: number; unit: string }, wide: number): string => {
      const data = JSON.parse(text);
      const width = q.value === 0 ? { value: wide / 10, unit: q.unit } : { value: wide, unit: '%' };
      setField(data, [...path.split('.'), 'plusMinus'], width);
      const read = parseJob(data);
      if (!read.ok) return `${read.problems[0]!.message}`;
      const planned = planJob(read.job);
      if (!planned.ok) return `${planned.problems[0]!.message}`;
      const { assumptions: _, ...rest } = resultJson(planned);
      return JSON.stringify(rest);
    };
    const all = quantities(JSON.parse(text), '');
    for (const [path, q] of all) {
      const [a, b] = [told(path, q, 2), told(path, q, 9)];
      if (!a.startsWith('{')) console.log(name, path, a);
      if (a === b) dropped.set(path, [...(dropped.get(path) ?? []), name]);
    }
    console.log(name, all.length, Date.now() - t0);
  }
  console.log([...dropped].map(([p, n]) => `${p}  ${n.join(' ')}`).join('\n'));
}, 900000);
