/** What the page shows equals what the terminal says of the same file, figure by figure. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import { readJob } from '@sagwright/records/read';
import { formatValueNumber } from '@sagwright/workbench/format/format';
import { type Units, unitsFor } from '@sagwright/workbench/format/units';
import type { PlanDocument } from '@sagwright/workbench/result/document';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Desk, exampleText, openDesk, visit } from './page.ts';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const names = readdirSync(join(root, 'examples'))
  .filter((name) => name.endsWith('.json'))
  .map((name) => name.slice(0, -'.json'.length));

let desk: Desk;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());

/** The terminal's plan of a job's text. Its exit code tells of fits and refusals; the plan is on its output all the same. */
function planOf(text: string): PlanDocument {
  const file = join(mkdtempSync(join(tmpdir(), 'sagwright-')), 'job.json');
  writeFileSync(file, text);
  const program = join(root, 'packages/cli/dist/main.js');
  try {
    return JSON.parse(
      execFileSync(process.execPath, [program, 'plan', file, '--json'], { encoding: 'utf8' }),
    );
  } catch (error) {
    const { stdout } = error as { stdout?: string };
    if (stdout === undefined || stdout === '') throw error;
    return JSON.parse(stdout) as PlanDocument;
  }
}

function unitsOf(text: string): Units {
  const read = readJob(text);
  if (!read.ok) throw new Error('the example is broken');
  return unitsFor('typed', read.job, '.');
}

async function openText(page: Page, name: string, text: string): Promise<void> {
  await page.getByRole('button', { name: 'Jobs' }).click();
  await page
    .locator('input[type=file]')
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
  const { name: job } = JSON.parse(text) as { name: string };
  await expect.poll(() => page.locator('h1').textContent()).toBe(job);
  await page.locator('.broken-file, .jobs-sheet').first().waitFor({ state: 'detached' });
  await page.locator('main[aria-busy="false"] .ladder .spoken li').first().waitFor({ state: 'attached' });
}

describe.each(names)('%s', (name) => {
  test('sags as found and the settings of every spring', async () => {
    const text = exampleText(name);
    const plan = planOf(text);
    const units = unitsOf(text);
    const { context, page, errors } = await visit(desk);
    await openText(page, `${name}.json`, text);
    for (const end of ['rear', 'front'] as const) {
      const said = await page
        .locator('.ladder')
        .nth(end === 'rear' ? 0 : 1)
        .locator('.spoken li')
        .allTextContents();
      const standings = [plan.alone, ...plan.loadCases.map(({ asFound }) => asFound)];
      expect(said).toHaveLength(standings.length);
      standings.forEach((standing, i) => {
        if (standing.kind !== 'rest') throw new Error(`${name}: ${standing.kind}`);
        expect(said[i]).toContain(`rests at ${formatValueNumber(standing[end].travel, 'length', units)} of`);
      });
    }
    await page.locator('.tab-index-tab').nth(1).click();
    await page.locator('.choose-answer').waitFor();
    for (const end of ['rear', 'front'] as const) {
      await page.getByRole('button', { name: end === 'rear' ? /^Rear springs/ : /^Fork springs/ }).click();
      const rows = page.locator('.spring-row');
      await expect.poll(() => rows.count()).toBe(plan[end].springs.length);
      const { suggestion } = plan[end];
      const suggested = await rows.filter({ hasText: 'suggested' }).locator('h3').allTextContents();
      const wanted = plan[end].springs.filter(
        ({ id }) => suggestion.kind === 'spring' && id === suggestion.spring,
      );
      expect(suggested).toEqual(wanted.map((spring) => spring.name));
      for (const [i, spring] of plan[end].springs.entries()) {
        const row = rows.nth(i);
        expect(await row.locator('h3').textContent()).toBe(spring.name);
        const more = row.getByRole('button', { name: `More about ${spring.name}` });
        if ((await more.count()) > 0) await more.first().click();
        const set = spring.cells.filter((cell) => cell.kind === 'planned');
        const rests = await row.locator('td[data-what="rests"]').allTextContents();
        expect(rests).toHaveLength(set.some(({ set: { sag } }) => sag !== null) ? set.length : 0);
        for (const [n, cell] of set.entries()) {
          if (cell.set.sag === null) continue;
          expect(rests[n]).toContain(formatValueNumber(cell.set.sag.travel, 'length', units));
        }
      }
    }
    expect(errors).toEqual([]);
    await context.close();
  });
});

test('a spring picked on the page is a choice, and the page then stands as the terminal says of that file', async () => {
  const { context, page } = await visit(desk);
  await page.locator('.tab-index-tab').nth(1).click();
  const row = page.locator('.spring-row').filter({ has: page.getByRole('heading', { name: 'Larch' }) });
  await row.getByRole('button', { name: 'More about Larch' }).click();
  await row.getByRole('button', { name: 'Plan this one' }).click();
  await row.getByRole('button', { name: 'Back to what is suggested' }).waitFor();
  const job = JSON.parse(exampleText('two-and-a-box')) as { springs: Record<string, { name: string }> };
  const [larch] = Object.entries(job.springs).find(([, { name }]) => name === 'Larch')!;
  const text = JSON.stringify({ ...job, choice: { rear: larch } });
  const plan = planOf(text);
  const units = unitsOf(text);
  await page.locator('.tab-index-tab').nth(0).click();
  await page.getByRole('group', { name: 'Loads' }).getByRole('button').nth(1).click();
  await page.getByRole('button', { name: 'planned', exact: true }).click();
  for (const [i, planned] of plan.planned.entries()) {
    if (planned.standing.kind !== 'rest') throw new Error('it does not stand');
    const figure = formatValueNumber(planned.standing.rear.travel, 'length', units);
    await expect
      .poll(async () => (await page.locator('.ladder').nth(0).locator('.spoken li').allTextContents())[i + 1])
      .toContain(`rests at ${figure} of`);
  }
  await page.getByRole('button', { name: /^Undo/ }).click();
  await page.locator('.tab-index-tab').nth(1).click();
  await expect.poll(() => page.locator('.spring-row[data-planned] h3').allTextContents()).toEqual(['Ash']);
  await context.close();
});
