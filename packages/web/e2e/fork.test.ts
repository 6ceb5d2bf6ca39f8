import type { Page } from '@playwright/test';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Desk, exampleText, openDesk, openText, planned, visit } from './page.ts';

let desk: Desk;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());

/** The job with a fork in depth, its front open among the machine's own figures. */
async function frontOpen() {
  const visited = await visit(desk);
  await openText(visited.page, exampleText('nose-down'));
  await visited.page.getByRole('button', { name: 'This machine' }).first().click();
  await visited.page.getByRole('button', { name: 'Front', exact: true }).last().click();
  await visited.page.locator('.force-plot svg').first().waitFor();
  return visited;
}

/** Force of the air at full bump [N], as the table of the drawing has it: "850 ± 160". */
async function airAtFullBump(page: Page): Promise<number> {
  const cell = page.locator('.as-table tbody tr').last().locator('td').nth(2);
  return Number.parseFloat((await cell.textContent())!);
}

test('forces of the fork are drawn, spoken and told as a table; a smaller air gap makes the end harder', async () => {
  const { context, page, errors } = await frontOpen();
  expect(await page.locator('.force-plot .spoken li').first().textContent()).toMatch(
    /^In all: .* fully out, .* plus or minus .* at full bump\.$/,
  );
  await page.getByText('As table: forces in the fork').click();
  await expect.poll(() => page.locator('.as-table tbody tr').count()).toBe(11);
  const before = await airAtFullBump(page);
  await page.locator('[id="machine.front.fork.air.gap"] [data-field-face]').click();
  await page.keyboard.type('82');
  await page.keyboard.press('Enter');
  await planned(page);
  await expect.poll(() => airAtFullBump(page)).toBeGreaterThan(before);
  expect(errors).toEqual([]);
  await context.close();
});

test('a force opens up at a place of the stroke, and a front that is no fork is begun by its ratio', async () => {
  const { context, page, errors } = await frontOpen();
  await page.getByRole('button', { name: /^Place in the stroke: less/ }).click();
  await page.locator('.forces-at li button').nth(1).click();
  await expect.poll(() => page.locator('.why-value').textContent()).toMatch(/^\d+ ± \d+ N$/);
  await page.getByRole('button', { name: 'This machine' }).first().click();
  await page.getByRole('button', { name: 'Front', exact: true }).last().click();
  await page.locator('[id="machine.front.travel.kind"]').locator('select').selectOption('leverage');
  await page.locator('[id="machine.front.travel.ratio"] [data-field-face]').click();
  await page.keyboard.type('1.2');
  await page.keyboard.press('Enter');
  await planned(page);
  expect(await page.locator('[id="machine.front.fork.tubes"]').count()).toBe(0);
  expect(await page.locator('.force-plot').count()).toBe(0);
  expect(errors).toEqual([]);
  await context.close();
});
