import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContext, chromium, type Page } from '@playwright/test';
import { expect } from 'vitest';
import { browserPath } from '../../../scripts/browser.mjs';
import { type Served, servePage } from '../../cli/src/open/serve.ts';

/** What the tests look at: the built page, served as the terminal program serves it, in Debian's Chromium. */
export interface Desk {
  readonly url: string;
  readonly browser: Browser;
  /** The server alone, as when the program is ended while the page stays open. */
  readonly unplug: () => Promise<void>;
  /** The server at the same address again, as when the program is started anew. */
  readonly plugIn: () => Promise<void>;
  readonly close: () => Promise<void>;
}

const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Where the page was built. */
export const builtPage = fileURLToPath(new URL('../dist', import.meta.url));

export async function openDesk(folder = builtPage): Promise<Desk> {
  const executablePath = browserPath();
  if (executablePath === null) throw new Error('No Chromium: run "npm test", which installs or asks for it');
  let served: Served | null = await servePage(folder, 0);
  const { url } = served;
  const browser = await chromium.launch({ executablePath, args: flags });
  const unplug = async (): Promise<void> => {
    await served?.close();
    served = null;
  };
  return {
    url,
    browser,
    unplug,
    plugIn: async () => {
      served = await servePage(folder, Number(new URL(url).port));
    },
    close: async () => {
      await browser.close();
      await unplug();
    },
  };
}

export const sizes = {
  phone: { width: 390, height: 844 },
  tablet: { width: 810, height: 1080 },
  desktop: { width: 1440, height: 900 },
} as const;

/** A window of the page, and what it said on its console as an error: an error of the test. */
export interface Visit {
  readonly context: BrowserContext;
  readonly page: Page;
  readonly errors: readonly string[];
}

/** A new person with an empty browser. */
export async function visit(
  desk: Desk,
  size: keyof typeof sizes = 'tablet',
  theme: 'sun' | 'truck' = 'sun',
): Promise<Visit> {
  return openWindow(desk, await newBrowser(desk, size, theme));
}

/** A browser in which nothing is kept yet, without a window. */
export function newBrowser(
  desk: Desk,
  size: keyof typeof sizes = 'tablet',
  theme: 'sun' | 'truck' = 'sun',
): Promise<BrowserContext> {
  return desk.browser.newContext({
    viewport: sizes[size],
    colorScheme: theme === 'sun' ? 'light' : 'dark',
    hasTouch: size !== 'desktop',
    reducedMotion: 'reduce',
  });
}

/** One more window of the same browser; `hash` ends its address. */
export async function openWindow(desk: Desk, context: BrowserContext, hash = ''): Promise<Visit> {
  const page = await context.newPage();
  const errors: string[] = [];
  page.on('pageerror', (error) => void errors.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  await page.goto(`${desk.url}${hash}`);
  await stands(page);
  return { context, page, errors };
}

/** Waits until a page that is loaded, or loaded again, shows its machine. */
export async function stands(page: Page): Promise<void> {
  await page.getByRole('group', { name: 'Loads' }).waitFor({ timeout: 10_000 });
}

/** Opens a job's text on the page as a file, and waits for its plan. */
export async function openText(page: Page, text: string): Promise<void> {
  await page.getByRole('button', { name: 'Jobs' }).click();
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'job.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  const { name } = JSON.parse(text) as { readonly name: string };
  await expect.poll(() => page.locator('h1').textContent()).toBe(name);
  await page.locator('.jobs-sheet').waitFor({ state: 'detached' });
  await planned(page);
}

/** Waits until the plan on the page is that of the job as it stands. */
export async function planned(page: Page): Promise<void> {
  await page.locator('main[aria-busy="false"]').waitFor();
}

/** The job on the table as the page would save it. */
export async function savedText(page: Page): Promise<string> {
  await page.getByRole('button', { name: 'Jobs' }).click();
  const download = page.waitForEvent('download');
  await page
    .getByRole('button', { name: /^Copy .* to a file$/ })
    .first()
    .click();
  const text = readFileSync(await (await download).path(), 'utf8');
  await page.getByRole('button', { name: 'Jobs' }).click();
  return text;
}

/** The text of an example. */
export function exampleText(name: string): string {
  return readFileSync(new URL(`../../../examples/${name}.json`, import.meta.url), 'utf8');
}
