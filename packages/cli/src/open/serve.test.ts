import { mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { servePage } from './serve.ts';

test('the page is served to this machine on a free port, and nothing outside its folder', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'page-'));
  await writeFile(join(folder, 'index.html'), '<p>here</p>');
  const served = await servePage(folder, 0);
  expect(served.url).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
  const page = await fetch(served.url);
  expect(await page.text()).toBe('<p>here</p>');
  expect(page.headers.get('content-security-policy')).toContain("default-src 'self'");
  const outside = await fetch(`${served.url}..%2f..%2fetc/passwd`);
  expect(await outside.text()).not.toContain('root:');
  await served.close();
  await expect(fetch(served.url)).rejects.toThrow();
});

test('a port that is taken is told, not swallowed', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'page-'));
  const first = await servePage(folder, 0);
  await expect(servePage(folder, Number(new URL(first.url).port))).rejects.toThrow(/EADDRINUSE/);
  await first.close();
});

test('a job file is handed over as it is when the page asks, and not where there is none', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'page-'));
  await writeFile(join(folder, 'index.html'), '<p>here</p>');
  const served = await servePage(folder, 0, () => '{"format": 1}');
  expect(await (await fetch(`${served.url}job.json`)).text()).toBe('{"format": 1}');
  await served.close();
  const without = await servePage(folder, 0);
  expect((await fetch(`${without.url}job.json`)).status).toBe(404);
  await without.close();
});
