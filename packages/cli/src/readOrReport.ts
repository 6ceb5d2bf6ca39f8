import type { JobDocument } from '@sagwright/records/schema';
import { type JobPlan, planJob } from '@sagwright/workbench/path';
import { harmlessJob } from './harmlessJob.ts';
import { jobFile } from './jobFile.ts';
import { type FileProblem, problemLines } from './problems.ts';
import type { Output } from './terminal/output.ts';
import { harmless } from './terminal/text.ts';

/** The job in a file; null, and all that is wrong with it said, where there is none. */
export async function readOrReport(name: string, errors: Output): Promise<JobDocument | null> {
  const file = await jobFile(name);
  if (file.ok) return file.job;
  if ('unreadable' in file) errors.write(`${harmless(file.unreadable)}\n`);
  else report(name, file.problems, errors);
  return null;
}

/** The job in a file, planned for a person to read, or (`asData`) for a program; null, and all that is in the way said, where it cannot be. */
export async function plannedOrReport(name: string, errors: Output, asData = false): Promise<JobPlan | null> {
  const job = await readOrReport(name, errors);
  return job === null ? null : planOrReport(name, asData ? job : harmlessJob(job), errors);
}

/** A job that was read, planned; null, and all that is in the way said, where it cannot be. */
export function planOrReport(name: string, job: JobDocument, errors: Output): JobPlan | null {
  const planned = planJob(job);
  if (planned.ok) return planned;
  report(name, planned.problems, errors);
  return null;
}

export function report(name: string, problems: readonly FileProblem[], errors: Output): void {
  errors.write(`${problemLines(name === '-' ? 'standard input' : name, problems, errors).join('\n')}\n`);
}
