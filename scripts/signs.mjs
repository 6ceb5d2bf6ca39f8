/** Draws the page's sign as the PNG files that a device puts on its home screen, from packages/web/public/sign.svg. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { browserObstacle, browserPath } from './browser.mjs';
import { root } from './ready.mjs';

const folder = join(root, 'packages/web/public');
const inTheWay = browserObstacle();
if (inTheWay) throw new Error(inTheWay);
const browser = await chromium.launch({
  executablePath: browserPath(),
  args: ['--no-sandbox', '--disable-gpu'],
});
const sign = readFileSync(join(folder, 'sign.svg'), 'utf8');
for (const size of [192, 512]) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(
    `<style>*{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${sign}`,
  );
  await page.screenshot({ path: join(folder, `sign-${size}.png`) });
}
await browser.close();
