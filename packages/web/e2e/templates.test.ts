/** Machines, shocks and forks that are kept in the browser: kept, taken, compared, and not lost by a newer store. */
import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { afterAll, beforeAll, expect, test } from 'vitest';
import {
  type Desk,
  exampleText,
  newBrowser,
  openDesk,
  openWindow,
  planned,
  savedText,
  sizes,
  visit,
} from './page.ts';
import { cutWords, smallTargets } from './seen.ts';

let desk: Desk;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());

async function openSheet(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Jobs', exact: true }).click();
  await page.getByRole('button', { name: /^Kept machines/ }).click();
  await page.getByRole('heading', { name: 'Kept machines, shocks and forks' }).waitFor();
}

async function said(page: Page, text: string | RegExp): Promise<void> {
  await page.locator('.template-said').filter({ hasText: text }).waitFor();
}

test('a machine that was kept is there after a reload, goes to a file, begins a job, and is removed once asked', async () => {
  const { context, page, errors } = await visit(desk);
  await openSheet(page);
  await page.getByRole('button', { name: 'Its machine' }).click();
  await page.getByText('Left out, since it is of who rides').waitFor();
  await page.getByLabel('What it is called').fill('slate tourers');
  await page.getByLabel('Note, if any').fill('before the works changed the bracket');
  await page.getByRole('button', { name: 'Keep it', exact: true }).click();
  await said(page, 'Kept: slate tourers');
  await page.reload();
  await openSheet(page);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Copy slate tourers to a file' }).click();
  const file = await download;
  expect(file.suggestedFilename()).toBe('slate-tourers.json');
  const text = readFileSync(await file.path(), 'utf8');
  expect(JSON.parse(text)).toMatchObject({
    format: 'sagwright-template',
    kind: 'machine',
    name: 'slate tourers',
    note: 'before the works changed the bracket',
  });
  expect(text).not.toMatch(/Pepper|Linnet/);
  await page.getByRole('button', { name: 'Remove slate tourers' }).click();
  await page.getByRole('button', { name: 'Leave it' }).click();
  await page.getByRole('button', { name: 'Begin a job with slate tourers' }).click();
  await expect.poll(() => page.locator('h1').textContent()).toBe('slate tourers');
  await planned(page);
  await openSheet(page);
  await page.getByRole('button', { name: 'Remove slate tourers' }).click();
  await page.getByRole('button', { name: 'Yes, remove it' }).click();
  await page.getByText('Nothing is kept yet.').waitFor();
  expect(errors).toEqual([]);
  await context.close();
});

test('a shock put into the job says what is gone, and undo brings every figure back', async () => {
  const { context, page, errors } = await visit(desk);
  const before = await savedText(page);
  await openSheet(page);
  await page
    .getByRole('button', { name: 'Put one of a pair, threaded collar (invented) into this job' })
    .click();
  await said(page, /Gone with the one that was in it: how the rear stood as found/);
  await page.locator('.jobs-sheet').getByRole('button', { name: 'Close', exact: true }).click();
  const after = JSON.parse(await savedText(page));
  expect(after.machine.rear.shock.stroke.value).toBe(84);
  await page.getByRole('button', { name: /^Undo: put in/ }).click();
  expect(JSON.parse(await savedText(page))).toEqual(JSON.parse(before));
  expect(errors).toEqual([]);
  await context.close();
});

