import { incoherences } from './coherence.ts';
import {
  type DocumentKind,
  type DocumentResult,
  parseDocument,
  type Refused,
  readDocument,
} from './reading/document.ts';
import { type JobDocument, job, jobFormat, jobVersion } from './schema.ts';

/** A job, or all that keeps it from being one. */
export type JobResult = { readonly ok: true; readonly job: JobDocument } | Refused;

const kind: DocumentKind<JobDocument> = {
  format: jobFormat,
  version: jobVersion,
  stranger: 'notAJob',
  schema: job,
  incoherences,
};

/** Reads a job file's text. Never throws: whatever is wrong is in the result, in the order in which it must be mended. */
export function readJob(text: string): JobResult {
  return asJob(readDocument(text, kind));
}

/** Reads a job from plain data, as `readJob` does from text. */
export function parseJob(value: unknown): JobResult {
  return asJob(parseDocument(value, kind));
}

function asJob(result: DocumentResult<JobDocument>): JobResult {
  return result.ok ? { ok: true, job: result.document } : result;
}
