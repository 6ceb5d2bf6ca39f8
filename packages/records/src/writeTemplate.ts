import { type Template, template } from './schema/template.ts';

/** A template as its file: spelled as `writeJob` spells a job, so that the same template is the same text on every device. */
export function writeTemplate(document: Template): string {
  const read = template.safeParse(document);
  return `${JSON.stringify(read.success ? read.data : document, null, 2)}\n`;
}
