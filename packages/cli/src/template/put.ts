import type { JobDocument } from '@sagwright/records/schema';
import { writeJob } from '@sagwright/records/write';
import { type Put, put as putPart } from '@sagwright/workbench/template/put';
import { putWords } from '@sagwright/workbench/words/template';
import { type ExitCode, exitCodes } from '../exit.ts';
import { readOrReport, report } from '../readOrReport.ts';
import type { Output } from '../terminal/output.ts';
import { harmless, wrap } from '../terminal/text.ts';
import { argumentsOf, isMisused, type Misused } from '../usage.ts';
import { templateOrReport, writeOrReport } from './files.ts';

/** `sagwright put TEMPLATE JOB FILE`: another shock or fork in a job. */
export async function put(args: readonly string[], out: Output, errors: Output): Promise<ExitCode | Misused> {
  const read = argumentsOf(args, { over: { type: 'boolean' } });
  if (isMisused(read)) return read;
  const [templateFile, jobFile, file, ...more] = read.positionals;
  if (templateFile === undefined || jobFile === undefined || file === undefined || more.length > 0) {
    return {
      misused:
        'Three files are needed: a template, a job, and the job to write: put my-shock.json my-job.json new.json',
    };
  }
  const template = await templateOrReport(templateFile, errors);
  if (template === null) return exitCodes.problems;
  if (template.kind === 'machine') {
    return {
      misused: `${templateFile} holds a whole machine; a job is begun with it: sagwright new ${file} --from ${templateFile}`,
    };
  }
  const job = await readOrReport(jobFile, errors);
  if (job === null) return exitCodes.problems;
  const there = putPart(template, job);
  if (!there.ok) {
    errors.write(
      `The ${template.kind} "${harmless(template.name)}" does not go into this job as it stands.\n`,
    );
    report(jobFile, there.problems, errors);
    return exitCodes.problems;
  }
  if (!writeOrReport(file, writeJob(there.job), read.values.over === true, errors)) return exitCodes.usage;
  out.write(`${lines(job, there, file, out).join('\n')}\n`);
  return exitCodes.planned;
}

function lines(
  job: JobDocument,
  there: Extract<Put, { ok: true }>,
  file: string,
  { width, paint }: Output,
): readonly string[] {
  return [
    paint(`Written: ${harmless(file)}`, 'wanted'),
    ...putWords(job, there).flatMap((line) => wrap(harmless(line), width, '', '  ')),
  ];
}
