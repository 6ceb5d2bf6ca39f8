/** What the README says can be done: its example is run, its commands and its links are there. */
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { expect, test, vi } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));
const readme = readFileSync(join(root, 'README.md'), 'utf8');

test('its example prints what it says', async () => {
  const [, code, output] = /```js\n([\s\S]*?)```[\s\S]*?```\n([\s\S]*?)```/.exec(readme)!;
  const scratch = join(root, '.scratch');
  mkdirSync(scratch, { recursive: true });
  const folder = mkdtempSync(join(scratch, 'readme-'));
  const log = vi.spyOn(console, 'log').mockImplementation(() => {});
  try {
    const file = join(folder, 'example.mjs');
    writeFileSync(file, code!);
    await import(pathToFileURL(file).href);
    const printed = log.mock.calls.map(([line]) => String(line));
    expect(`${printed.join('\n')}\n`).toBe(output);
  } finally {
    log.mockRestore();
    rmSync(folder, { recursive: true });
  }
});

test('the commands and files that it names are there', () => {
  const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { scripts: object };
  const named = [...readme.matchAll(/npm (?:run )?(start|test|bench|sagwright)/g)].map(([, name]) => name!);
  expect(named.length).toBeGreaterThan(3);
  for (const name of named) expect(scripts).toHaveProperty(name);
  const links = [...readme.matchAll(/\]\(([^)]+)\)/g)].map(([, path]) => path!);
  expect(links.length).toBeGreaterThan(8);
  expect(links.filter((path) => !existsSync(join(root, path)))).toEqual([]);
});
