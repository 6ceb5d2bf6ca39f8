import type { Page } from '@playwright/test';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Desk, exampleText, openDesk, openText, savedText, visit } from './page.ts';
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
  await table.locator('tbody tr').first().waitFor();
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

test('hard points by tape are told place by place and length by length, as the terminal tells them', async () => {
  const { context, page, errors } = await visit(desk);
  const text = exampleText('known-three-ways');
  await openText(page, text);
  await rearOpen(page);
  const { tape, earlierSurvey } = planOf(text).rearMotion;
  const places = await tableOf(page, /hard points by tape/);
  expect(places).toHaveLength(tape!.points.length);
  for (const [i, { x }] of tape!.points.entries())
    expect(Number.parseFloat(places[i]![1]!)).toBeCloseTo(1000 * x.value, 0);
  expect(await tableOf(page, /each length/)).toHaveLength(tape!.lengths.length);
  const rows = await tableOf(page, /rows known before/);
  expect(rows.map((row) => row.at(-1))).toEqual(earlierSurvey!.rows.map(({ verdict }) => verdict));
  expect(errors).toEqual([]);
  await context.close();
});

test('a rear known by its ratio is begun by hard points and tape: each is asked for, and what was known stays', async () => {
  const { context, page, errors } = await visit(desk);
  const text = exampleText('two-and-a-box');
  await openText(page, text);
  await rearOpen(page);
  await page.getByRole('combobox', { name: 'Known as' }).selectOption('direct');
  await page.locator('.tape-sketch svg').waitFor();
  expect(await page.locator('.problem-list, [role="alert"]').first().textContent()).toBeTruthy();
  const step = page.locator('.tape-step [data-field-face]');
  expect(await step.textContent()).toContain('1 of 7: Axle to pivot');
  await step.focus();
  await page.keyboard.type('560');
  await page.keyboard.press('Enter');
  await expect.poll(() => step.textContent()).toContain('2 of 7');
  const saved = JSON.parse(await savedText(page)) as ReturnType<typeof jobOf>;
  const { travel } = saved.machine.rear;
  if (travel.kind !== 'direct') throw new Error(travel.kind);
  expect(Object.values(travel.tape!)).toEqual([
    expect.objectContaining({ kind: 'between', from: 'axle', to: 'pivot' }),
  ]);
  const { ratio } = jobOf(text).machine.rear.travel as { readonly ratio: unknown };
  expect(travel.earlierLeverage).toEqual(ratio);
  expect(errors).toEqual([]);
  await context.close();
});
