import type { Page } from '@playwright/test';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Desk, exampleText, openDesk, openText, savedText, visit } from './page.ts';
import { jobOf, newJob } from './terminal.ts';

let desk: Desk;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());

/** The demo with its first load chosen: one rider on it, and Linnet ashore. */
async function firstLoad(): Promise<Awaited<ReturnType<typeof visit>>> {
  const visited = await visit(desk);
  await visited.page.getByRole('button', { name: /^to the slip and back/ }).click();
  return visited;
}

async function wholeMass(page: Page): Promise<number> {
  return Number.parseFloat((await page.locator('.side-load').nth(1).textContent()) ?? '');
}

test('what is put on, made heavier, moved and taken off moves the scales as it must', async () => {
  const { context, page, errors } = await firstLoad();
  const alone = await wholeMass(page);
  await page.getByRole('button', { name: 'Put on …' }).click();
  await page.getByRole('button', { name: /^Linnet/ }).click();
  await page.getByRole('button', { name: 'Put it on' }).click();
  // 152 lb are 68.95 kg; the page tells both sums to whole kilograms at worst.
  await expect.poll(async () => Math.abs((await wholeMass(page)) - alone - 68.95)).toBeLessThan(1.1);
  const says = page.locator('.sheet-says');
  await expect.poll(() => says.textContent()).toMatch(/ahead of the rear axle.*and.*on the front wheel/s);
  for (let i = 0; i < 20; i += 1)
    await page.getByRole('button', { name: /^Ahead of rear axle.*: less/ }).click();
  await expect.poll(() => says.textContent()).toMatch(/behind the rear axle.*lifts .* off the front wheel/s);
  await page.getByRole('button', { name: 'Take off' }).click();
  await expect.poll(() => wholeMass(page)).toBe(alone);
  for (let i = 0; i < 22; i += 1) await page.keyboard.press('Control+z');
  await page.getByRole('button', { name: 'Nothing to undo' }).waitFor();
  await expect.poll(() => wholeMass(page)).toBe(alone);
  expect(errors).toEqual([]);
  await context.close();
});

test('what a limit lacks leads to its field, and the limit is checked once all of it stands there', async () => {
  const { context, page, errors } = await firstLoad();
  const row = page.locator('[data-limit="front-tyre"]');
  const needed = row.getByRole('button', { name: /^Add figure: / });
  await row.getByText('Not checked, figure needed').waitFor();
  expect(await needed.count()).toBe(3);
  const load = page.locator('.stand-line-load');
  await needed.first().click();
  await page.locator('[id="machine.front.tyre.loadIndex"] input:focus').waitFor();
  await page.keyboard.type('66'); // 300 kg (ETRTO load indices)
  await page.keyboard.press('Enter');
  for (const field of ['pressure', 'placardPressure']) {
    await load.click();
    await expect.poll(() => needed.count()).toBe(field === 'pressure' ? 2 : 1);
    await needed.first().click();
    await page.locator(`[id="machine.front.tyre.${field}"]`).waitFor();
    await page.locator('.keypad-sheet').waitFor();
    await page.keyboard.type('2.5');
    await page.keyboard.press('Enter');
  }
  await load.click();
  await row.getByText(/^passed, .*kg left/).waitFor();
  expect(await needed.count()).toBe(0);
  await page.getByText(/^At ".*", a person of .*kg, until/).waitFor();
  expect(errors).toEqual([]);
  await context.close();
});

test('an open figure moves along with the load that is looked at', async () => {
  const { context, page } = await firstLoad();
  await page.getByRole('button', { name: 'Open up: load on the rear wheel' }).click();
  const value = page.locator('.why-value');
  await value.waitFor();
  const before = await value.textContent();
  expect(before).toMatch(/^[\d.]+ ± [\d.]+ kg$/);
  await page.keyboard.press('l');
  await expect.poll(() => value.textContent()).not.toBe(before);
  expect(await page.locator('.why-shares li').count()).toBeGreaterThan(2);
  await context.close();
});

test('an open figure tells where its inputs come from as the job stands, also where no figure moves with that', async () => {
  const { context, page, errors } = await firstLoad();
  const job = jobOf(exampleText('two-and-a-box'));
  const wheelbase = { ...job.machine.wheelbase, origin: 'manual', plusMinus: { value: 3, unit: 'mm' } };
  await openText(page, JSON.stringify({ ...job, machine: { ...job.machine, wheelbase } }));
  const input = page.locator('.why-shares button').filter({ hasText: 'Wheelbase' });
  const openUp = (): Promise<void> => page.getByRole('button', { name: /^wheelbase/ }).click();
  await openUp();
  await input.getByText('3 mm · manual').click();
  await page.locator('[id="machine.wheelbase"] [data-field-face]:focus').press('Enter');
  await page.keyboard.press('o');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Undo: Wheelbase' }).waitFor();
  await openUp();
  await input.getByText('3 mm · own scale').waitFor();
  await page.keyboard.press('Control+z');
  await input.getByText('3 mm · manual').waitFor({ timeout: 5000 });
  expect(errors).toEqual([]);
  await context.close();
});

test('a sheet that is closed gives the focus back to the key that opened it, through other sheets too', async () => {
  const { context, page } = await firstLoad();
  const opener = page.getByRole('button', { name: /^wheelbase/ });
  const focused = (): Promise<boolean> => opener.evaluate((key) => key === document.activeElement);
  await opener.focus();
  await opener.press('Enter');
  await page.locator('.sheet-frame:focus').press('Escape');
  await expect.poll(focused).toBe(true);
  await opener.press('Enter');
  await page.locator('.why-shares button').filter({ hasText: 'Wheelbase' }).press('Enter');
  await page.locator('[id="machine.wheelbase"] [data-field-face]:focus').press('Escape');
  await page.locator('.sheet-frame').waitFor({ state: 'detached' });
  await expect.poll(focused).toBe(true);
  await context.close();
});

test('eight entries make the plan that the terminal makes of them, and the page says which reading would narrow it most', async () => {
  const { context, page } = await visit(desk);
  await page.getByRole('button', { name: 'Jobs' }).click();
  await page.getByRole('button', { name: /three minutes/ }).click();
  const entries = { rider: '92', behind: '14', rear: '205', rate: '24', collarNow: '12', collarMost: '28' };
  for (const [name, figure] of Object.entries(entries)) {
    await page.locator(`[id="first.${name}"] [data-field-face]`).click();
    await page.keyboard.type(figure);
    await page.getByRole('button', { name: /^Write/ }).click();
  }
  await page.getByText(/wheel travel per shock stroke 1.15 ± 0.15/).waitFor();
  await page.getByRole('button', { name: 'Make the plan' }).click();
  await page.getByText(/Worth reading first: /).waitFor();
  await page.getByRole('button', { name: /^rider alone/ }).click();
  // The rider, the rear scale, and 0.85 of it in front.
  await expect.poll(() => wholeMass(page)).toBe(Math.round(92 + 205 + 0.85 * 205));
  const job = jobOf(await savedText(page));
  const { rider, behind, rear, rate, collarNow, collarMost } = entries;
  expect(job).toEqual(newJob(job.name, [rider, '', behind, rear, '2', rate, collarNow, collarMost]));
  await page.getByRole('button', { name: 'This machine' }).click();
  await page.getByText(job.note ?? 'no note').waitFor();
  await context.close();
});
