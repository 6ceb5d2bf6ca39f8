import { check } from './check/check.ts';
import { compare } from './compare/compare.ts';
import { type ExitCode, exitCodes } from './exit.ts';
import { helpFor, version } from './help.ts';
import { measured } from './measured/measured.ts';
import { newJob } from './new/new.ts';
import { open } from './open/open.ts';
import { plan } from './plan/plan.ts';
import { tape } from './tape/tape.ts';
import { keep } from './template/keep.ts';
import { put } from './template/put.ts';
import { type Output, outputTo } from './terminal/output.ts';
import { isMisused, type Misused } from './usage.ts';
import { why } from './why/why.ts';
import { worklist } from './worklist/worklist.ts';

type Command = (args: readonly string[], out: Output, errors: Output) => Promise<ExitCode | Misused>;

const commands: ReadonlyMap<string, Command> = new Map([
  ['plan', plan],
  ['check', check],
  ['why', why],
  ['measured', measured],
  ['tape', tape],
  ['worklist', worklist],
  ['new', newJob],
  ['open', open],
  ['keep', keep],
  ['put', put],
  ['compare', compare],
]);

/** Runs one command line and gives its exit code. */
export async function run(args: readonly string[]): Promise<ExitCode> {
  const [out, errors] = [outputTo(process.stdout), outputTo(process.stderr)];
  const [name, ...rest] = args;
  if (args.includes('--version')) {
    out.write(`sagwright ${version()}\n`);
    return exitCodes.planned;
  }
  if (name === undefined || args.includes('--help') || args.includes('-h')) {
    (name === undefined ? errors : out).write(helpFor(name ?? ''));
    return name === undefined ? exitCodes.usage : exitCodes.planned;
  }
  const command = commands.get(name);
  const answer =
    command === undefined ? { misused: `No command "${name}"` } : await command(rest, out, errors);
  if (!isMisused(answer)) return answer;
  errors.write(`${answer.misused}.\nSee: sagwright ${command === undefined ? '' : `${name} `}--help\n`);
  return exitCodes.usage;
}
