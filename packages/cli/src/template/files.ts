import { writeFileSync } from 'node:fs';
import { readEither } from '@sagwright/records/readEither';
import { readTemplate } from '@sagwright/records/readTemplate';
import type { JobDocument } from '@sagwright/records/schema';
import type { Template } from '@sagwright/records/schema/template';
import { bytesOf, isSystemError } from '../jobFile.ts';
import { report } from '../readOrReport.ts';
import type { Output } from '../terminal/output.ts';
import { harmless } from '../terminal/text.ts';

export type Either =
  | { readonly kind: 'job'; readonly job: JobDocument }
  | { readonly kind: 'template'; readonly template: Template };

/** The job or the template in a file; null, and all that is wrong with it said, where it is neither. */
export async function eitherOrReport(name: string, errors: Output): Promise<Either | null> {
  const text = await textOrReport(name, errors);
  if (text === null) return null;
  const read = readEither(text);
  if (read.kind !== 'neither') return read;
  report(name, read.problems, errors);
  return null;
}

/** The template in a file; null, and all that is wrong with it said, where there is none. */
export async function templateOrReport(name: string, errors: Output): Promise<Template | null> {
  const text = await textOrReport(name, errors);
  if (text === null) return null;
  const read = readTemplate(text);
  if (read.ok) return read.template;
  report(name, read.problems, errors);
  return null;
}

async function textOrReport(name: string, errors: Output): Promise<string | null> {
  const bytes = await bytesOf(name);
  if (!('unreadable' in bytes)) return bytes.toString('utf8');
  errors.write(`${harmless(bytes.unreadable)}\n`);
  return null;
}

/** Writes a file that is not there yet, or over the one that is, where that was asked for; false, and said, where it was not. */
export function writeOrReport(name: string, text: string, over: boolean, errors: Output): boolean {
  try {
    writeFileSync(name, text, { flag: over ? 'w' : 'wx' });
    return true;
  } catch (error) {
    if (!isSystemError(error)) throw error;
    const why =
      error.code === 'EEXIST'
        ? 'is there already; --over writes over it'
        : `cannot be written: ${error.message}`;
    errors.write(`${harmless(name)} ${why}. Nothing was written.\n`);
    return false;
  }
}
