/** Makes a fresh clone ready to build and to test. Plain Node, for nothing is installed yet. */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = dirname(dirname(fileURLToPath(import.meta.url)));

/** Installs what is missing. Returns null when the tree is ready, else what stands in the way and what to do. */
export function obstacle() {
  return nodeTooOld() ?? (isInstalled() ? null : install());
}

function nodeTooOld() {
  const needed = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')).engines.node;
  const [major, minor = 0] = needed.replace('>=', '').split('.').map(Number);
  const [ownMajor, ownMinor] = process.versions.node.split('.').map(Number);
  if (ownMajor > major || (ownMajor === major && ownMinor >= minor)) return null;
  return `Node ${process.versions.node} is too old: Node ${major}.${minor} or newer is needed. See https://nodejs.org`;
}

/** npm writes this list last, so a broken-off install counts as none. */
function isInstalled() {
  const installed = join(root, 'node_modules', '.package-lock.json');
  return (
    existsSync(installed) && statSync(installed).mtimeMs >= statSync(join(root, 'package-lock.json')).mtimeMs
  );
}

function install() {
  process.stderr.write('Installing the tools, once: ');
  const started = Date.now();
  // One string through the shell, because on Windows npm is a script. The dev tools are asked for by name, because
  // the build needs them even where NODE_ENV is "production". Short waits between tries: without a network the
  // answer comes after some 15 seconds, not 70.
  const command =
    'npm ci --include=dev --prefer-offline --no-audit --no-fund --loglevel=error --fetch-retry-mintimeout=2000 --fetch-retry-maxtimeout=10000';
  const npm = spawnSync(command, { cwd: root, shell: true, encoding: 'utf8' });
  console.error(
    npm.status === 0 ? `done in ${secondsSince(started)}` : `failed after ${secondsSince(started)}`,
  );
  if (npm.status === 0) return null;
  const words = `${npm.stdout ?? ''}${npm.stderr ?? ''}${npm.error ?? ''}`.trim();
  return `${words}\n${isNetworkFault(words) ? noNetwork : 'npm ci failed; its words are above.'}`;
}

const noNetwork =
  'The npm registry could not be reached. The first start needs a network (or a proxy set for npm); later ones do not.';

function isNetworkFault(words) {
  return /\b(ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ETIMEDOUT|ENETUNREACH|EHOSTUNREACH|ERR_SOCKET_TIMEOUT)\b/.test(
    words,
  );
}

export function secondsSince(started) {
  return `${((Date.now() - started) / 1000).toFixed(1)} s`;
}

/** Runs one of the installed tools, its words going straight to the screen (`output`: where its stdout goes). */
export function runTool(program, args, output = 'inherit') {
  return spawnSync(process.execPath, [join(root, program), ...args], {
    cwd: root,
    stdio: ['inherit', output, 'inherit'],
  });
}

export const compiler = 'node_modules/typescript/bin/tsc';

/** Builds the page into packages/web/dist; says nothing but its faults. Its builder may lie in the package or above it. */
export function buildPage(output = 'inherit') {
  const builder = ['packages/web/node_modules', 'node_modules']
    .map((folder) => `${folder}/vite/bin/vite.js`)
    .find((path) => existsSync(join(root, path)));
  if (builder === undefined) throw new Error('vite is not installed: remove node_modules and run this again');
  return runTool(builder, ['build', '--logLevel', 'error', 'packages/web'], output);
}
