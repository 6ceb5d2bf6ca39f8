import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect } from 'vitest';
import type { sizes } from './page.ts';
import { cutWords, faintNumbers, smallTargets } from './seen.ts';

/**
 * A finger in a glove: 12 mm (the design's), 62 px at 132 px to the inch; a mouse: the design's 32 px (WCAG 2.2,
 * 2.5.8, asks for 24).
 */
const leastTarget = { phone: 62, tablet: 62, desktop: 32 } as const;
/** WCAG 2.2, 1.4.6, level AAA, for every number. */
const LEAST_CONTRAST = 7;

/** Without a fault of axe, with targets for a hand and numbers in full contrast. */
export async function expectSound(page: Page, size: keyof typeof sizes): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ target }) => target)])).toEqual([]);
  expect(await smallTargets(page, leastTarget[size])).toEqual([]);
  expect(await faintNumbers(page, LEAST_CONTRAST)).toEqual([]);
}

/** No wider than the window, and no word cut. WCAG 2.2, 1.4.4 "Resize text" and 1.4.10 "Reflow". */
export async function expectWhole(page: Page): Promise<void> {
  const tooWide = (): Promise<number> =>
    page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  await expect.poll(tooWide).toBe(0);
  expect(await cutWords(page)).toEqual([]);
}
