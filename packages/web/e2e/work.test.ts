import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Desk, exampleText, openDesk, visit } from './page.ts';

let desk: Desk;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());

test('work is kept over a reload, undo included', async () => {
  const { context, page, errors } = await visit(desk);
  const loads = page.getByRole('group', { name: 'Loads' }).getByRole('button');
  const count = (await loads.count()) + 1;
  await page.getByRole('button', { name: 'New load' }).click();
  await expect.poll(() => loads.count()).toBe(count);
  const undo = page.getByRole('button', { name: /^Undo/ });
  await expect.poll(() => undo.getAttribute('aria-label')).toMatch(/^Undo: /);
  await page
    .getByText('Kept on this device')
    .or(page.getByText('This browser may clear itself'))
    .first()
    .waitFor();
  await page.reload();
  await page.getByRole('group', { name: 'Loads' }).waitFor();
  await expect.poll(() => loads.count()).toBe(count);
  await undo.click();
  await expect.poll(() => loads.count()).toBe(count - 1);
  expect(errors).toEqual([]);
  await context.close();
});

test('the theme that was chosen stays', async () => {
  const { context, page } = await visit(desk);
  await page.getByRole('button', { name: 'Truck colours' }).click();
  await page.reload();
  await page.getByRole('group', { name: 'Loads' }).waitFor();
  expect(await page.locator('html').getAttribute('data-theme')).toBe('truck');
  await context.close();
});

test('a broken file tells its fault with its place, shows its rest, and leaves the job on the table', async () => {
  const { context, page } = await visit(desk);
  const before = await page.locator('h1').textContent();
  await page.getByRole('button', { name: 'Jobs' }).click();
  const text = exampleText('long-legs').replace('"version": 1,', '"version": 1, "colour": "red",');
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'mine.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  const broken = page.locator('.broken-file');
  await broken.waitFor();
  expect(await broken.textContent()).toContain('colour');
  expect(await broken.textContent()).toContain('Nothing was changed');
  const { name, machine } = JSON.parse(exampleText('long-legs')) as {
    name: string;
    machine: { name: string };
  };
  expect(await broken.textContent()).toContain(name);
  expect(await broken.textContent()).toContain(machine.name);
  expect(await page.locator('h1').textContent()).toBe(before);
  await context.close();
});

test('with the server gone a reload still finds everything', async () => {
  const alone = await openDesk();
  const { context, page, errors } = await visit(alone);
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await expect
    .poll(() => page.evaluate(async () => (await caches.keys()).length), { timeout: 15_000 })
    .toBeGreaterThan(0);
  await page.reload();
  await page.getByRole('group', { name: 'Loads' }).waitFor();
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  await alone.unplug();
  await page.reload();
  await page.getByRole('group', { name: 'Loads' }).waitFor();
  await page.locator('.tab-index-tab').nth(1).click();
  await page.locator('.spring-row').first().waitFor();
  expect(errors).toEqual([]);
  await context.close();
  await alone.close();
});
