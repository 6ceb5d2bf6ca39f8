/**
 * `npm run screens`: pictures of both tabs under docs/screens, on a phone, a tablet and a desktop, in both themes, of the demo job
 * with its heaviest load. Builds the page first.
 */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { browserObstacle, browserPath } from './browser.mjs';
import { buildPage, compiler, root, runTool } from './ready.mjs';

const sizes = { phone: [390, 844], tablet: [810, 1080], desktop: [1440, 900] };
const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

const inTheWay = browserObstacle();
if (inTheWay) throw new Error(inTheWay);
if (runTool(compiler, ['-b']).status !== 0 || buildPage().status !== 0) throw new Error('the build failed');
const { servePage } = await import('../packages/cli/dist/open/serve.js');
const folder = join(root, 'docs/screens');
mkdirSync(folder, { recursive: true });
const served = await servePage(join(root, 'packages/web/dist'), 0);
const browser = await chromium.launch({ executablePath: browserPath(), args: flags });
for (const [size, [width, height]] of Object.entries(sizes)) {
  for (const theme of ['sun', 'truck']) {
    const context = await browser.newContext({ viewport: { width, height }, hasTouch: size !== 'desktop' });
    const page = await context.newPage();
    await page.addInitScript((value) => localStorage.setItem('sagwright-theme', value), theme);
    await page.goto(served.url);
    const loads = page.getByRole('group', { name: 'Loads' }).getByRole('button');
    await loads.first().waitFor();
    await page
      .getByRole('button', { name: /the fortnight/ })
      .first()
      .click();
    await page.waitForTimeout(300);
    await page.screenshot({ path: join(folder, `machine-${size}-${theme}.png`) });
    await page.locator('.tab-index-tab').nth(1).click();
    await page.locator('.spring-row').first().waitFor();
    await page.evaluate(() => scrollTo(0, 0));
    await page.waitForTimeout(300);
    await page.screenshot({ path: join(folder, `choose-${size}-${theme}.png`) });
    await context.close();
  }
}
await browser.close();
await served.close();
