import { existsSync, writeFileSync } from 'node:fs';
import { basename } from 'node:path';
import type { JobDocument } from '@sagwright/records/schema';
import { writeJob } from '@sagwright/records/write';
import { firstJob } from '@sagwright/workbench/first/firstJob';
import { planJob } from '@sagwright/workbench/path';
import { type ExitCode, exitCodes } from '../exit.ts';
import { report } from '../readOrReport.ts';
import { newFrom } from '../template/newFrom.ts';
import type { Output } from '../terminal/output.ts';
import { harmless, wrap } from '../terminal/text.ts';
import { argumentsOf, isMisused, type Misused } from '../usage.ts';
import { type Asker, askerOn } from './asker.ts';
import { askFirst } from './askFirst.ts';
import { AnswersEnded, askWord } from './questions.ts';

/** `sagwright new [FILE]`: a first job from eight answers, or from a machine that was kept. */
export async function newJob(
  args: readonly string[],
  out: Output,
  errors: Output,
): Promise<ExitCode | Misused> {
  const read = argumentsOf(args, { from: { type: 'string' }, over: { type: 'boolean' } });
  if (isMisused(read)) return read;
  const [file = 'job.json', ...more] = read.positionals;
  if (more.length > 0) return { misused: `One file at a time; found ${read.positionals.join(', ')}` };
  const { from, over: mayOver = false } = read.values;
  if (from !== undefined) return newFrom(file, from, mayOver, out, errors);
  if (mayOver) return { misused: '--over goes with --from; without it the program asks' };
  const asker = askerOn(process.stdin, process.stdout);
  try {
    const over = await mayWrite(asker, file);
    if (!over) {
      errors.write(`${harmless(file)} was left as it is.\n`);
      return exitCodes.usage;
    }
    const job = firstJob(await askFirst(asker), nameFrom(file));
    writeFileSync(file, writeJob(job), { flag: over === 'over it' ? 'w' : 'wx' });
    return told(file, job, out, errors);
  } catch (error) {
    if (!(error instanceof AnswersEnded)) throw error;
    errors.write('\nThe answers ended before all was asked; nothing was written.\n');
    return exitCodes.usage;
  } finally {
    asker.close();
  }
}

/** The file's name without its ending is what the job is called first. */
function nameFrom(file: string): string {
  const name = harmless(basename(file))
    .replace(/\.json$/, '')
    .trim()
    .slice(0, 120);
  return name === '' ? 'first job' : name;
}

async function mayWrite(asker: Asker, file: string): Promise<'new' | 'over it' | false> {
  if (!existsSync(file)) return 'new';
  const answer = await askWord(asker, `${harmless(file)} is there already. Write over it`, ['yes', 'no']);
  return answer === 'yes' ? 'over it' : false;
}

/** What was written, what was taken for granted, and where to go on. */
function told(file: string, job: JobDocument, out: Output, errors: Output): ExitCode {
  const said = [
    `Written: ${harmless(file)}. The job is named after it; call it what you like.`,
    job.note ?? '',
    'What else was not asked is assumed, and said: sagwright check lists it. Limits of the plate belong into "limits".',
    `Next: sagwright plan ${harmless(file)}`,
  ];
  out.write(`\n${said.flatMap((line) => wrap(line, out.width)).join('\n')}\n`);
  const planned = planJob(job);
  if (planned.ok) return exitCodes.planned;
  report(file, planned.problems, errors);
  return exitCodes.problems;
}
