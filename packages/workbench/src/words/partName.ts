import type { JobDocument } from '@sagwright/records/schema';
import { whereInWords } from '@sagwright/records/wording/where';
import { comparedFields } from './english/comparedFields.ts';
import { figureName, nameFrom } from './names.ts';

/** What any field of a job is called: a figure, a word, or a whole part. */
export function partName(job: JobDocument, path: string): string {
  const steps = path.split('.').map((step) => (/^\d+$/.test(step) ? Number(step) : step));
  return figureName(job, path) ?? nameFrom(comparedFields, job, path) ?? whereInWords(steps);
}
