import { readTemplate } from '@sagwright/records/readTemplate';
import type { Template } from '@sagwright/records/schema/template';
import { writeTemplate } from '@sagwright/records/writeTemplate';
import { templates as words } from '../../words/templates.ts';
import { jobFileName } from '../fileName.ts';
import { saveFile } from '../saveFile.ts';

/** Copies a template to a file named after it. */
export function saveTemplate(template: Template): void {
  saveFile(jobFileName(template.name), writeTemplate(template));
}

/** A template from a file, or the sentences that say why there is none. */
export async function openTemplate(file: File): Promise<Template | readonly string[]> {
  try {
    const read = readTemplate(await file.text());
    return read.ok
      ? read.template
      : [words.noTemplate(file.name), ...read.problems.slice(0, 20).map(({ message }) => message)];
  } catch (error) {
    // A folder, or a file that was taken away meanwhile, is given by no browser.
    if (!(error instanceof DOMException)) throw error;
    return [words.noTemplate(file.name), error.message];
  }
}
