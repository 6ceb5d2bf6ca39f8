import { readFileSync } from 'node:fs';
import { text } from 'node:stream/consumers';
import { type JobResult, readJob } from '@sagwright/records/read';

/** A job from a file, or from standard input where the name is "-"; or why the file cannot be read at all. */
export type JobFile = JobResult | { readonly ok: false; readonly unreadable: string };

export async function jobFile(name: string): Promise<JobFile> {
  try {
    return readJob(name === '-' ? await text(process.stdin) : readFileSync(name, 'utf8'));
  } catch (error) {
    if (!isSystemError(error)) throw error;
    return { ok: false, unreadable: `${name}: ${reasonOf(error)}` };
  }
}

function isSystemError(error: unknown): error is NodeJS.ErrnoException {
  return error instanceof Error && 'code' in error && 'syscall' in error;
}

function reasonOf(error: NodeJS.ErrnoException): string {
  switch (error.code) {
    case 'ENOENT':
      return 'there is no such file.';
    case 'EISDIR':
      return 'this is a folder, not a job file.';
    case 'EACCES':
      return 'this file may not be read by you.';
    default:
      return error.message;
  }
}
