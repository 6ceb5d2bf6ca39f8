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
const TOUCHES = 20;
const WARMING = 4;
const LONG_TASK = 50;
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
    hasTouch: true,
  });
  const page = await context.newPage();
  await page.goto(served.url);
  await page.locator('.ladder').first().waitFor();
  await page.getByRole('button', { name: 'Jobs' }).tap();
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'wall.json', mimeType: 'application/json', buffer: Buffer.from(wallOfSprings()) });
  await page.getByText('a wall of springs').waitFor();
  await page.locator('main[aria-busy="false"] .ladder').first().waitFor();
  // By finger: a mouse left lying on the page makes the browser look for what is under it after every painting.
  await page
    .getByRole('button', { name: /the fortnight/ })
    .first()
    .tap();
  await page.locator('.side-tag').first().tap();
  const more = await page
    .getByRole('button', { name: /: more by/ })
    .first()
    .elementHandle();
  const client = await context.newCDPSession(page);
  await client.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  const machine = await touches(client, more);
  await page.keyboard.press('2');
  await page.locator('.spring-row').nth(29).waitFor();
  const undo = await page.locator('.job-strip-undo').elementHandle();
  const choose = await touches(client, undo);
  await context.close();
  return [...rowsOfMachine(machine), ...rowsOfChoose(choose)];
}

/**
 * Presses a key again and again, from within the page, so that nothing but the page's own work is on its main thread, and reads
 * from Chromium's trace what that thread did. The page says that it is behind by `aria-busy`, and `data-behind` names what still
 * is; a press that never brings it up to date stops the run.
 */
async function touches(client, key) {
  await key.evaluate(pressAndFollow, { times: WARMING, limit: FOLLOWS_WITHIN });
  const events = [];
  const collect = ({ value }) => events.push(...value);
  client.on('Tracing.dataCollected', collect);
  await client.send('Tracing.start', {
    transferMode: 'ReportEvents',
    categories: 'toplevel,blink.user_timing',
  });
  const followed = await key.evaluate(pressAndFollow, { times: TOUCHES, limit: FOLLOWS_WITHIN });
  const traced = new Promise((done) => client.once('Tracing.tracingComplete', done));
  await client.send('Tracing.end');
  await traced;
  client.off('Tracing.dataCollected', collect);
  return { ...traceOf(events), followed };
}

function rowsOfMachine(touched) {
  return [
    row('Machine: main thread, answering the touch itself', answering(touched), '<= 8 ms, p95 too'),
    row('Machine: main thread, until every figure is new and painted', busyUntil(touched, 'fresh'), ''),
    row('Machine: main thread, until all is still again', busyUntil(touched, 'still'), ''),
    row('Machine: touch to the load in sight, in a frame', freshAfter(touched, 'chosen'), '<= 33 ms'),
    row('Machine: touch to every figure, in a frame', freshAfter(touched, 'all'), '<= 100 ms'),
    longTasks('Machine', touched),
  ];
}

function rowsOfChoose(touched) {
  return [
    row('Choose: main thread, answering the touch itself', answering(touched), '<= 8 ms, p95 too'),
    row('Choose: main thread, until all rows are new and painted', busyUntil(touched, 'fresh'), ''),
    row('Choose: touch to all rows, in a frame', freshAfter(touched, 'all'), '<= 100 ms'),
    longTasks('Choose', touched),
  ];
}

function row(what, values, aim) {
  return [what, `${at(values, 0.5).toFixed(1)} ms, p95 ${at(values, 0.95).toFixed(1)}`, aim];
}

function longTasks(tab, { tasks }) {
  const long = tasks.filter(({ ms }) => ms > LONG_TASK).map(({ ms }) => ms);
  const longest = long.length > 0 ? `, longest ${Math.max(...long).toFixed(0)} ms` : '';
  return [`${tab}: tasks over ${LONG_TASK} ms on the main thread`, `${long.length}${longest}`, '0'];
}

function freshAfter({ followed }, what) {
  return followed.map((each) => each[what]);
}

/** In the page. For each press: the time until the load in sight, and until all, is worked out anew and in a frame. */
async function pressAndFollow(button, { times, limit }) {
  const main = document.querySelector('main');
  const wait = (ms) => new Promise((done) => setTimeout(done, ms));
  const frame = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
  const until = (isSo) =>
    new Promise((done, fail) => {
      const tooLong = setTimeout(() => fail(new Error('the page did not follow a touch')), limit);
      const observer = new MutationObserver(() => {
        if (!isSo()) return;
        observer.disconnect();
        clearTimeout(tooLong);
        done();
      });
      observer.observe(main, { attributes: true, attributeFilter: ['data-behind'] });
    });
  const results = [];
  for (let i = 0; i < times; i += 1) {
    const chosen = until(() => main.dataset.behind !== 'all');
    const all = until(() => main.dataset.behind === 'nothing');
    const started = performance.now();
    performance.mark('touch');
    button.click();
    const result = {};
    await Promise.all([
      chosen.then(frame).then(() => (result.chosen = performance.now() - started)),
      all.then(frame).then(() => {
        result.all = performance.now() - started;
        performance.mark('fresh');
      }),
    ]);
    results.push(result);
    await wait(300);
    performance.mark('still');
    await wait(2200);
  }
  return results;
}

/** What the page's main thread did, task by task [ms of its own time], and the marks that the page set. */
function traceOf(events) {
  const marks = events.filter(
    (event) => ['touch', 'fresh', 'still'].includes(event.name) && event.ph !== 'X',
  );
  const { pid, tid } = marks[0];
  const tasks = events
    .filter(
      (event) => event.pid === pid && event.tid === tid && event.ph === 'X' && /::RunTask$/.test(event.name),
    )
    .map(({ ts, dur, tdur }) => ({ from: ts, to: ts + dur, ms: (tdur ?? dur) / 1000 }));
  return { tasks, marks: marks.sort((a, b) => a.ts - b.ts) };
}

/** For each touch: the task that it was answered in, and what was done until the next mark of a name. */
function answering({ tasks, marks }) {
  return marks
    .filter(({ name }) => name === 'touch')
    .map(({ ts }) => tasks.find((task) => task.from <= ts && ts <= task.to).ms);
}

function busyUntil({ tasks, marks }, name) {
  return marks
    .filter((mark) => mark.name === 'touch')
    .map(({ ts }) => {
      const end = marks.find((mark) => mark.name === name && mark.ts > ts).ts;
      return tasks.reduce((sum, task) => (task.to > ts && task.from < end ? sum + task.ms : sum), 0);
    });
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
