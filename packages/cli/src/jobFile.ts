import { readFileSync } from 'node:fs';
import { buffer } from 'node:stream/consumers';
import { type JobResult, readJob } from '@sagwright/records/read';

/** A file that cannot be read at all, and why. */
export interface Unreadable {
  readonly unreadable: string;
}

/** A job from a file, or from standard input where the name is "-"; or why the file cannot be read at all. */
export type JobFile = JobResult | ({ readonly ok: false } & Unreadable);

export async function jobFile(name: string): Promise<JobFile> {
  const bytes = await bytesOf(name);
  return 'unreadable' in bytes ? { ok: false, ...bytes } : readJob(bytes.toString('utf8'));
}

/** What the file holds, to the byte. */
export async function bytesOf(name: string): Promise<Buffer | Unreadable> {
  try {
    return name === '-' ? await buffer(process.stdin) : readFileSync(name);
  } catch (error) {
    if (!isSystemError(error)) throw error;
    return { unreadable: `${name}: ${reasonOf(error)}` };
  }
}

export function isSystemError(error: unknown): error is NodeJS.ErrnoException {
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
