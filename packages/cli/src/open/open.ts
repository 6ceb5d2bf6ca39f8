import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type ExitCode, exitCodes } from '../exit.ts';
import { bytesOf, isSystemError } from '../jobFile.ts';
import type { Output } from '../terminal/output.ts';
import { harmless } from '../terminal/text.ts';
import { argumentsOf, isMisused, type Misused } from '../usage.ts';
import { canShowBrowser, showInBrowser } from './browser.ts';
import { type Served, servePage } from './serve.ts';

const options = {
  port: { type: 'string' },
  'no-browser': { type: 'boolean' },
} as const;

/**
 * The same port each time: a browser keeps its jobs by the address of the page, and at another port would show none of them.
 * Free of any registered use that we know of (from memory), and outside the ranges from which systems hand ports out.
 */
const USUAL_PORT = 7263;

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
  const served = await serve(port, file);
  if (typeof served === 'string') {
    errors.write(`${served}\n`);
    return exitCodes.problems;
  }
  const address = file === undefined ? served.url : `${served.url}#job=${encodeURIComponent(nameOf(file))}`;
  out.write(`The workbench is at ${address}\nIt is served to this machine only; Ctrl+C ends it.\n`);
  if (values['no-browser'] !== true && canShowBrowser()) {
    await showInBrowser(address, () =>
      errors.write('No browser could be started; open the address in one.\n'),
    );
  }
  await once(process, 'SIGINT');
  await served.close();
  return exitCodes.planned;
}

/** The page being served; or, in words, why it is not. */
async function serve(port: number, file: string | undefined): Promise<Served | string> {
  const job = file === undefined ? null : await bytesOf(file);
  if (job !== null && 'unreadable' in job) return harmless(job.unreadable);
  if (!existsSync(`${page}/index.html`)) {
    return 'The page is not built yet: run "npm run build:page" in the repository first.';
  }
  try {
    return await servePage(page, port, job);
  } catch (error) {
    if (!isSystemError(error)) throw error;
    return error.code === 'EADDRINUSE' ? portTaken(port) : `Port ${port}: ${error.message}`;
  }
}

function portTaken(port: number): string {
  return `Port ${port} is taken, perhaps by a workbench that is open already: http://127.0.0.1:${port}/
End that one first, or take another with --port. A browser keeps its jobs by
port: at another one it shows none of those kept here.`;
}

function nameOf(file: string): string {
  return file === '-' ? 'job.json' : basename(file);
}

/** Port 0 lets the system choose a free one. */
function portOf(text: string | undefined): number | Misused {
  if (text === undefined) return USUAL_PORT;
  const port = Number(text);
  return /^\d+$/.test(text) && port <= 65535
    ? port
    : { misused: `--port is a whole number from 0 to 65535; found ${text}` };
}
