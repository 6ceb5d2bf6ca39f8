/** Nothing is lost, whatever happens to the browser's store, to the window or to the server; and the page says so in words. */
import type { Locator, Page } from '@playwright/test';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { copyBuild } from './newerBuild.ts';
import { builtPage, type Desk, newBrowser, openDesk, openWindow, planned, stands, visit } from './page.ts';

/** The job that the page begins with, and its file. */
const DEMO = 'Pepper and Linnet, Hesterness landing';
const DEMO_FILE = 'pepper-and-linnet-hesterness-landing.json';

let desk: Desk;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());

function loadsOf(page: Page): Locator {
  return page.getByRole('group', { name: 'Loads' }).getByRole('button');
}

async function addLoad(page: Page): Promise<void> {
  const count = await loadsOf(page).count();
  await page.getByRole('button', { name: 'New load', exact: true }).click();
  await expect.poll(() => loadsOf(page).count()).toBe(count + 1);
}

/** Waits until the strip says how the job is kept. */
async function saving(page: Page, state: string): Promise<void> {
  await page.locator(`.job-strip-saving[data-saving="${state}"]`).waitFor();
}

async function isKept(page: Page): Promise<void> {
  await page.locator('.job-strip-saving:is([data-saving="kept"], [data-saving="may be cleared"])').waitFor();
}

/** The name of the file that a key hands over. */
async function handedOver(page: Page, key: Locator): Promise<string> {
  const download = page.waitForEvent('download');
  await key.click();
  return (await download).suggestedFilename();
}

test('an act is kept though the page is loaded again in the same moment, and can still be undone', async () => {
  const { context, page, errors } = await visit(desk);
  const count = await loadsOf(page).count();
  for (const more of [1, 2, 3]) {
    const loaded = page.waitForEvent('load');
    await page.evaluate(() => {
      document.querySelector<HTMLElement>('.load-strip-new')!.click();
      location.reload();
    });
    await loaded;
    await stands(page);
    await expect.poll(() => loadsOf(page).count()).toBe(count + more);
  }
  for (const more of [2, 1, 0]) {
    await page.getByRole('button', { name: /^Undo: / }).click();
    await expect.poll(() => loadsOf(page).count()).toBe(count + more);
  }
  await isKept(page);
  await page.reload();
  await stands(page);
  await page.getByRole('button', { name: 'Nothing to undo' }).waitFor();
  expect(await loadsOf(page).count()).toBe(count);
  expect(errors).toEqual([]);
  await context.close();
});

test('where the device has no room the page says so, hands the job over, and keeps it once there is room', async () => {
  const { context, page, errors } = await visit(desk);
  const session = await context.newCDPSession(page);
  const origin = new URL(desk.url).origin;
  await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
  await addLoad(page);
  await saving(page, 'no room');
  const notice = page.getByText('This device has no room left: what was done last is not kept.');
  await notice.waitFor();
  const toFile = page.locator('.notice').getByRole('button', { name: 'Copy to a file' });
  expect(await handedOver(page, toFile)).toBe(DEMO_FILE);
  const again = page.getByRole('button', { name: 'Try again' });
  await again.click();
  await saving(page, 'no room');
  await session.send('Storage.overrideQuotaForOrigin', { origin });
  await again.click();
  await isKept(page);
  await notice.waitFor({ state: 'detached' });
  const count = await loadsOf(page).count();
  await page.reload();
  await stands(page);
  await expect.poll(() => loadsOf(page).count()).toBe(count);
  expect(errors).toEqual([]);
  await context.close();
});

/** What browsers do that let a page keep nothing; whether a window that is loaded again still has what was done in it. */
const forbids = {
  'has no store of jobs': {
    forbid: () => {
      delete (globalThis as { indexedDB?: unknown }).indexedDB;
    },
    stays: 0,
  },
  'forbids every store': {
    forbid: () => {
      const forbidden = () => {
        throw new DOMException('The operation is insecure.', 'SecurityError');
      };
      IDBFactory.prototype.open = forbidden;
      for (const name of ['localStorage', 'sessionStorage']) {
        Object.defineProperty(globalThis, name, { get: forbidden });
      }
    },
    stays: -1,
  },
} as const;

test.each(Object.entries(forbids))(
  'in a browser that %s one works on, is told, and copies to a file',
  async (_, { forbid, stays }) => {
    const context = await newBrowser(desk);
    await context.addInitScript(forbid);
    const { page, errors } = await openWindow(desk, context);
    await addLoad(page);
    await saving(page, 'refused');
    const notice = page.locator('.notice');
    expect(await notice.textContent()).toContain('This browser keeps nothing');
    const toFile = notice.getByRole('button', { name: 'Copy to a file' });
    expect(await handedOver(page, toFile)).toBe(DEMO_FILE);
    await page.getByRole('button', { name: 'Jobs' }).click();
    await page.getByText(/^What this browser keeps cannot be read/).waitFor();
    const count = await loadsOf(page).count();
    await page.reload();
    await stands(page);
    await saving(page, 'refused');
    expect((await loadsOf(page).count()) - count).toBe(stays);
    expect(errors).toEqual([]);
    await context.close();
  },
);

