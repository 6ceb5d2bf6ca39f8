/**
 * `npm run bench:web`: what the page weighs until the Machine tab is painted, and how quickly it follows a touch at a quarter of
 * this machine's speed, with 5 loads and 30 springs. Prints one table; no test asserts a time.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium } from '@playwright/test';
import { browserObstacle, browserPath } from './browser.mjs';
import { buildPage, compiler, root, runTool } from './ready.mjs';

const SLOWER = 4;
const TOUCHES = 40;
const FOLLOWS_WITHIN = 5000;
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
const dist = join(root, 'packages/web/dist');
const served = await servePage(dist, 0);
const browser = await chromium.launch({ executablePath: browserPath(), args: flags });
const lines = [...(await weight()), ...(await speed())];
await browser.close();
await served.close();
print(lines);

/** Every script and style sheet that the browser asked for until the Machine tab stood there, gzip -9; the worker apart. */
async function weight() {
  const context = await browser.newContext({
    viewport: { width: 810, height: 1080 },
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  const asked = new Set();
  page.on('request', (request) => asked.add(new URL(request.url()).pathname));
  await page.goto(served.url);
  await page.locator('.ladder').first().waitFor();
  const sizeOf = (paths) =>
    paths.reduce((sum, path) => sum + gzipSync(readFileSync(join(dist, path)), { level: 9 }).length, 0) /
    1024;
  const code = [...asked].filter((path) => /\.(js|css)$/.test(path));
  const worker = code.filter((path) => /worker/.test(path));
  const own = code.filter((path) => !/worker/.test(path));
  await context.close();
  return [
    ['script and CSS to paint the Machine tab, gzip', `${sizeOf(own).toFixed(0)} KB`, '<= 200 KB'],
    ['the worker, fetched beside it, gzip', `${sizeOf(worker).toFixed(0)} KB`, ''],
  ];
}

async function speed() {
  const context = await browser.newContext({
    viewport: { width: 810, height: 1080 },
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  await page.addInitScript(() => {
    window.longTasks = [];
    new PerformanceObserver((list) =>
      window.longTasks.push(...list.getEntries().map((entry) => entry.duration)),
    ).observe({ type: 'longtask' });
  });
  await page.goto(served.url);
  await page.locator('.ladder').first().waitFor();
  await page.getByRole('button', { name: 'Jobs' }).click();
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'wall.json', mimeType: 'application/json', buffer: Buffer.from(wallOfSprings()) });
  await page.getByText('a wall of springs').waitFor();
  await page.locator('main[aria-busy="false"] .ladder').first().waitFor();
  await page
    .getByRole('button', { name: /the fortnight/ })
    .first()
    .click();
  await page.locator('.side-tag').first().click();
  const more = page.getByRole('button', { name: /: more by/ }).first();
  await more.waitFor();
  const client = await context.newCDPSession(page);
  await client.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  const onMachine = await touches(client, more);
  const long = await page.evaluate(() => window.longTasks.splice(0));
  await client.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  await context.close();
  const slow = long.filter((duration) => duration > 50);
  return [
    [
      `main thread for each touch, ${TOUCHES} touches, median`,
      `${at(onMachine.busy, 0.5).toFixed(1)} ms`,
      '<= 8 ms',
    ],
    ['the same, 95th percentile', `${at(onMachine.busy, 0.95).toFixed(1)} ms`, '<= 8 ms'],
    [
      'from the touch to the new figures on the page, median',
      `${at(onMachine.fresh, 0.5).toFixed(0)} ms`,
      '<= 33 ms',
    ],
    ['the same, 95th percentile', `${at(onMachine.fresh, 0.95).toFixed(0)} ms`, '<= 100 ms'],
    [
      'tasks over 50 ms on the main thread',
      `${slow.length}${slow.length > 0 ? `, longest ${Math.max(...slow).toFixed(0)} ms` : ''}`,
      '0',
    ],
  ];
}

/**
 * Presses a key again and again. For each press: the time until the page has been worked out anew and painted, and what the main
 * thread did until then. The page says that it is behind by `aria-busy`; a press that never brings it up to date stops the run.
 */
async function touches(client, key) {
  const busy = [];
  const fresh = [];
  await client.send('Performance.enable', { timeDomain: 'threadTicks' });
  const taskTime = async () => {
    const { metrics } = await client.send('Performance.getMetrics');
    return 1000 * metrics.find(({ name }) => name === 'TaskDuration').value;
  };
  for (let i = 0; i < TOUCHES; i += 1) {
    const before = await taskTime();
    const took = await key.evaluate(
      (button, limit) =>
        new Promise((done, fail) => {
          const main = document.querySelector('main');
          const started = performance.now();
          let behind = false;
          const tooLong = setTimeout(() => fail(new Error('the page did not follow a touch')), limit);
          const observer = new MutationObserver(() => {
            if (main.getAttribute('aria-busy') === 'true') behind = true;
            else if (behind) {
              observer.disconnect();
              clearTimeout(tooLong);
              requestAnimationFrame(() => done(performance.now() - started));
            }
          });
          observer.observe(main, { attributes: true, attributeFilter: ['aria-busy'] });
          button.click();
        }),
      FOLLOWS_WITHIN,
    );
    busy.push((await taskTime()) - before);
    fresh.push(took);
  }
  return { busy, fresh };
}

/** The demo with 30 rear springs. */
function wallOfSprings() {
  const job = JSON.parse(readFileSync(join(root, 'examples/two-and-a-box.json'), 'utf8'));
  const [, model] = Object.entries(job.springs).find(([, spring]) => spring.end === 'rear');
  const rear = Object.values(job.springs).filter((spring) => spring.end === 'rear').length;
  for (let i = rear; i < 30; i += 1) {
    const rate = { kind: 'linear', rate: { value: 18 + i / 1.5, unit: 'N/mm' } };
    job.springs[`wall-${i}`] = { ...model, name: `wall ${i}`, order: 100 + i, rate };
  }
  return JSON.stringify({ ...job, name: 'a wall of springs' });
}

function at(values, share) {
  return [...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.floor(share * values.length))];
}

function print(rows) {
  const width = Math.max(...rows.map(([name]) => name.length));
  console.log(
    `At ${SLOWER} times slower than this machine, Chromium, 810 x 1080, 5 loads and 30 rear springs\n`,
  );
  for (const [name, figure, aim] of rows)
    console.log(`${name.padEnd(width)}  ${figure.padStart(22)}  ${aim}`);
}
