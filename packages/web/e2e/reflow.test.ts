import { afterAll, beforeAll, test } from 'vitest';
import { type Desk, openDesk, visit } from './page.ts';
import { expectWhole } from './sound.ts';

let desk: Desk;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());

/** WCAG 2.2, 1.4.4 "Resize text" and 1.4.10 "Reflow". */
test.each(['tablet', 'phone'] as const)(
  'on a %s, text at 200 % re-flows, and no word is lost',
  async (size) => {
    const { context, page } = await visit(desk, size);
    await page.addStyleTag({ content: 'html { font-size: 200% }' });
    await page.getByRole('button', { name: /^the fortnight/ }).click();
    await expectWhole(page);
    await page.getByRole('button', { name: 'Load E', exact: true }).click();
    await page.locator('.sheet-keys').waitFor();
    await expectWhole(page);
    await page.getByRole('button', { name: 'This machine' }).click();
    await page.locator('.figures-body').waitFor();
    await expectWhole(page);
    await page.locator('.figures-body .quantity-field-face').first().click();
    await page.locator('.keypad-sheet').waitFor();
    await expectWhole(page);
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Jobs' }).click();
    await page.locator('.jobs-sheet').waitFor();
    await expectWhole(page);
    await page.getByRole('button', { name: /^Kept machines/ }).click();
    await page.getByRole('heading', { name: 'Kept machines, shocks and forks' }).waitFor();
    await expectWhole(page);
    await page.getByRole('button', { name: 'Jobs' }).click();
    await page.locator('.tab-index-tab').nth(1).click();
    await page.locator('.choose-answer').waitFor();
    await expectWhole(page);
    await page.getByRole('button', { name: /^Wanted sag/ }).click();
    await page.locator('.wanted-page').waitFor();
    await expectWhole(page);
    await context.close();
  },
);
