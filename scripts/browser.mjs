/** Debian's Chromium for the browser tests: found, or installed when run as root; else one line that says what to do. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const places = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** Path of a browser, by the variable CHROMIUM or where Debian and its kin put it; null where there is none. */
export function browserPath() {
  const named = process.env.CHROMIUM;
  if (named) return existsSync(named) ? named : null;
  return places.find((place) => existsSync(place)) ?? null;
}

/** Makes sure that there is a browser. Returns null when there is, else what stands in the way and what to do. */
export function browserObstacle() {
  if (browserPath() !== null) return null;
  const needed =
    'The browser tests need Chromium: install it with "apt-get install chromium", or name one in the variable CHROMIUM.';
  const isDebian = existsSync('/usr/bin/apt-get');
  if (!isDebian || process.getuid?.() !== 0) return needed;
  console.error('Installing Chromium from Debian, once.');
  const words = [];
  for (const args of [['update'], ['install', '-y', '--no-install-recommends', 'chromium']]) {
    const { status, stdout, stderr } = spawnSync('apt-get', ['-q', ...args], {
      encoding: 'utf8',
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
    if (status !== 0)
      words.push(`apt-get ${args.join(' ')}: ${`${stdout ?? ''}${stderr ?? ''}`.trim().slice(-400)}`);
  }
  return browserPath() === null ? `${words.join('\n')}\n${needed}` : null;
}
