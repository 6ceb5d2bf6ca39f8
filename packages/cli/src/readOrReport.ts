import type { JobDocument } from '@sagwright/records/schema';
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

export function report(name: string, problems: readonly FileProblem[], errors: Output): void {
  errors.write(`${problemLines(name === '-' ? 'standard input' : name, problems, errors).join('\n')}\n`);
}
