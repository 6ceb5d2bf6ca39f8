import { writeJob } from '@sagwright/records/write';
import { jobFrom } from '@sagwright/workbench/template/begin';
import { type ExitCode, exitCodes } from '../exit.ts';
import type { Output } from '../terminal/output.ts';
import { harmless, wrap } from '../terminal/text.ts';
import type { Misused } from '../usage.ts';
import { templateOrReport, writeOrReport } from './files.ts';

/** `sagwright new FILE --from TEMPLATE`: a job begun with a machine that was kept; nothing is asked. */
export async function newFrom(
  file: string,
  from: string,
  over: boolean,
  out: Output,
  errors: Output,
): Promise<ExitCode | Misused> {
  const template = await templateOrReport(from, errors);
  if (template === null) return exitCodes.problems;
  if (template.kind !== 'machine') {
    return {
      misused: `${from} holds a ${template.kind}; it goes into a job that is there: sagwright put ${from} JOB FILE`,
    };
  }
  const job = jobFrom(template);
  if (!writeOrReport(file, writeJob(job), over, errors)) return exitCodes.usage;
  const said = [`Written: ${harmless(file)}`, job.note ?? '', `Next: sagwright check ${harmless(file)}`];
  out.write(`${said.flatMap((line) => wrap(harmless(line), out.width)).join('\n')}\n`);
  return exitCodes.planned;
}
