import { mkdtemp, writeFile } from 'node:fs/promises';
import { get } from 'node:http';
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

test('a job file is handed over to the byte when the page asks, and not where there is none', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'page-'));
  await writeFile(join(folder, 'index.html'), '<p>here</p>');
  const bytes = Buffer.of(0xef, 0xbb, 0xbf, 0x7b, 0xff, 0x7d);
  const served = await servePage(folder, 0, bytes);
  const handed = await fetch(`${served.url}job.json`);
  expect(Buffer.from(await handed.arrayBuffer())).toEqual(bytes);
  await served.close();
  const without = await servePage(folder, 0);
  expect((await fetch(`${without.url}job.json`)).status).toBe(404);
  await without.close();
});

test('nothing is given to a page that asks by a name of its own', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'page-'));
  await writeFile(join(folder, 'index.html'), '<p>here</p>');
  const served = await servePage(folder, 0, Buffer.from('{}'));
  const status = await new Promise((resolve, reject) => {
    const headers = { host: 'strange.example' };
    get(`${served.url}job.json`, { headers }, (answer) => resolve(answer.resume().statusCode)).on(
      'error',
      reject,
    );
  });
  expect(status).toBe(421);
  await served.close();
});
