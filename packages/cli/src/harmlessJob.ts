import type { JobDocument } from '@sagwright/records/schema';
import { harmless } from './terminal/text.ts';

/** The job with every name made fit to be shown on a terminal; nothing that is computed with changes. */
export function harmlessJob(job: JobDocument): JobDocument {
  return harmlessTexts(job);
}

/** The same for any part of a file. */
export function harmlessTexts<T>(part: T): T {
  return mapTexts(part) as T;
}

function mapTexts(value: unknown): unknown {
  if (typeof value === 'string') return harmless(value);
  if (Array.isArray(value)) return value.map(mapTexts);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, mapTexts(inner)]));
}
