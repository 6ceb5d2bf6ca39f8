import type { Page } from '@playwright/test';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { jobFileName } from '../src/files/fileName.ts';
import { type Desk, exampleText, openDesk, planned, savedText, stands, visit } from './page.ts';
import { jobOf } from './terminal.ts';

let desk: Desk;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());

test('the theme that was chosen stays', async () => {
  const { context, page } = await visit(desk);
  await page.getByRole('button', { name: 'Truck colours' }).click();
  await page.reload();
  await stands(page);
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

test('a file that is dropped is opened, and its copy is named after the job; a kept job is removed only when that is meant', async () => {
  const { context, page, errors } = await visit(desk);
  await drop(page, 'mine.json', exampleText('long-legs'));
  const { name } = jobOf(exampleText('long-legs'));
  await expect.poll(() => page.locator('h1').textContent()).toBe(name);
  await planned(page);
  expect(jobOf(await savedText(page))).toEqual(jobOf(exampleText('long-legs')));
  expect(await page.locator('html').getAttribute('data-dropping')).toBeNull();

  await page.getByRole('button', { name: 'Jobs' }).click();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: `Copy ${name} to a file` }).click();
  expect((await download).suggestedFilename()).toBe(jobFileName(name));
  await page.getByRole('button', { name: 'Open The least figures' }).click();
  const { name: next } = jobOf(exampleText('least-figures'));
  await expect.poll(() => page.locator('h1').textContent()).toBe(next);

  await page.getByRole('button', { name: 'Jobs' }).click();
  const open = page.getByRole('button', { name: `Open ${name}` });
  const remove = page.getByRole('button', { name: `Remove ${name}` });
  await remove.click();
  await page.getByRole('button', { name: 'Leave it' }).click();
  expect(await open.count()).toBe(1);
  await remove.click();
  await page.getByRole('button', { name: 'Yes, remove it' }).click();
  await open.waitFor({ state: 'detached' });
  expect(await page.locator('h1').textContent()).toBe(next);
  await page.reload();
  await stands(page);
  await page.getByRole('button', { name: 'Jobs' }).click();
  await page.locator('.jobs-sheet').getByText(next).waitFor();
  expect(await open.count()).toBe(0);
  expect(errors).toEqual([]);
  await context.close();
});

test('inches typed where millimetres stand stay inches, in the job and in its file, and are counted as the millimetres that they are', async () => {
  const { context, page, errors } = await visit(desk);
  await page.getByRole('button', { name: 'This machine' }).click();
  await page.getByRole('navigation').getByRole('button', { name: 'Rear', exact: true }).click();
  const path = 'machine.rear.shock.length';
  const field = page.locator(`[id="${path}"]`);
  const { shock } = jobOf(exampleText('two-and-a-box')).machine.rear;
  expect(shock.length?.unit).toBe('mm');
  await field.locator('[data-field-face]').click();
  await page.keyboard.type('12 7/8');
  const sheet = page.getByRole('dialog');
  await sheet.getByRole('button', { name: /^in/ }).click();
  // 1 in = 25.4 mm exactly (NIST SP 811, B.8): 12 7/8 in = 327.025 mm.
  expect(await sheet.getByRole('button', { name: /^mm/ }).textContent()).toMatch(/= 327\.0/);
  await sheet.getByRole('button', { name: /^Write 12 7\/8/ }).click();
  await expect.poll(() => field.textContent()).toContain('12.875');
  await planned(page);
  const { length } = jobOf(await savedText(page)).machine.rear.shock;
  expect(length).toMatchObject({ value: 12.875, unit: 'in' });
  expect(Object.keys(jobOf(await savedText(page)).machine.rear.shock)).toEqual(Object.keys(shock));
  expect(errors).toEqual([]);
  await context.close();
});

test('another kind of adjuster keeps the last plan in sight and says what it needs; undo brings the former one back whole', async () => {
  const { context, page, errors } = await visit(desk);
  const before = await savedText(page);
  await page.getByRole('button', { name: 'This machine' }).click();
  await page.getByRole('navigation').getByRole('button', { name: 'Rear', exact: true }).click();
  await page.locator('[id="machine.rear.shock.adjuster.kind"] select').selectOption('cam');
  const needed = page.locator('.problem-list');
  await needed.getByText('Needed for a new plan').waitFor();
  expect(await needed.textContent()).toContain('Rise of each step above the first: readings needed.');
  expect(await page.locator('.ladder').count()).toBeGreaterThan(0);
  await page.getByRole('button', { name: /^Undo: / }).click();
  await needed.waitFor({ state: 'detached' });
  await planned(page);
  expect(jobOf(await savedText(page))).toEqual(jobOf(before));
  expect(errors).toEqual([]);
  await context.close();
});

test('a file with a figure in a unit of something else is mended on the page', async () => {
  const { context, page, errors } = await visit(desk);
  const job = JSON.parse(exampleText('two-and-a-box')) as {
    machine: { wheelbase: { unit: string; value: number } };
  };
  const { value } = job.machine.wheelbase;
  job.machine.wheelbase.unit = 'kg';
  await drop(page, 'mine.json', JSON.stringify(job));
  await page.getByRole('button', { name: 'Mend it on the page' }).click();
  const needed = page.locator('.problem-list');
  await needed.getByText('the unit of a mass; for a length it is mm, cm, m or in.').waitFor();
  await needed.getByRole('button', { name: 'Go to the field' }).click();
  const sheet = page.getByRole('dialog');
  await sheet.waitFor();
  const field = page.locator('[id="machine.wheelbase"]');
  expect(await field.textContent()).toContain(`${value} kg`);
  await sheet.getByRole('button', { name: `Write ${value}` }).click();
  await needed.waitFor({ state: 'detached' });
  await planned(page);
  const { wheelbase } = jobOf(await savedText(page)).machine;
  expect(wheelbase).toMatchObject({ value, unit: 'mm' });
  expect(errors).toEqual([]);
  await context.close();
});

/** Lets a file fall onto the page, as from a folder beside it. */
async function drop(page: Page, name: string, text: string): Promise<void> {
  const dataTransfer = await page.evaluateHandle(
    ([fileName, content]) => {
      const data = new DataTransfer();
      data.items.add(new File([content!], fileName!, { type: 'application/json' }));
      return data;
    },
    [name, text],
  );
  await page.dispatchEvent('main', 'dragover', { dataTransfer });
  expect(await page.locator('html').getAttribute('data-dropping')).toBe('');
  await page.dispatchEvent('main', 'drop', { dataTransfer });
}
