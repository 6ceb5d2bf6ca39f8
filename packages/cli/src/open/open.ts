import { once } from 'node:events';
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import openBrowser from 'open';
import { type ExitCode, exitCodes } from '../exit.ts';
import type { Output } from '../terminal/output.ts';
import { harmless } from '../terminal/text.ts';
import { argumentsOf, isMisused, type Misused } from '../usage.ts';
import { servePage } from './serve.ts';

const options = {
  port: { type: 'string' },
  'no-browser': { type: 'boolean' },
} as const;

/** The built page, beside this package in the repository and as a package of its own. */
const page = fileURLToPath(new URL('../../../web/dist', import.meta.url));

/**
 * Serves the page to this machine until it is interrupted, prints its address, and opens a browser where there is one.
 * With a file, the page opens that job; the file itself is not touched.
 */
export async function open(
  args: readonly string[],
  out: Output,
  errors: Output,
): Promise<ExitCode | Misused> {
  const read = argumentsOf(args, options);
  if (isMisused(read)) return read;
  const { values, positionals } = read;
  const [file, ...more] = positionals;
  if (more.length > 0) return { misused: `One job file at a time; found ${positionals.join(', ')}` };
  const port = portOf(values.port);
  if (isMisused(port)) return port;
  if (!existsSync(`${page}/index.html`)) {
    errors.write('The page is not built yet: run "npm run build:page" in the repository first.\n');
    return exitCodes.problems;
  }
  if (file !== undefined && !existsSync(file)) {
    errors.write(`${harmless(file)}: there is no such file.\n`);
    return exitCodes.problems;
  }
  const served = await servePage(page, port, file === undefined ? null : () => readFileSync(file, 'utf8'));
  const address = file === undefined ? served.url : `${served.url}#job`;
  out.write(`The workbench is at ${address}\nIt is served to this machine only; Ctrl+C ends it.\n`);
  if (values['no-browser'] !== true && hasScreen()) await openBrowser(address);
  await once(process, 'SIGINT');
  await served.close();
  return exitCodes.planned;
}

/** Port 0 lets the system choose a free one. */
function portOf(text: string | undefined): number | Misused {
  if (text === undefined) return 0;
  const port = Number(text);
  return Number.isInteger(port) && port >= 0 && port <= 65535
    ? port
    : { misused: `--port is a whole number from 0 to 65535; found ${text}` };
}

/** Whether a browser could be seen: not in a build, and on Linux only under a desktop. */
function hasScreen(): boolean {
  const { CI, DISPLAY, WAYLAND_DISPLAY } = process.env;
  if (CI !== undefined) return false;
  return process.platform !== 'linux' || DISPLAY !== undefined || WAYLAND_DISPLAY !== undefined;
}
