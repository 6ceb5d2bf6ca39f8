import type { JobDocument } from '@sagwright/records/schema';
import { templateKinds } from '@sagwright/records/schema/template';
import { type KeptTemplate, keepTemplate } from '@sagwright/records/template/keep';
import { writeTemplate } from '@sagwright/records/writeTemplate';
import { keptWords } from '@sagwright/workbench/words/template';
import { type ExitCode, exitCodes } from '../exit.ts';
import { readOrReport, report } from '../readOrReport.ts';
import type { Output } from '../terminal/output.ts';
import { harmless, wrap } from '../terminal/text.ts';
import { argumentsOf, isMisused, type Misused } from '../usage.ts';
import { writeOrReport } from './files.ts';

/** `sagwright keep PART JOB FILE`: a machine, its shock or its fork as a template of its own. */
export async function keep(
  args: readonly string[],
  out: Output,
  errors: Output,
): Promise<ExitCode | Misused> {
  const read = argumentsOf(args, {
    name: { type: 'string' },
    note: { type: 'string' },
    over: { type: 'boolean' },
  });
  if (isMisused(read)) return read;
  const [word, jobFile, file, ...more] = read.positionals;
  const kind = templateKinds.find((each) => each === word);
  if (kind === undefined)
    return { misused: `What to keep is ${templateKinds.join(', ')}; found ${word ?? 'nothing'}` };
  if (jobFile === undefined || file === undefined || more.length > 0) {
    return { misused: 'A job file is needed, and the file to write: keep shock my-job.json my-shock.json' };
  }
  const job = await readOrReport(jobFile, errors);
  if (job === null) return exitCodes.problems;
  const name = (read.values.name ?? job.machine.name).trim();
  if (name === '' || name.length > 120) return { misused: '--name has 1 to 120 letters' };
  const note = (read.values.note ?? '').trim();
  if (note.length > 4000) return { misused: '--note has 4000 letters at most' };
  const kept = keepTemplate(job, kind, name);
  if (!kept.ok) {
    report(jobFile, kept.problems, errors);
    return exitCodes.problems;
  }
  if (
    !writeOrReport(
      file,
      writeTemplate({ ...kept.template, ...(note !== '' && { note }) }),
      read.values.over === true,
      errors,
    )
  )
    return exitCodes.usage;
  out.write(`${keptLines(job, kept, file, out).join('\n')}\n`);
  return exitCodes.planned;
}

function keptLines(
  job: JobDocument,
  kept: Extract<KeptTemplate, { ok: true }>,
  file: string,
  { width, paint }: Output,
): readonly string[] {
  const { template } = kept;
  return [
    paint(`Kept: the ${template.kind} "${harmless(template.name)}", in ${harmless(file)}`, 'wanted'),
    ...keptWords(job, kept).flatMap((line) => wrap(harmless(line), width, '', '  ')),
  ];
}