test('two are compared, what differs first, and what is alike when asked for', async () => {
  const { context, page, errors } = await visit(desk, 'phone');
  await openSheet(page);
  await page
    .getByLabel('Second')
    .selectOption({ label: 'heavy tourer with two shocks (invented) (machine)' });
  const lines = page.locator('.compare-lines > li');
  await lines.first().waitFor();
  await page.getByText(/^\d+ fields differ; \d+ fields are alike\.$/).waitFor();
  const differing = await lines.count();
  expect(await lines.filter({ hasText: 'the same' }).count()).toBe(0);
  await page.getByRole('button', { name: /^Show what is alike too/ }).click();
  expect(await lines.count()).toBeGreaterThan(differing);
  await page.getByRole('button', { name: 'Forks', exact: true }).click();
  await page.getByText('stroke of the fork').waitFor();
  await page
    .getByLabel('First')
    .selectOption({ label: 'cartridge fork with screwed caps (invented) (fork)' });
  await page
    .getByLabel('Second')
    .selectOption({ label: 'single shock with air beside the coil (invented) (shock)' });
  await page.getByText('The two have no part in common').waitFor();
  expect(errors).toEqual([]);
  await context.close();
});

test('a template file is taken in where jobs are opened, and one that cannot be read is told', async () => {
  const { context, page, errors } = await visit(desk);
  const text = exampleText('templates/air-shock');
  const file = (buffer: string) => ({
    name: 'shock.json',
    mimeType: 'application/json',
    buffer: Buffer.from(buffer),
  });
  await page.getByRole('button', { name: 'Jobs', exact: true }).click();
  await page.locator('input[type=file]').setInputFiles(file(text));
  await said(page, 'Kept from the file: single shock with air beside the coil (invented)');
  await page.locator('input[type=file]').setInputFiles(file(text.replace('"stroke"', '"strok"')));
  await said(page, /shock\.json is no template that can be read.*did you mean "stroke"/s);
  expect(await page.getByRole('button', { name: /^Remove / }).count()).toBe(1);
  expect(errors).toEqual([]);
  await context.close();
});

test('a browser that kept jobs before there were templates still has them', async () => {
  const context = await newBrowser(desk);
  const bare = await context.newPage();
  await bare.goto(`${desk.url}sign.svg`);
  const document = JSON.parse(exampleText('long-legs'));
  await bare.evaluate(
    (kept) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('sagwright-jobs', 1);
        opening.onupgradeneeded = () => opening.result.createObjectStore('jobs', { keyPath: 'id' });
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const transaction = opening.result.transaction('jobs', 'readwrite');
          transaction.objectStore('jobs').put(kept);
          transaction.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    { id: 'job-of-old', document, changes: [], kept: '2026-11-24T09:00:00.000Z' },
  );
  await bare.close();
  const { page, errors } = await openWindow(desk, context);
  expect(await page.locator('h1').textContent()).toBe(document.name);
  await openSheet(page);
  await page.getByRole('button', { name: 'Its shock' }).click();
  await page.getByRole('button', { name: 'Keep it', exact: true }).click();
  await said(page, 'Kept: ');
  expect(errors).toEqual([]);
  await context.close();
});

test('two windows keep templates, and each finds what the other kept', async () => {
  const first = await visit(desk);
  const second = await openWindow(desk, first.context);
  for (const { page } of [first, second]) {
    await openSheet(page);
    await page.getByRole('button', { name: 'Its fork' }).click();
    await page.getByRole('button', { name: 'Keep it', exact: true }).click();
    await said(page, 'Kept: ');
  }
  expect(await second.page.getByRole('button', { name: /^Remove / }).count()).toBe(2);
  expect([...first.errors, ...second.errors]).toEqual([]);
  await first.context.close();
});

/** As on the tabs: 62 px (12 mm) to press with a glove, 32 px with a mouse. */
test.each(Object.keys(sizes) as (keyof typeof sizes)[])(
  'on a %s the sheet can be pressed with a glove, is read out whole, and cuts no word',
  async (size) => {
    const { context, page } = await visit(desk, size, 'truck');
    await openSheet(page);
    await page.getByRole('button', { name: 'Its machine' }).click();
    await page.getByLabel('Second').selectOption({ index: 3 });
    await page.locator('.compare-lines > li').first().waitFor();
    expect(await smallTargets(page, size === 'desktop' ? 32 : 62)).toEqual([]);
    expect(await cutWords(page)).toEqual([]);
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    await context.close();
  },
);
