import { readTemplate } from '@sagwright/records/readTemplate';
import type { Template } from '@sagwright/records/schema/template';

const texts = import.meta.glob<string>('../../../../../examples/templates/*.json', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** The invented templates, in the order of their files' names, which are their ids. */
export const shippedTemplates: readonly { readonly id: string; readonly template: Template }[] =
  Object.entries(texts).flatMap(([path, text]) => {
    const read = readTemplate(text);
    return read.ok ? [{ id: path.split('/').at(-1)!, template: read.template }] : [];
  });
