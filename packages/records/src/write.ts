import { type JobDocument, job } from './schema.ts';

/**
 * A job as its file: fields in the order of the schema, lists in the order of their ids, two blanks of indent, a line
 * break at the end. The same job gives the same text on every device.
 *
 * A job that has problems in its shape is written as it stands, so that nothing that was typed is lost; reading it
 * names the problems again.
 */
export function writeJob(document: JobDocument): string {
  const read = job.safeParse(document);
  return `${JSON.stringify(read.success ? read.data : document, null, 2)}\n`;
}
