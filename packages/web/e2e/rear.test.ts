import type { Page } from '@playwright/test';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Desk, exampleText, openDesk, openText, visit } from './page.ts';
import { jobOf, planOf } from './terminal.ts';

let desk: Desk;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());

/** The machine's own figures of the rear. */
async function rearOpen(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'This machine' }).click();
  await page.locator('.figures-groups').getByRole('button', { name: 'Rear' }).click();
  await page.locator('.ratio-plot svg').waitFor();
}

/** A drawing's table as its rows' cells, the row's name first. */
async function tableOf(page: Page, of: RegExp): Promise<readonly (readonly string[])[]> {
  const table = page.locator('details.as-table').filter({ hasText: of });
  await table.locator('summary').click();
  return table
    .locator('tbody tr')
    .evaluateAll((rows) => rows.map((row) => [...row.children].map((cell) => cell.textContent ?? '')));
}

test('the curve goes through what the terminal tells, and marks where every load rests', async () => {
  const { context, page, errors } = await visit(desk);
  const text = exampleText('taped-linkage');
  await openText(page, text);
  await rearOpen(page);
  const { along, rests } = planOf(text).rearMotion;
  const rows = await tableOf(page, /how the rear moves/);
  expect(rows).toHaveLength(along.length + rests.length);
  for (const { travel, motionRatio } of [...along, ...rests]) {
    const row = rows.find(([, at]) => Math.abs(Number(at) - 1000 * travel) <= 0.06);
    expect(Number.parseFloat(row![2]!)).toBeCloseTo(motionRatio.value, 1);
  }
  expect(await page.locator('.ratio-rest').count()).toBe(rests.length);
  for (const { name } of Object.values(jobOf(text).loadCases))
    expect(rows.some(([row]) => row!.includes(name))).toBe(true);
  expect(errors).toEqual([]);
  await context.close();
});

test('the parts stand where the chosen load rests, and another load moves them', async () => {
  const { context, page, errors } = await visit(desk);
  await openText(page, exampleText('taped-linkage'));
  await rearOpen(page);
  const stands = page.locator('.parts-stands');
  expect(await stands.textContent()).toMatch(/fully out.*full bump/);
  const axle = () => page.locator('.parts-plot [data-bar="arm"][data-stand="0"]').getAttribute('d');
  const loads = page.getByRole('group', { name: 'Loads' });
  await loads.getByRole('button', { name: /alone/i }).click();
  await expect.poll(() => stands.textContent()).toContain('nothing aboard');
  const before = await axle();
  await loads.getByRole('button', { name: /^over and back/ }).click();
  await expect.poll(() => stands.textContent()).toContain('over and back');
  expect(await axle()).not.toBe(before);
  expect(errors).toEqual([]);
  await context.close();
});

test('a rear known by its ratio has its curve and no parts', async () => {
  const { context, page, errors } = await visit(desk);
  await openText(page, exampleText('nose-down'));
  await rearOpen(page);
  expect(await page.locator('.parts-plot').count()).toBe(0);
  expect(await page.locator('.ratio-plot .spoken').textContent()).toMatch(/Motion ratio .* at full bump/);
  expect(errors).toEqual([]);
  await context.close();
});
