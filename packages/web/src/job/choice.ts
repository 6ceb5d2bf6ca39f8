import type { JobDocument } from '@sagwright/records/schema';
import { type Edit, write } from './edits.ts';

/** Picks the spring that is planned at an end; null leaves it to the suggestion again. */
export function pickSpring(job: JobDocument, end: 'rear' | 'front', spring: string | null): readonly Edit[] {
  return choose(job, end, spring);
}

/** Writes one part of what is chosen; null takes it out, and the choice with its last part. */
export function choose(
  job: JobDocument,
  part: keyof NonNullable<JobDocument['choice']>,
  value: unknown,
): readonly Edit[] {
  const isLast = Object.keys(job.choice ?? {}).every((each) => each === part);
  if (value === null && isLast) return [write(job, ['choice'], undefined)];
  return [write(job, ['choice', part], value ?? undefined)];
}
