import { spawn, spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../../..', import.meta.url));

/** Builds the program, so that what is tested is what stands in the sources now. */
export function build(): void {
  const compiler = `${root}node_modules/typescript/bin/tsc`;
  const { status, stdout } = spawnSync(process.execPath, [compiler, '-b', 'packages/cli'], {
    cwd: root,
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`the build failed:\n${stdout}`);
}

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly errors: string;
}

/** Runs the built program as a shell would, in a folder, with what comes in through the pipe. */
export function run(args: readonly string[], folder: string, input = ''): Promise<Ran> {
  const program = spawn(process.execPath, [`${root}packages/cli/dist/main.js`, ...args], {
    cwd: folder,
    env: { ...process.env, FORCE_COLOR: undefined },
  });
  let out = '';
  let errors = '';
  program.stdout.setEncoding('utf8').on('data', (text: string) => {
    out += text;
  });
  program.stderr.setEncoding('utf8').on('data', (text: string) => {
    errors += text;
  });
  program.stdin.on('error', () => undefined); // a program that needs no input closes its end
  program.stdin.end(input);
  return new Promise((resolve, reject) => {
    program.on('error', reject);
    program.on('close', (code) => resolve({ code, out, errors }));
  });
}
