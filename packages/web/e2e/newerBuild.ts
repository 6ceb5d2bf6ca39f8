import { cpSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A copy of the built page that a test may change while it is served. */
export interface CopiedBuild {
  readonly folder: string;
  /** Makes it another build: no script or style sheet keeps its name, as when all of it was changed and built anew. */
  readonly renew: () => void;
  readonly remove: () => void;
}

export function copyBuild(built: string): CopiedBuild {
  const folder = mkdtempSync(join(tmpdir(), 'sagwright-page-'));
  cpSync(built, folder, { recursive: true });
  return { folder, renew: () => renew(folder), remove: () => rmSync(folder, { recursive: true }) };
}

const hashed = /-([\w-]{8})\.(?:js|css)$/;

function renew(folder: string): void {
  const assets = join(folder, 'assets');
  const hashes = readdirSync(assets).flatMap((name) => hashed.exec(name)?.[1] ?? []);
  const renamed = (text: string): string =>
    hashes.reduce((all, hash) => all.replaceAll(hash, `newer${hash.slice(5)}`), text);
  for (const name of readdirSync(assets)) {
    if (/\.(?:js|css)$/.test(name)) rewrite(join(assets, name), renamed);
    renameSync(join(assets, name), join(assets, renamed(name)));
  }
  rewrite(join(folder, 'index.html'), (text) => renamed(text).replace('<html', '<html data-newer'));
  // The service worker tells a newer page by the list of what belongs to it.
  rewrite(join(folder, 'sw.js'), (text) =>
    renamed(text).replace(/(url:"index.html",revision:")\w+/, '$1newer'),
  );
}

function rewrite(file: string, change: (text: string) => string): void {
  writeFileSync(file, change(readFileSync(file, 'utf8')));
}
