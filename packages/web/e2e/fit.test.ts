import type { Page } from '@playwright/test';
import { workListOf } from '@sagwright/workbench/fitting/workList';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Desk, exampleText, openDesk, openText, planned, savedText, type sizes, visit } from './page.ts';
import { expectSound, expectWhole } from './sound.ts';
import { jobOf } from './terminal.ts';

let desk: Desk;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());

/** A job with its Set tab open. */
async function fitOpen(example: string, size: keyof typeof sizes = 'tablet', theme: 'sun' | 'truck' = 'sun') {
  const visited = await visit(desk, size, theme);
  await openText(visited.page, exampleText(example));
  await visited.page.getByRole('button', { name: /^Set/ }).click();
  await visited.page.locator('.set-tab').waitFor();
  return visited;
}

function unfold(page: Page): Promise<void> {
  return page.locator('.set-tab details').evaluateAll((all) => {
    for (const each of all) (each as HTMLDetailsElement).open = true;
  });
}

function steps(page: Page): Promise<(string | null)[]> {
  return page
    .locator('.fit-step')
    .evaluateAll((all) => all.map((step) => (step as HTMLElement).dataset.step ?? null));
}

function leftOf(text: string): readonly string[] {
  return workListOf(jobOf(text)).rear!.left.flatMap((phase) => phase.steps);
}

test('what hands do stands there in the order of the terminal, and a key marks it as done; undo takes it back', async () => {
  const { context, page, errors } = await fitOpen('new-pair');
  const before = leftOf(exampleText('new-pair'));
  expect(await steps(page)).toEqual(before);
  await page.locator(`[data-step="${before[0]}"] .fit-key`).click();
  await expect.poll(() => steps(page)).toEqual(leftOf(await savedText(page)));
  expect(await steps(page)).not.toContain(before[0]);
  await page.getByRole('button', { name: /^Undo: done/ }).click();
  await expect.poll(() => steps(page)).toEqual(before);
  expect(errors).toEqual([]);
  await context.close();
});

test('what was done too early is named first, and goes once it is undone', async () => {
  const { context, page, errors } = await fitOpen('new-pair', 'phone');
  const early = page.getByRole('region', { name: 'Undo first, in this order' });
  expect(await early.textContent()).toContain('too stiff');
  await early.getByRole('button', { name: 'It is undone' }).click();
  await early.waitFor({ state: 'detached' });
  expect(JSON.parse(await savedText(page)).fitting.rear.done).not.toHaveProperty('bracket-left');
  expect(errors).toEqual([]);
  await context.close();
});

test('a torque is the one that was read: with its page and reader it may be worked by, and it is from the manual', async () => {
  const { context, page, errors } = await fitOpen('new-pair');
  const step = page.locator('[data-step="lock-left"]');
  expect(await step.locator('.fit-torque').textContent()).toBe(
    "No figure. Read it from this machine's manual.",
  );
  await step.getByText('Enter what the manual says').click();
  await step.locator('.quantity-field-face').click();
  await page.keyboard.type('47');
  await page.keyboard.press('Enter');
  await expect.poll(() => step.locator('.fit-torque').textContent()).toMatch(/without its page/);
  await step.getByLabel('Manual and page').fill('p. 31');
  await step.getByLabel('Manual and page').press('Enter');
  await step.getByLabel('Read by').fill('Rush');
  await step.getByLabel('Read by').press('Enter');
  await expect.poll(() => step.locator('.fit-torque').textContent()).toMatch(/^47 N·m: p\. 31, read by Rush/);
  await planned(page);
  const { value } = JSON.parse(await savedText(page)).fitting.rear.torques.lockNut;
  expect(value).toMatchObject({ value: 47, unit: 'N·m', origin: 'manual' });
  expect(errors).toEqual([]);
  await context.close();
});

test('where nothing is being fitted one key begins it, and undo ends it', async () => {
  const { context, page, errors } = await fitOpen('two-and-a-box');
  await page.getByRole('button', { name: 'Fit shocks at the rear' }).click();
  await page.locator('[data-step="found"]').waitFor();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await page.getByText('Nothing is being fitted.').waitFor();
  expect(errors).toEqual([]);
  await context.close();
});

describe.each(['phone', 'tablet', 'desktop'] as const)('on a %s', (size) => {
  test.each(['sun', 'truck'] as const)('all of it unfolded is sound in %s colours', async (theme) => {
    const { context, page, errors } = await fitOpen('new-pair', size, theme);
    await unfold(page);
    await expectSound(page, size);
    expect(errors).toEqual([]);
    await context.close();
  });
});

test.each(['tablet', 'phone'] as const)(
  'on a %s, text at 200 % re-flows, and no word is lost',
  async (size) => {
    const { context, page } = await fitOpen('new-pair', size);
    await page.addStyleTag({ content: 'html { font-size: 200% }' });
    await unfold(page);
    await expectWhole(page);
    await context.close();
  },
);