test('of two windows on a job the second is told, and goes on as a copy rather than over the first', async () => {
  const { context, page: first, errors } = await visit(desk);
  await addLoad(first);
  await isKept(first);
  const { page: second, errors: inSecond } = await openWindow(desk, context);
  const count = await loadsOf(first).count();
  expect(await loadsOf(second).count()).toBe(count);

  await addLoad(first);
  await saving(second, 'changed elsewhere');
  await second.getByRole('button', { name: 'Show it as it is there' }).click();
  await expect.poll(() => loadsOf(second).count()).toBe(count + 1);

  await first.getByRole('button', { name: /^Undo: / }).click();
  await saving(second, 'changed elsewhere');
  await addLoad(second);
  await saving(second, 'went on as a copy');
  expect(await second.locator('.notice').textContent()).toContain('both are among the jobs');
  expect(await second.locator('h1').textContent()).toBe(`${DEMO}, a copy`);
  expect(await loadsOf(second).count()).toBe(count + 2);
  expect(await first.locator('h1').textContent()).toBe(DEMO);
  expect(await loadsOf(first).count()).toBe(count);

  await first.getByRole('button', { name: 'Jobs' }).click();
  await first.getByRole('button', { name: `Open ${DEMO}, a copy` }).click();
  await expect.poll(() => loadsOf(first).count()).toBe(count + 2);
  expect([...errors, ...inSecond]).toEqual([]);
  await context.close();
});

test('with the server gone everything is there, and a file that it was to hand over is asked for in words', async () => {
  const alone = await openDesk();
  const { context, page, errors } = await visit(alone);
  await isControlled(page);
  await addLoad(page);
  await isKept(page);
  const count = await loadsOf(page).count();
  await alone.unplug();
  await page.reload();
  await stands(page);
  expect(await loadsOf(page).count()).toBe(count);
  await page.locator('.tab-index-tab').nth(1).click();
  await page.locator('.spring-row').first().waitFor();
  await page.locator('.tab-index-tab').nth(0).click();
  expect(errors).toEqual([]);

  const brought = await openWindow(alone, context, '#job=mine.json');
  const broken = brought.page.locator('.broken-file');
  await broken.waitFor();
  expect(await broken.textContent()).toContain('mine.json could not be read');
  expect(await broken.textContent()).toContain('The program that was to hand it over has ended.');
  expect(await broken.textContent()).toContain('Nothing was changed');
  expect(new URL(brought.page.url()).hash).toBe('');
  expect(brought.errors).toEqual([expect.stringContaining('ERR_CONNECTION_REFUSED')]);
  await context.close();
  await alone.close();
});

test('a newer page waits until it is taken; the window that stays behind works on and is told', async () => {
  const copy = copyBuild(builtPage);
  const served = await openDesk(copy.folder);
  const { context, page: first, errors } = await visit(served);
  await isControlled(first);
  await served.unplug();
  copy.renew();
  await served.plugIn();
  const { page: second, errors: inSecond } = await openWindow(served, context);
  const isNewer = (page: Page) => page.evaluate(() => 'newer' in document.documentElement.dataset);
  await second.getByText('A newer page is ready.').waitFor();
  expect([await isNewer(first), await isNewer(second)]).toEqual([false, false]);

  await addLoad(second);
  await isKept(second);
  const count = await loadsOf(second).count();
  await second.getByRole('button', { name: 'Take it now' }).click();
  await expect.poll(() => isNewer(second)).toBe(true);
  await stands(second);
  await expect.poll(() => loadsOf(second).count()).toBe(count);

  await first.getByText('A newer page was taken in another window.').waitFor();
  expect(await isNewer(first)).toBe(false);
  // A new load opens a part of the page that this window had not fetched, and that only the newer page has.
  await addLoad(first);
  await expect.poll(() => isNewer(first)).toBe(true);
  await stands(first);
  expect(await loadsOf(first).count()).toBe(count);
  expect(inSecond).toEqual([]);
  expect(errors.filter((error) => !error.includes('404 (Not Found)'))).toEqual([]);
  await context.close();
  await served.close();
  copy.remove();
});

/** Waits until the page would work with the server gone. */
async function isControlled(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await page.reload();
  await stands(page);
  await planned(page);
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
}

test('what is said of the keeping stays while the next act is being kept, and the page stays where it is', async () => {
  const { context, page } = await visit(desk);
  await addLoad(page);
  await saving(page, 'may be cleared');
  const notice = page.locator('.notice');
  await notice.waitFor();
  await notice.evaluate((element) => {
    new MutationObserver(() => {
      if (!element.isConnected) document.body.dataset.noticeWent = 'yes';
    }).observe(element.parentElement!, { childList: true });
  });
  await addLoad(page);
  await page.locator('.job-strip-saving[data-saving="may be cleared"]').waitFor();
  await page.getByRole('button', { name: /^Undo: / }).click();
  await isKept(page);
  expect(await page.evaluate(() => document.body.dataset.noticeWent)).toBe(undefined);
  await context.close();
});

test('where working out breaks, the page says what broke and hands the job over, and is not busy for ever', async () => {
  const context = await newBrowser(desk);
  const throws = "self.onmessage = () => { throw new Error('no rest in 40 steps'); };";
  await context.route(/\/worker[^/]*\.js$/, (route) =>
    route.fulfill({ contentType: 'text/javascript', body: throws }),
  );
  const page = await context.newPage();
  await page.goto(desk.url);
  const broken = page.locator('.broken-page');
  await broken.waitFor();
  expect(await broken.textContent()).toContain('no rest in 40 steps');
  expect(await handedOver(page, page.getByRole('button', { name: 'Copy the job to a file' }))).toBe(
    DEMO_FILE,
  );
  await context.close();
});

test('where working out takes long, the page says that it is at it', async () => {
  const context = await newBrowser(desk);
  await context.route(/\/worker[^/]*\.js$/, (route) =>
    route.fulfill({ contentType: 'text/javascript', body: 'self.onmessage = () => {};' }),
  );
  const page = await context.newPage();
  await page.goto(desk.url);
  await page.getByText('working it out …').waitFor();
  await context.close();
});
