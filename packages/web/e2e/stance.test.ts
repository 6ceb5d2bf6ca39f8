import type { Page } from '@playwright/test';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Desk, exampleText, openDesk, openText, planned, savedText, visit } from './page.ts';
import { jobOf } from './terminal.ts';

let desk: Desk;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());

/** The job in which the stance matters, its first load chosen and the sheet open. */
async function stanceOpen(example = 'on-tiptoe', load = /^errands/) {
  const visited = await visit(desk);
  await openText(visited.page, exampleText(example));
  await visited.page.getByRole('button', { name: load }).first().click();
  await visited.page.getByRole('button', { name: 'How it stands' }).click();
  await visited.page.locator('.stance-row').first().waitFor();
  return visited;
}

function row(page: Page, name: RegExp) {
  return page.locator('.stance-row').filter({ hasText: name });
}

/** A figure of a row in its own unit: "684 ± 6 mm". */
async function figure(page: Page, name: RegExp, of: string): Promise<number> {
  const key = row(page, name).getByRole('button', { name: new RegExp(`, ${of} `) });
  return Number.parseFloat((await key.locator('b').textContent())!);
}

test('the seat is told first, as found against planned; its change opens up without what both share', async () => {
  const { context, page, errors } = await stanceOpen();
  expect(await page.locator('.stance-row').first().textContent()).toMatch(/^Seat height/);
  const change = await figure(page, /^Seat height/, 'change');
  const [was, now] = [
    await figure(page, /^Seat height/, 'as found'),
    await figure(page, /^Seat height/, 'planned'),
  ];
  // Each is rounded to whole millimetres.
  expect(Math.abs(now - was - change)).toBeLessThanOrEqual(1);
  await row(page, /^Seat height/)
    .getByRole('button', { name: /, change / })
    .click();
  await page.locator('.why-value').waitFor();
  expect(await page.locator('.why-shares').textContent()).not.toMatch(/how far forward the seat is/i);
  expect(errors).toEqual([]);
  await context.close();
});

test('what keeps the attitude goes into the plan by its key, and as found comes back', async () => {
  const { context, page, errors } = await stanceOpen('two-and-a-box', /^to the slip and back/);
  const rake = () => figure(page, /^Rake/, 'planned');
  const [found, before] = [await figure(page, /^Rake/, 'as found'), await rake()];
  expect(before).not.toBe(found);
  await page
    .getByRole('button', { name: /^Plan it: rear shocks/ })
    .first()
    .click();
  await planned(page);
  await expect.poll(rake).toBeCloseTo(found, 1);
  const job = jobOf(await savedText(page));
  expect(job.choice).toMatchObject({ shockLength: { unit: 'mm' } });
  await page.getByRole('button', { name: 'How it stands' }).click();
  await page.getByRole('button', { name: 'As found again' }).click();
  await planned(page);
  await expect.poll(rake).toBe(before);
  expect(errors).toEqual([]);
  await context.close();
});

test('a figure that is needed leads to where it is added, and is told from then on', async () => {
  const { context, page, errors } = await stanceOpen('two-and-a-box', /^to the slip and back/);
  await page
    .locator('.stance-needed li')
    .filter({ hasText: 'Lean on the side stand' })
    .getByRole('button', { name: 'Add figure' })
    .click();
  await page.locator('[id="new-point.kind"] select').selectOption('side stand');
  for (const [field, value] of [
    ['x', '620'],
    ['height', '95'],
    ['sideways', '300'],
  ] as const) {
    await page.locator(`[id="new-point.${field}"] [data-field-face]`).click();
    await page.keyboard.type(value);
    await page.keyboard.press('Enter');
  }
  await page.getByRole('button', { name: 'Add it' }).click();
  await planned(page);
  await page.getByRole('button', { name: 'How it stands' }).click();
  // atan(95/300) is 17.6°; springs and tyres give.
  await expect.poll(() => figure(page, /^Lean on/, 'as found')).toBeGreaterThan(4);
  expect(await figure(page, /^Lean on/, 'as found')).toBeLessThan(17.6);
  expect(errors).toEqual([]);
  await context.close();
});

test('another tyre by its size is compared, and braking is looked at on asking', async () => {
  const { context, page, errors } = await stanceOpen();
  const size = page.locator('[id="choice.frontTyre"]');
  await size.locator('[data-field-face]').click();
  await page.keyboard.type('MT90');
  await page.keyboard.press('Enter');
  await page.getByText(/^Is no metric tyre size/).waitFor();
  await page.keyboard.press('Control+a');
  await page.keyboard.type('120/70-17');
  await page.keyboard.press('Enter');
  await planned(page);
  // 130/80-17 is 640 mm across, 120/70-17 600: 20 mm less of radius.
  await page.getByText(/130\/80-17 is 320 mm.*120\/70-17 300 mm: 20 mm less/).waitFor();
  await page.getByRole('button', { name: 'Leave braking out' }).click();
  await page.getByRole('button', { name: 'Look at braking' }).click();
  await planned(page);
  await page.getByText(/^front goes in by [\d.]+ ± [\d.]+ mm/).waitFor();
  expect(errors).toEqual([]);
  await context.close();
});
