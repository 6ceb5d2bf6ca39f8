import type { JobDocument } from '@sagwright/records/schema';
import { writeJob } from '@sagwright/records/write';
import { at } from '../job/edits.ts';
import { jobFileName } from './fileName.ts';
import { saveFile } from './saveFile.ts';

/** Copies the document on the table, or on the shelf, to a file named after it; what is no job yet goes as it stands. */
export function saveJob(document: unknown): void {
  saveFile(jobFileName(at(document, ['name'])), writeJob(document as JobDocument));
}
