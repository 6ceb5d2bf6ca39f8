/**
 * The jobs in examples/, whole: each is read, planned, compared with the plan that is committed beside it, and with what
 * its story tells. A committed plan is no truth: it is there so that a change of any figure shows as a diff to be read.
 * After reading it: npm run examples:accept.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { readJob } from '@sagwright/records/read';
import type { JobDocument } from '@sagwright/records/schema';
import { writeJob } from '@sagwright/records/write';
import { planJob } from '@sagwright/workbench/path';
import type { PlanDocument } from '@sagwright/workbench/result/document';
import { resultJson } from '@sagwright/workbench/result/result';
import { describe, expect, test } from 'vitest';
import { reachPicture } from '../scripts/reachPicture.ts';
import { planText } from './examples/planText.ts';
import { storyRows, verdictOf } from './examples/story.ts';

const folder = new URL('../examples/', import.meta.url);
const names = namesIn('.', '.json');

test('every job has its story, and no story and no plan is left without its job', () => {
  expect(names.length).toBeGreaterThanOrEqual(8);
  expect(namesIn('.', '.md').filter((name) => name !== 'README')).toEqual(names);
  expect(namesIn('plans', '.json').filter((name) => !names.includes(name))).toEqual([]);
});

describe.each(names)('%s', (name) => {
  const text = readFileSync(new URL(`${name}.json`, folder), 'utf8');
  const story = readFileSync(new URL(`${name}.md`, folder), 'utf8');

  test('what was typed comes back as typed', () => {
    const written = writeJob(jobOf(text));
    expect(JSON.parse(written)).toEqual(JSON.parse(text));
    expect(writeJob(jobOf(written))).toBe(written);
  });

  test('gives the plan that was accepted', async () => {
    await expect(planText(planOf(text))).toMatchFileSnapshot(`../examples/plans/${name}.json`);
  });

  test('refuses what is over a limit, and passes no limit that is not known', () => {
    for (const { refused, limits } of planOf(text).loadCases) {
      expect(refused).toBe(limits.some(({ verdict }) => verdict === 'over'));
      for (const { of, allowed, verdict } of limits) {
        // A tyre's figure is known at best where nobody knows that its air is enough.
        const isTyre = of.kind === 'rear tyre' || of.kind === 'front tyre';
        if (allowed === null) expect(verdict).toBe('not checked');
        else if (!isTyre) expect(verdict).not.toBe('not checked');
      }
    }
  });

  test('set where the plan says, the wheel rests in the band that was wanted', () => {
    const reached = planned(planOf(text)).filter(({ cell }) => cell.reach.kind === 'reached');
    expect(reached.length).toBeGreaterThan(0);
    for (const { cell } of reached) {
      const rests = cell.set.sag?.travel.value;
      expect(rests).toBeGreaterThan(cell.wanted.low);
      expect(rests).toBeLessThan(cell.wanted.high);
    }
  });

  test('its story says that it is invented and tells what the plan says', () => {
    expect(story).toMatch(/^# .+\n\n\*Invented: /);
    const rows = storyRows(story);
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) expect(row).toEqual({ ...row, ...verdictOf(planOf(text), row) });
  });
});

test("the README's picture is drawn from the demo's plan", async () => {
  const demo = readFileSync(new URL('two-and-a-box.json', folder), 'utf8');
  await expect(reachPicture(planOf(demo))).toMatchFileSnapshot('../docs/pictures/two-and-a-box.svg');
});

function jobOf(text: string): JobDocument {
  const read = readJob(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.job;
}

function planOf(text: string): PlanDocument {
  const plan = planJob(jobOf(text));
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
  return resultJson(plan);
}

function planned({ rear, front }: PlanDocument) {
  return [rear, front].flatMap(({ springs }) =>
    springs.flatMap(({ cells }) => cells.flatMap((cell) => (cell.kind === 'planned' ? [{ cell }] : []))),
  );
}

function namesIn(path: string, ending: string): readonly string[] {
  return readdirSync(new URL(path, folder))
    .filter((file) => file.endsWith(ending))
    .map((file) => file.slice(0, -ending.length))
    .sort();
}
