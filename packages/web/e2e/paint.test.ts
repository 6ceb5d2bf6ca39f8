import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Desk, exampleText, openDesk, openText, visit } from './page.ts';
import { expectSound } from './sound.ts';

let desk: Desk;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());

describe.each(['phone', 'tablet', 'desktop'] as const)('on a %s', (size) => {
  describe.each(['sun', 'truck'] as const)('in %s colours', (theme) => {
    test('each tab, an open keypad, how the rear moves and how it stands are without a fault of axe, with targets for a hand and numbers in full contrast', async () => {
      const { context, page, errors } = await visit(desk, size, theme);
      await page.getByRole('button', { name: /^the fortnight/ }).click();
      await page.locator('.side-load').first().waitFor();
      await expectSound(page, size);
      await page.getByRole('button', { name: 'Load E', exact: true }).click();
      await page.locator('.sheet-keys').first().waitFor();
      await expectSound(page, size);
      await page.getByRole('button', { name: 'This machine' }).click();
      await page.locator('.figures-body .quantity-field-face').first().click();
      await page.locator('.keypad-sheet').waitFor();
      await expectSound(page, size);
      await page.keyboard.press('Escape');
      await page.locator('.figures-groups').getByRole('button', { name: 'Rear' }).click();
      await page.locator('.ratio-plot svg').waitFor();
      await expectSound(page, size);
      await page.getByRole('button', { name: 'Close', exact: true }).click();
      await page.getByRole('button', { name: 'How it stands' }).click();
      await page.locator('.stance-row').first().waitFor();
      await expectSound(page, size);
      await page.getByRole('button', { name: 'Close', exact: true }).click();
      await page.locator('.tab-index-tab').nth(1).click();
      await page.locator('.choose-answer').waitFor();
      await expectSound(page, size);
      await page.getByRole('button', { name: /^Wanted sag/ }).click();
      await page.locator('.wanted-page').waitFor();
      await expectSound(page, size);
      expect(errors).toEqual([]);
      await context.close();
    });
  });
});

test.each(['sun', 'truck'] as const)(
  'the parts of a rear by hard points are sound in %s colours',
  async (theme) => {
    const { context, page, errors } = await visit(desk, 'phone', theme);
    await openText(page, exampleText('taped-linkage'));
    await page.getByRole('button', { name: 'This machine' }).click();
    await page.locator('.figures-groups').getByRole('button', { name: 'Rear' }).click();
    await page.locator('.parts-plot svg').first().waitFor();
    for (const summary of await page.locator('.as-table summary').all()) await summary.click();
    await expectSound(page, 'phone');
    expect(errors).toEqual([]);
    await context.close();
  },
);
